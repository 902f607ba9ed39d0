// The core tasks (engines/tasks.mjs) wherever the page may stand: hosted, without a
// signal, from a folder on disk, in frames, under a strict policy. A table at the end.
import assert from 'node:assert/strict';
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { tasks as all } from './engines/tasks.mjs';
import { belongings, complete, DIST, expect, kept, test } from './harness.mjs';
import { settleAfterActions } from './settle.mjs';
import { STRICT_CSP } from './serve.mjs';

// That one is an environment here.
const { 'the one file in a frame without an origin': _, ...tasks } = all;

/** What tasks are said in (engines/chromium.mjs), of a page or of a frame in it. */
function driver(page, show) {
  const at = () => show.frame?.(page) ?? page;
  return {
    goto: (url) => (url === 'about:blank' ? page.goto(url) : show.goto(page, url)),
    reload: async () => {
      if (at() === page) return page.reload();
      // Where nothing else keeps the plan its address does, once the keys rest.
      let before;
      await expect.poll(async () => {
        const now = await at().evaluate(() => location.hash);
        const rests = now === before && now.length > 1;
        before = now;
        return rests;
      }, { intervals: [800] }).toBe(true);
      // As the browser's own menu does with a frame.
      await at().evaluate(() => { document.documentElement.removeAttribute('data-ready'); location.reload(); });
      return undefined;
    },
    run: (work, ...given) => at().evaluate(work, ...given),
    click: (selector) => at().click(selector),
    type: async (selector, text) => { await at().click(selector); await page.keyboard.type(text); },
    attach: (selector, file) => at().setInputFiles(selector, file),
  };
}

const alone = { goto: (page, url) => page.goto(url) };

/** In a frame of a page on `localhost`. */
const framed = (attributes) => ({
  goto: async (page, url) => {
    if (!page.url().includes('/host.html')) await page.goto(page.host);
    await page.evaluate(([src, more]) => {
      document.body.innerHTML = `<iframe title="hours" width="390" height="844" ${more}></iframe>`;
      document.querySelector('iframe').src = src;
    }, [url, attributes]);
    await page.waitForFunction(() => document.querySelector('iframe'));
  },
  frame: (page) => page.frames()[1],
});

/** The page that frames it, on a server of its own. */
async function host(page, own) {
  const root = own.scratch();
  writeFileSync(join(root, 'host.html'), '<!doctype html><title>A report</title><link rel="icon" href="data:,"><body style="margin:0">');
  page.host = `${(await own.open({ root })).url}host.html`;
}

const NO_WORKER = 'the browser allows no service worker there';
const named = (name) => ({ open }) => async (options) => {
  const site = await open(options);
  return { ...site, url: site.url.replace('localhost', name), close: site.close };
};

/** Where it stands: how a site is opened, how it is shown, and what by its nature cannot be. */
const environments = {
  localhost: { show: alone, open: ({ open }) => open },
  'without a signal': {
    show: alone,
    // The server is closed after one visit, before the task begins.
    open: ({ open, page }) => async () => {
      const site = await open({ store: false });
      await page.goto(site.url);
      await complete(page);
      await kept(page);
      await site.close();
      return { url: site.url, close: async () => {} };
    },
  },
  'from disk': {
    show: alone,
    open: ({ scratch }) => async () => {
      const file = join(scratch(), 'till-morning.html');
      copyFileSync(join(DIST, 'till-morning.html'), file);
      return { url: pathToFileURL(file).href };
    },
    lacks: { 'offline reload': 'there is no server to lose: each reload is one' },
  },
  'plain http': { show: alone, open: named('van.test'), lacks: { 'offline reload': NO_WORKER } },
  'strict policy': { show: alone, open: ({ open }) => (options) => open({ csp: STRICT_CSP, ...options }) },
  'frame without an origin': {
    show: framed('sandbox="allow-scripts"'),
    open: ({ open }) => async () => {
      const site = await open();
      return { url: `${site.url}till-morning.html` };
    },
    lacks: { 'offline reload': NO_WORKER },
  },
  // Another port is another origin of the same site: it has a storage and a worker.
  'frame of another origin': { show: framed(''), open: ({ open }) => open },
  // This browser refuses both to a frame of another site.
  'frame of another site': { show: framed(''), open: named('127.0.0.1'), lacks: { 'offline reload': NO_WORKER } },
};

async function perform(browser, place, task) {
  const own = belongings();
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 390, height: 844 } });
  const errors = [];
  // That a frame may not copy is what its host decides; the page offers the link as a text.
  context.on('console', (message) => { if (message.type() === 'error' && !/Clipboard API has been blocked/.test(message.text())) errors.push(message.text()); });
  context.on('weberror', (error) => errors.push(String(error.error())));
  context.on('page', settleAfterActions);
  const page = await context.newPage();
  try {
    await host(page, own);
    await place.before?.(page);
    await task({ page: driver(page, place.show), open: place.open({ ...own, page }), scratch: own.scratch });
    assert.deepEqual(errors, []);
  } finally {
    await context.close();
    await own.clear();
  }
}

const table = [];
for (const [name, place] of Object.entries(environments)) {
  test(`the core tasks: ${name}`, async ({ browser }) => {
    const left = Object.entries(tasks).filter(([title]) => !place.lacks?.[title]);
    const row = { ...place.lacks };
    table.push([name, row]);
    // Two at a time.
    const work = async () => {
      for (let next = left.shift(); next; next = left.shift()) {
        const [title, task] = next;
        row[title] = await perform(browser, place, task).then(() => 'done', (error) => error);
      }
    };
    await Promise.all([work(), work()]);
    const failed = Object.entries(row).filter(([, result]) => result instanceof Error);
    assert.ok(!failed.length, failed.map(([title, error]) => `${title}: ${error.stack}`).join('\n'));
  });
}

test('the table of tasks and environments is whole', async () => {
  for (const [name, row] of table) {
    for (const title of Object.keys(tasks)) {
      const result = row[title];
      console.log(`     ${name.padEnd(26)} ${title.padEnd(24)} ${result instanceof Error ? 'FAILED' : result === 'done' ? 'done' : `cannot: ${result}`}`);
      assert.ok(result, `${name}: ${title} was neither done nor is it known that it cannot be`);
    }
  }
  assert.equal(table.length, Object.keys(environments).length);
});

test('control: the frames are refused what they are said to be', async ({ browser }) => {
  const look = (page) => page.run(() => { try { return typeof localStorage; } catch { return 'refused'; } });
  const refused = { 'frame of another origin': 'object', 'frame of another site': 'refused', 'frame without an origin': 'refused' };
  for (const [name, storage] of Object.entries(refused)) {
    await perform(browser, environments[name], async ({ page, open }) => {
      await page.goto((await open()).url);
      await expect.poll(() => page.run(() => 'ready' in document.documentElement.dataset)).toBe(true);
      assert.equal(await look(page), storage, name);
    });
  }
});

test('control: a task is not done where the page does not start', { expectErrors: true }, async ({ browser }) => {
  const place = { ...environments.localhost, before: (page) => page.addInitScript(() => { delete window.WebAssembly; }) };
  const never = new Promise((_, fail) => { setTimeout(() => fail(new Error('not done')), 3000); });
  await assert.rejects(Promise.race([perform(browser, place, tasks['own numbers']), never]));
});
