// 'Pass it on' in the page: sentence, code, report, figures, tables, answer.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import jsQR from 'jsqr';
import { OUT, expect, ready, test, withExample } from './harness.mjs';
import { STRICT_CSP } from './serve.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const section = (page) => page.locator('section:has(#question-6)');

async function opened(page, url) {
  await page.goto(url);
  await withExample(page);
  await page.click('#question-6');
  await page.waitForSelector('#hand-on-sentence');
}

const fold = (page, title) => section(page).locator('summary', { hasText: title }).click();

/** What a press of a button hands to the browser: its name and bytes. */
async function saved(page, button) {
  const coming = page.waitForEvent('download');
  await section(page).getByRole('button', { name: button, exact: true }).click();
  const download = await coming;
  return { name: download.suggestedFilename(), data: readFileSync(await download.path()) };
}

test('every file comes out, under a strict policy', async ({ page, open }) => {
  const site = await open({ csp: STRICT_CSP });
  await opened(page, site.url);
  await fold(page, 'Figures');
  await fold(page, 'Tables');
  const svg = await saved(page, 'Save “Night ribbon” as SVG');
  assert.equal(svg.name, 'till-morning-night-ribbon.svg');
  assert.match(svg.data.toString(), /^<svg .*<title id="title">Night ribbon<\/title><desc /);
  const png = await saved(page, 'Save “Hours against depth of discharge” as PNG');
  assert.equal(png.name, 'till-morning-hours-against-depth-of-discharge.png');
  assert.equal(png.data.subarray(1, 4).toString(), 'PNG');
  // Twice the width of the drawing, as IHDR says it (PNG specification, 11.2.2).
  assert.equal(png.data.readUInt32BE(16), 1440);
  const csv = await saved(page, 'Save “Hours of each mode” as CSV');
  assert.equal(csv.name, 'till-morning-hours-of-each-mode.csv');
  assert.deepEqual([...csv.data.subarray(0, 3)], [0xef, 0xbb, 0xbf], 'spreadsheets know UTF-8 by this mark');
  const markdown = await saved(page, 'Save “Hours of each mode” as Markdown');
  assert.match(markdown.data.toString(), /^\| Mode \|/);
});

test('the answer as JSON is the one that the native engine gives', async ({ page, url }) => {
  await opened(page, url);
  const { name, data } = await saved(page, 'Save the answer as JSON');
  assert.equal(name, 'till-morning-answer.json');
  const golden = JSON.parse(readFileSync(join(root, 'tests/golden/answers/demo.json'), 'utf8'));
  const hours = ({ runs }) => runs.map((run) => Number(run.hours_h.likely.toPrecision(6)));
  assert.deepEqual(hours(JSON.parse(data)), hours(golden));
});

/** Decoded by jsQR from the pixels on the screen, in the dark too. */
for (const colorScheme of ['light', 'dark']) {
  test(`a phone reads the code, ${colorScheme}`, { context: { colorScheme, deviceScaleFactor: 2 } }, async ({ page, url }) => {
    await opened(page, url);
    const shot = await page.locator('#code').screenshot();
    const { width, height, pixels } = await page.evaluate(async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext('2d');
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      return { width: image.width, height: image.height, pixels: [...data] };
    }, `data:image/png;base64,${shot.toString('base64')}`);
    const read = jsQR(Uint8ClampedArray.from(pixels), width, height);
    assert(read, 'no code found');
    assert.match(read.data, new RegExp(`^${url}#p\\d\\.`));
    await page.goto('about:blank');
    await page.goto(read.data);
    await ready(page);
    await expect(page.locator('#answer')).toHaveText(/^Hold runs /);
  });
}

test('the sentence is copied with its link', { context: { permissions: ['clipboard-read', 'clipboard-write'] } }, async ({ page, url }) => {
  await opened(page, url);
  await section(page).getByRole('button', { name: 'Copy the sentence' }).click();
  await expect(page.locator('.said').first()).toHaveText('Copied.');
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  assert.match(copied, /^Hold runs .+\. Bank: .+ \(LFP\), depth of discharge 90\s%\. .+ http:\/\/localhost:\d+\/#p\d\.[\w-]+$/);
});

test('the report is all that is printed while it is open, on two pages at most', async ({ page, url, shot }) => {
  await opened(page, url);
  await fold(page, 'A report to print');
  await page.waitForSelector('.report');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.report h1')).toBeVisible();
  await expect(page.locator('#answer')).toBeHidden();
  await expect(page.locator('#hand-on-sentence')).toBeHidden();
  await expect(page.locator('.report')).toHaveText(/Will it last a hot day\?It lasts all 7 days: .+Lasts until 07:00: /);
  await expect(page.locator('.report')).toHaveText(/Can the wiring carry it\?.+\./);
  const pages = async () => {
    const pdf = (await page.pdf({ path: join(OUT, 'report.pdf'), format: 'A4', printBackground: true })).toString('latin1');
    return Math.max(...[...pdf.matchAll(/\/Count (\d+)/g)].map(([, count]) => Number(count)));
  };
  const count = await pages();
  assert(count >= 1 && count <= 2, `${count} pages`);
  await shot('report');
  await page.emulateMedia({ media: null });
  await fold(page, 'A report to print');
  await page.waitForSelector('.report', { state: 'detached' });
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#answer')).toBeVisible();
  await expect(page.locator('details:not([open]):visible'), 'a handle without its inside').toHaveCount(0);
});

test('a report folded away with its question leaves the page to be printed', async ({ page, url }) => {
  await opened(page, url);
  await fold(page, 'A report to print');
  await page.waitForSelector('.report');
  await page.click('#question-6');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#answer')).toBeVisible();
  await expect(page.locator('.report h1')).toBeHidden();
  await page.emulateMedia({ media: null });
  await page.click('#question-6');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.report h1')).toBeVisible();
  await expect(page.locator('#answer')).toBeHidden();
});

test('the report as a page is whole, and follows the plan', async ({ page, url }) => {
  await opened(page, url);
  await fold(page, 'A report to print');
  const { name, data } = await saved(page, 'Save as a page');
  assert.equal(name, 'till-morning-report.html');
  const text = data.toString();
  for (const part of ['How long will it run?', 'How big a bank?', 'The plan', 'What was assumed', 'Before you rely on it', 'method 0.', '#p1.']) {
    assert(text.includes(part), part);
  }
  assert(!/<script|<link|src=/.test(text), 'it asks for nothing');
  const before = await page.textContent('.report .answer');
  await page.locator('.large input').first().fill('200');
  await expect(page.locator('.report .answer')).not.toHaveText(before);
});
