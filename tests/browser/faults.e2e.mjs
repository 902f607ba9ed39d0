// Faults of the page itself, forced: nothing typed is lost, and the way on is shown.
import assert from 'node:assert/strict';
import { randomBytes } from 'node:crypto';
import { readFileSync, readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { DIST, change, complete, expect, laterRelease, test, withExample } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const DRAW = '#start-units-0--modes-0--power-w';
const address = (page) => expect(page).toHaveURL(/#p\d\./);

/** The browser refuses every further element: the page's code cannot but panic. */
const refuseElements = (page) => page.evaluate(() => {
  document.createElement = () => { throw new Error('refused'); };
  Document.prototype.importNode = () => { throw new Error('refused'); };
  Node.prototype.cloneNode = () => { throw new Error('refused'); };
});

test('a panic keeps what was typed, and a reload goes on, 20 times of 20', { expectErrors: true }, async ({ page, url, shot }) => {
  await page.goto(url);
  await complete(page);
  for (let time = 1; time <= 20; time += 1) {
    const typed = String(200 + time);
    await page.fill(AH, typed);
    await page.fill(DRAW, '45');
    await address(page);
    await refuseElements(page);
    await page.locator('.locale:not([open]) > summary').click();
    await expect(page.locator('#broken')).toBeVisible();
    await expect(page.locator('#broken .broken-link')).toHaveValue(/#p\d\./);
    if (time === 1) await shot();
    await page.locator('.broken-reload').click();
    await complete(page);
    await expect(page.locator(AH)).toHaveValue(typed);
    await expect(page.locator('#broken')).toBeHidden();
  }
});

test('a plan that breaks the page is set aside at a tap, and not lost', { expectErrors: true }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await page.fill(AH, '222');
  await address(page);
  await refuseElements(page);
  await page.locator('.locale:not([open]) > summary').click();
  await page.locator('.broken-empty').click();
  await complete(page);
  await expect(page.locator(AH)).toHaveValue('');
  assert.match(await page.evaluate(() => localStorage.getItem('till-morning.broken.1')), /222/);
});

test('control: without a fault nothing of it is seen', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await expect(page.locator('#broken')).toBeHidden();
});

test('a browser that names no language gets English, and starts', async ({ page, url }) => {
  await page.addInitScript(() => { Object.defineProperty(navigator, 'language', { get: () => 'C' }); });
  await page.goto(url);
  await complete(page);
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
});

// ---- while it loads ----

const [FIRST] = readdirSync(DIST).filter((name) => /^till-morning-[0-9a-f]{16}\.wasm$/.test(name));
const [LATER] = readdirSync(DIST).filter((name) => /^till-morning-later-[0-9a-f]{16}\.wasm$/.test(name));
const alone = { context: { serviceWorkers: 'block' }, expectErrors: true };

/** What may come in place of the wasm. */
const losses = {
  'is missing': (route) => route.fulfill({ status: 404, body: 'not here' }),
  'is cut off': (route) => route.fulfill({ contentType: 'application/wasm', body: readFileSync(join(DIST, FIRST)).subarray(0, 400_000) }),
  'is a page that says to log in': (route) => route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>Log in</title>' }),
  'never arrives': (route) => route.abort('internetdisconnected'),
};

for (const [what, lose] of Object.entries(losses)) {
  test(`wasm that ${what}: the shell says so, and one’s own plan comes once it is there`, alone, async ({ page, open, shot }) => {
    const site = await open({ store: false });
    await page.goto(site.url);
    await complete(page);
    await page.fill(AH, '222');
    await expect.poll(() => page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('222');
    const kept = await page.evaluate(() => JSON.stringify(localStorage));
    await page.goto('about:blank');
    await page.route(`**/${FIRST}`, lose);
    await page.goto(site.url);
    await expect(page.locator('.failed')).toBeVisible();
    await expect(page.locator('.failed')).toHaveText(/did not arrive.*kept on this device is safe/);
    await expect(page.locator('.waiting')).toBeHidden();
    await shot();
    assert.equal(await page.evaluate(() => JSON.stringify(localStorage)), kept);
    await page.unroute(`**/${FIRST}`);
    await page.locator('.failed button').click();
    await complete(page);
    await expect(page.locator(AH)).toHaveValue('222');
    await expect(page.locator('.failed')).toHaveCount(0);
  });
}

test('control: while nothing has failed the shell does not say so', alone, async ({ page, url }) => {
  let release;
  const held = new Promise((done) => { release = done; });
  await page.route(`**/${FIRST}`, async (route) => { await held; await route.continue(); });
  await page.goto(url);
  await expect(page.locator('.waiting')).toBeVisible();
  await expect(page.locator('.failed')).toBeHidden();
  release();
  await complete(page);
});

test('a release while the page still loads: its later part is gone, what was typed is not', alone, async ({ page, open, scratch }) => {
  const site = await open({ store: false });
  // The files of the old release go as the new one comes: its names are others.
  const root = laterRelease(scratch(), 'b');
  renameSync(join(root, LATER), join(root, 'till-morning-later-bbbbbbbbbbbbbbbb.wasm'));
  const script = readdirSync(root).find((name) => /^till-morning-[0-9a-f]{16}\.js$/.test(name));
  change(join(root, script), LATER, 'till-morning-later-bbbbbbbbbbbbbbbb.wasm');
  renameSync(join(root, script), join(root, 'till-morning-bbbbbbbbbbbbbbbb.js'));
  change(join(root, 'index.html'), script, 'till-morning-bbbbbbbbbbbbbbbb.js');
  let release;
  const held = new Promise((done) => { release = done; });
  await page.route(`**/${LATER}`, async (route) => { await held; await route.continue(); });
  await page.goto(site.url);
  await expect(page.locator(AH)).toBeVisible();
  site.root = root;
  release();
  await page.waitForSelector('html[data-later="missing"]', { state: 'attached' });
  await page.fill(AH, '222');
  await expect.poll(() => page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('222');
  await page.reload();
  await complete(page);
  await expect(page.locator('html')).toHaveAttribute('data-release', 'b');
  await expect(page.locator(AH)).toHaveValue('222');
});

// ---- no service worker ----

const refusedWorkers = {
  'there is none': () => { Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined }); },
  'the look at it throws': () => { Object.defineProperty(Navigator.prototype, 'serviceWorker', { get() { throw new DOMException('refused', 'SecurityError'); } }); },
  'it is refused': () => { if (navigator.serviceWorker) ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException('refused', 'SecurityError')); },
};

