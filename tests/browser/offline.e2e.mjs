// Without a signal: the server is really closed, not only hidden from the page.
import assert from 'node:assert/strict';
import { cpSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DIST, change, expect, kept, laterRelease, ready, test as harnessTest, withExample } from './harness.mjs';

// The browser's own cache is shut out: what works here, the service worker does.
function test(name, options, run) {
  const [given, body] = run ? [options, run] : [{}, options];
  harnessTest(name, given, ({ open, ...rest }) => body({ ...rest, open: (more) => open({ store: false, ...more }) }));
}

const FOLDER = '/some/deep/folder/';

async function visit(page, url) {
  await page.goto(url);
  await withExample(page); // nothing of the visit is still on its way when a test closes the server
  await kept(page);
}
const isRelease = (page, mark) => (mark
  ? expect(page.locator('html')).toHaveAttribute('data-release', mark)
  : expect(page.locator('html')).not.toHaveAttribute('data-release'));
const caches = (page) => page.evaluate(() => window.caches.keys());
const lookForUpdate = (page) => page.evaluate(async () => (await navigator.serviceWorker.ready).update());
const updateSeen = (page) => page.waitForSelector('html[data-update]', { state: 'attached' });

test('reload works with the server closed', async ({ page, open }) => {
  const site = await open();
  await visit(page, site.url);
  await site.close();
  await page.reload();
  await ready(page);
});

test('any way to the page works with the server closed', async ({ page, open }) => {
  const site = await open({ base: FOLDER });
  await visit(page, site.url);
  await site.close();
  for (const end of ['index.html', '?from=home', '#p=abc', 'index.html?a=b#c']) {
    await page.goto('about:blank');
    await page.goto(site.url + end);
    await ready(page);
  }
});

test('control: without the first visit the closed server is an error', { expectErrors: true }, async ({ page, open }) => {
  const site = await open();
  await site.close();
  await assert.rejects(page.goto(site.url), /ERR_CONNECTION_REFUSED/);
});

test('a repeat visit asks for none of the files', async ({ page, open }) => {
  const site = await open();
  await visit(page, site.url);
  site.requests.length = 0;
  await page.reload();
  await ready(page);
  // The one allowed is the look for a newer version; wait for it, so that all is in.
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const asked = new Set(site.requests.map(({ path }) => path));
  assert.deepEqual([...asked], ['/sw.js']);
});

test('runs in a folder, and asks for nothing outside it', async ({ page, open }) => {
  const site = await open({ base: FOLDER });
  await visit(page, site.url);
  const strays = site.requests.filter(({ path, status }) => status !== 200 || !path.startsWith(FOLDER));
  assert.deepEqual(strays, []);
});

test('two copies on one host keep their own files', async ({ page, context, open, scratch }) => {
  const root = scratch();
  cpSync(DIST, join(root, 'one'), { recursive: true });
  laterRelease(join(root, 'two'), 'b');
  const site = await open({ root });
  await visit(page, `${site.url}one/`);
  const other = await context.newPage();
  await visit(other, `${site.url}two/`);
  await expect.poll(async () => (await caches(page)).length).toBe(2);
  await site.close();
  await Promise.all([page.reload(), other.reload()]);
  await Promise.all([ready(page), ready(other)]);
  await isRelease(page, null);
  await isRelease(other, 'b');
});

test('a newer version waits, is announced, and comes when the page asks', async ({ page, open, scratch }) => {
  const site = await open();
  await page.addInitScript(() => {
    window.addEventListener('till-morning-update', () => { window.updates = (window.updates ?? 0) + 1; });
  });
  await visit(page, site.url);
  const before = await caches(page);
  assert.equal(await page.evaluate(() => window.updates), undefined, 'the first visit is no update');

  site.root = laterRelease(scratch(), 'b');
  await lookForUpdate(page);
  await updateSeen(page);
  await expect.poll(() => page.evaluate(() => window.updates)).toBe(1);

  await page.reload(); // not asked for: still the old one, and announced again
  await updateSeen(page);
  await isRelease(page, null);

  await Promise.all([
    page.waitForSelector('html[data-release="b"]', { state: 'attached' }),
    page.evaluate(() => { window.dispatchEvent(new Event('till-morning-reload')); }),
  ]);
  await ready(page);
  await expect.poll(async () => (await caches(page)).length, 'the old files are gone').toBe(1);
  assert.notDeepEqual(await caches(page), before);
  await expect(page.locator('html')).not.toHaveAttribute('data-update');

  await site.close();
  await page.reload();
  await ready(page);
  await isRelease(page, 'b');
});

test('a release with a file missing leaves the present one in place', { expectErrors: true }, async ({ page, open, scratch }) => {
  const site = await open();
  await visit(page, site.url);
  const broken = laterRelease(scratch(), 'b');
  rmSync(join(broken, 'manifest.webmanifest'));
  site.root = broken;
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    const worker = registration.installing;
    if (worker) await new Promise((done) => worker.addEventListener('statechange', done));
    if (registration.waiting) throw new Error('a broken release waits to take over');
  });
  await site.close();
  await page.reload();
  await ready(page);
  await isRelease(page, null);
});

test('a version that cannot start makes way for the next by itself', { expectErrors: true }, async ({ page, open, scratch }) => {
  const site = await open();
  const broken = laterRelease(scratch(), 'a');
  // The real script under another name, with a wasm address that leads nowhere.
  const script = readdirSync(broken).find((name) => /^till-morning-\w+\.js$/.test(name));
  const lost = readFileSync(join(broken, script), 'utf8').replace(/till-morning-[0-9a-f]{16}\.wasm/, 'till-morning-lost.wasm');
  writeFileSync(join(broken, 'broken.js'), lost);
  change(join(broken, 'index.html'), script, 'broken.js');
  site.root = broken;
  await page.goto(site.url);
  await page.waitForSelector('html[data-failed]', { state: 'attached' });
  await kept(page);
  site.root = laterRelease(scratch(), 'b');
  await lookForUpdate(page);
  await page.waitForSelector('html[data-release="b"][data-ready]', { state: 'attached' });
});

test('plain http on another host: the page runs, and keeps nothing', async ({ page, open }) => {
  const site = await open();
  await page.goto(`http://van.test:${site.port}/`);
  await ready(page);
  assert.equal(await page.evaluate(() => window.isSecureContext), false);
  assert.equal(site.requests.some(({ path }) => path === '/sw.js'), false);
});
