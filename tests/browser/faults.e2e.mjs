// Faults of the page itself, forced: nothing typed is lost, and the way on is shown.
import assert from 'node:assert/strict';
import { complete, expect, test } from './harness.mjs';

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