for (const [what, refuse] of Object.entries(refusedWorkers)) {
  test(`a service worker: ${what}, and the page works and keeps the plan`, async ({ page, url }) => {
    await page.addInitScript(refuse);
    await page.goto(url);
    await complete(page);
    const before = await page.locator('#answer').textContent();
    await page.fill(AH, '222');
    await expect(page.locator('#answer')).not.toHaveText(before);
    await address(page);
    await page.goto('about:blank');
    await page.goto(url);
    await complete(page);
    await expect(page.locator(AH)).toHaveValue('222');
    await expect(page.locator('#notice')).toHaveCount(0);
  });
}

// ---- clocks, links and the browser's own buttons ----

test('the clock set back and forward, and another time zone: nothing changes', async ({ page, context, url }) => {
  await page.clock.install({ time: new Date('2026-07-01T20:00:00Z') });
  await page.goto(url);
  await withExample(page);
  await page.locator('.questions a[href="#question-3"]').click();
  await expect(page.locator('#day-answer')).toHaveText(/\w/);
  await page.fill(AH, '111');
  await expect(page.locator('.changes li').first()).toBeAttached();
  const shown = async () => [await page.locator('#answer').textContent(), await page.locator('#day-answer').textContent(), await page.locator('.ribbon svg').first().getAttribute('aria-label')];
  const before = await shown();
  const session = await context.newCDPSession(page);
  for (const [time, timezoneId] of [['1970-01-01T00:00:00Z', 'Pacific/Kiritimati'], ['2099-12-31T23:59:59Z', 'America/St_Johns'], ['2026-03-29T00:59:59Z', 'Europe/Berlin']]) {
    await page.clock.setSystemTime(new Date(time));
    await session.send('Emulation.setTimezoneOverride', { timezoneId });
    assert.equal(await page.evaluate(() => Intl.DateTimeFormat().resolvedOptions().timeZone), timezoneId);
    // Worked out anew, by a change and its way back.
    await page.fill(AH, '150');
    await expect(page.locator('#answer')).not.toHaveText(before[0]);
    await page.fill(AH, '111');
    await expect.poll(shown, time).toEqual(before);
    await page.reload();
    await complete(page);
    await expect(page.locator(AH)).toHaveValue('111');
    await page.locator('section:has(#question-3) > details:not([open]) > summary').click();
    await expect(page.locator('#day-answer')).toHaveText(/\w/);
    await expect.poll(shown, `${time}, reloaded`).toEqual(before);
  }
});

