// The page as one HTML file: from a folder on disk, and in frames with no origin.
import assert from 'node:assert/strict';
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { DIST, ready, test } from './harness.mjs';

const SINGLE = join(DIST, 'till-morning.html');

test('starts from disk and asks for nothing', async ({ page, scratch, shot }) => {
  const alone = join(scratch(), 'saved page.html');
  copyFileSync(SINGLE, alone);
  const asked = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(pathToFileURL(alone).href);
  await ready(page);
  const others = asked.filter((url) => !url.startsWith('data:'));
  assert.deepEqual(others, [pathToFileURL(alone).href]);
  await shot();
});

test('control: the hosted page does not start from disk', { expectErrors: true }, async ({ page }) => {
  const refused = page.waitForEvent('console', (message) => /blocked by CORS policy/.test(message.text()));
  await page.goto(pathToFileURL(join(DIST, 'index.html')).href);
  await refused;
  await assert.rejects(ready(page, 1000), /Timeout/);
});

/** A page of someone else's with the single file in a frame that has no origin. */
async function embed(page, open, scratch, src) {
  const root = scratch();
  copyFileSync(SINGLE, join(root, 'till-morning.html'));
  const site = await open({ root });
  writeFileSync(join(root, 'index.html'), `<!doctype html><title>A report</title><link rel="icon" href="data:,">
    <iframe title="hours" sandbox="allow-scripts" src="${src(site)}" width="600" height="400"></iframe>`);
  await page.goto(site.url);
  const frame = await (await page.waitForSelector('iframe')).contentFrame();
  await ready(frame);
  return frame;
}

test('starts in a sandboxed frame without an origin', async ({ page, open, scratch }) => {
  const frame = await embed(page, open, scratch, () => './till-morning.html');
  assert.equal(await frame.evaluate(() => window.origin), 'null');
  assert.equal(await frame.evaluate(() => { try { return typeof window.localStorage; } catch { return 'throws'; } }), 'throws');
});

test('starts in a sandboxed frame from another site', async ({ page, open, scratch }) => {
  const frame = await embed(page, open, scratch, (site) => `http://reader.test:${site.port}/till-morning.html`);
  assert.match(frame.url(), /reader\.test/);
});

test('starts from a web host, and registers no service worker', async ({ page, site }) => {
  await page.goto(`${site.url}till-morning.html`);
  await ready(page);
  assert.equal(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length), 0);
});
