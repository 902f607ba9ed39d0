// What a browser test file uses: `test`, the built site, and helpers that wait
// for what must happen and never for a length of time.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect as retrying } from '@playwright/test';
import { serve } from './serve.mjs';

/**
 * Playwright's assertions: each looks again until the page is as expected. What a page
 * shows after an action is always looked at by one of these, or after one has waited
 * for the state; never just read. The time is a stop for what hangs, not a measure.
 */
export const expect = retrying.configure({ timeout: 30_000 });

export const DIST = process.env.DIST ?? fileURLToPath(new URL('../../dist', import.meta.url));
export const OUT = fileURLToPath(new URL('./out', import.meta.url));
export const tests = [];

/**
 * Registers a test. It gets `{page, context, browser, url, site, open, scratch, shot}`
 * and fails by throwing, by an error on the console, or by an uncaught one in the page.
 * Options: `expectErrors` (such errors are part of the test), `context` (Playwright's options).
 */
export function test(name, options, run) {
  const [given, body] = run ? [options, run] : [{}, options];
  tests.push({ name, options: given, run: body });
}

/** The page has shown its first answer. */
export function ready(frame, timeout = 60_000) {
  return frame.waitForSelector('html[data-ready]', { state: 'attached', timeout });
}

/** The later parts of the wasm have come too: every change is kept, every question answered. */
export async function complete(frame) {
  await ready(frame);
  await frame.waitForSelector('html:not([data-later])', { state: 'attached' });
}

/** The invented example as one's own plan: what most tests begin from. */
export async function withExample(page) {
  await complete(page);
  await page.getByRole('button', { name: 'Show the example', exact: true }).click();
  await page.getByRole('button', { name: 'Use it as my plan', exact: true }).click();
  await expect(page.locator('#example')).toHaveCount(0);
}

/** Opens the fold with language, units, decimal mark and clock. */
export async function openLocale(page) {
  await page.locator('.locale:not([open]) > summary').click();
}

/** For what measures boxes, as axe does: what is out of sight has none until it is scrolled to. */
export const layOut = (page) => page.evaluate(() => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync('* { content-visibility: visible !important; }');
  document.adoptedStyleSheets = [sheet];
});

/**
 * Opens every fold there is, those inside others too: a fold is built a moment after it
 * opens, and is looked at once it holds something.
 */
export async function openAll(page, folds = 'details') {
  const left = () => page.evaluate((selector) => {
    const all = [...document.querySelectorAll(selector)];
    const closed = all.filter((one) => !one.open);
    for (const one of closed) one.open = true;
    return closed.length + all.filter((one) => !one.lastElementChild?.hasChildNodes()).length;
  }, folds);
  await expect.poll(left).toBe(0);
}

/** The service worker runs this page: from here on it needs no server. */
export function kept(page) {
  return page.waitForFunction(async () => {
    await navigator.serviceWorker.ready;
    return navigator.serviceWorker.controller !== null;
  });
}

/** What one test opens and must not leave behind. */
export function belongings() {
  const undo = [];
  const scratch = () => {
    const dir = mkdtempSync(join(tmpdir(), 'till-morning-'));
    undo.push(() => rmSync(dir, { recursive: true, force: true }));
    return dir;
  };
  const open = async (options = {}) => {
    const site = await serve({ root: DIST, ...options });
    undo.push(() => site.close());
    return site;
  };
  const clear = async () => { for (const step of undo.reverse()) await step(); };
  return { scratch, open, clear };
}

/** A copy of the site as a later release: other version, and a mark to know it by. */
export function laterRelease(dir, mark) {
  cpSync(DIST, dir, { recursive: true });
  change(join(dir, 'index.html'), /<html /, `<html data-release="${mark}" `);
  const version = readFileSync(join(DIST, 'sw.js'), 'utf8').match(/"([0-9a-f]{16})"/)[1];
  change(join(dir, 'sw.js'), version, mark.padStart(16, '0'));
  return dir;
}

export function change(path, what, by) {
  const before = readFileSync(path, 'utf8');
  const after = before.replace(what, by);
  if (after === before) throw new Error(`${path}: nothing matches ${what}`);
  writeFileSync(path, after);
}