/** Links that nobody's page made: 20 kB of anything, and small ones that grow. */
const junk = (bytes) => randomBytes(bytes).toString('base64url');
const hostile = {
  '20 kB of anything': () => junk(15_000),
  '20 kB behind our sign': () => `p1.${junk(15_000)}`,
  'a real plan and 20 kB after it': (link) => `${link}${junk(15_000)}`,
  'a real plan with its middle overwritten': (link) => `${link.slice(0, 40)}${junk(30)}${link.slice(80)}`,
  '8 MB packed in 8 kB': () => `p1.${deflateRawSync(Buffer.alloc(8 << 20)).subarray(0, 6000).toString('base64url')}`,
  'lists in lists': () => `p1.${deflateRawSync(Buffer.from('['.repeat(60_000))).toString('base64url')}`,
};

for (const [what, make] of Object.entries(hostile)) {
  test(`a link of ${what}: said plainly, one’s own plan is safe, the page answers`, async ({ page, url }) => {
    await page.goto(url);
    await complete(page);
    await page.fill(AH, '222');
    await address(page);
    const link = make(new URL(page.url()).hash.slice(1));
    const kept = await page.evaluate(() => localStorage.getItem('till-morning.draft.1'));
    const visit = async (to) => {
      await page.goto('about:blank');
      const since = Date.now();
      await page.goto(to);
      await complete(page);
      return Date.now() - since;
    };
    const plain = await visit(url);
    const late = (await visit(`${url}#${link}`)) - plain;
    assert.ok(late < 2000, `${late} ms later than without it`);
    const said = page.locator('#notice');
    await expect(said).toHaveText(/link/i);
    await expect(page.locator(AH)).toHaveValue('222');
    assert.equal(await page.evaluate(() => localStorage.getItem('till-morning.draft.1')), kept);
    // The same into a page that stands already.
    await said.getByRole('button').click();
    await page.goto(url);
    await complete(page);
    await page.evaluate((fragment) => { location.hash = fragment; }, link);
    await expect(said).toHaveText(/link/i);
    await expect(page.locator(AH)).toHaveValue('222');
    const before = await page.locator('#answer').textContent();
    await page.fill(AH, '111');
    await expect(page.locator('#answer')).not.toHaveText(before);
  });
}

test('back and forward between questions leave the plan as it was typed', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  const question = (number) => page.locator(`.questions a[href="#question-${number}"]`).click();
  const holds = async (ah, why) => {
    await expect(page.locator(AH), why).toHaveValue(ah);
    await expect(page.locator(DRAW), why).toHaveValue('45');
    await expect(page.locator('#notice'), why).toHaveCount(0);
  };
  await page.fill(DRAW, '45');
  await page.fill(AH, '150');
  await address(page);
  await question(4);
  await page.fill(AH, '160');
  await address(page);
  await question(3);
  await page.fill('#day-high-c', '41');
  await address(page);
  for (const [step, why] of [['goBack', 'back'], ['goBack', 'back again'], ['goForward', 'forward'], ['goForward', 'forward again']]) {
    await page[step]();
    await holds('160', why);
    await expect(page.locator('#day-high-c'), why).toHaveValue('41');
  }
  // Away to another site and back: the plan as it was left.
  await page.goto('about:blank');
  await page.goBack();
  await complete(page);
  await holds('160', 'from another site');
});

test('control: a link opened in the tab is one, and back from it too', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await page.fill(AH, '150');
  await address(page);
  const link = new URL(page.url()).hash;
  const own = page.url();
  await page.fill(AH, '160');
  await expect(page).not.toHaveURL(own);
  await page.evaluate((fragment) => { location.hash = fragment; }, link);
  await expect(page.locator(AH)).toHaveValue('150');
  await expect(page.locator('#notice')).toHaveText(/came from a link/);
  await page.locator('.questions .quiet').click();
  await expect(page.locator(AH)).toHaveValue('160');
});
