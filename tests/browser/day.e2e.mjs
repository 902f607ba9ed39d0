// The third question, from outside: the week at the lake, odds and bands a moment
// later, numbers that cannot be, a weather file, the device's position; and all of
// it as one file and in a frame without an origin.
import assert from 'node:assert/strict';
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { complete, DIST, layOut, ready, test } from './harness.mjs';

const SINGLE = join(DIST, 'till-morning.html');
const HIGH = '#day-high-c';

const unfold = async (frame) => {
  await frame.locator('summary:has(#question-3)').click();
  await frame.locator('#day-answer').waitFor();
};
const open = async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await unfold(page);
};
/** Odds and band are there, and of the present numbers. */
const settled = (frame) => frame.waitForFunction(() => {
  const text = (id) => document.querySelector(id)?.textContent ?? '';
  return text('#day-band') === '' && /chance|certain|odds/.test(text('.odds')) && !document.querySelector('.odds.old');
});
const answer = (frame) => frame.locator('#day-answer').textContent();
const band = (frame) => frame.locator('.day-charts figure').nth(1).locator('path.band').getAttribute('d');
const fold = (frame, name) => frame.locator('section:has(#question-3) details.fold > summary', { hasText: name }).click();

test('the week at the lake reads from the third question alone', async (t) => {
  await open(t);
  assert.match(await answer(t.page), /^It lasts all 7 days/);
  await settled(t.page);
  assert.match(await t.page.locator('.odds').innerText(), /never empty in 7 days/);
  assert.equal(await t.page.locator('.day-charts figure svg').count(), 3);
  assert.ok((await band(t.page)).length > 100);
  // A week has seven nights, and each of them a stretch of dark.
  const dark = await t.page.locator('.day-charts figure').first().locator('path.shade').getAttribute('d');
  assert.ok(dark.match(/M/g).length >= 7, dark);
  await t.page.locator('.changes li').first().waitFor();
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
});

test('the trace follows the keys, the band comes after, and comes the same', async (t) => {
  await open(t);
  await settled(t.page);
  const first = await band(t.page);
  await t.page.fill(HIGH, '43');
  // At once: the answer is of the new number in the very next frame.
  const at = await t.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(document.querySelector('.day-charts figcaption').textContent))));
  assert.match(at.replace(/\u202f/g, ' '), /to 43 °C/);
  await settled(t.page);
  assert.notEqual(await band(t.page), first);
  await t.page.fill(HIGH, '36');
  await settled(t.page);
  // Refined to as many nights as before.
  await t.page.waitForFunction((was) => document.querySelectorAll('.day-charts figure')[1].querySelector('path.band').getAttribute('d') === was, first);
});

test('three charts are read at one stop, by keys', async (t) => {
  await open(t);
  const canvas = t.page.locator('.day-charts .canvas').first();
  await canvas.focus();
  await t.page.keyboard.press('End');
  const read = await t.page.locator('.day-charts .read-out').allInnerTexts();
  assert.equal(read.length, 3);
  for (const text of read) assert.match(text, /^Day 8, 21:00: /);
  assert.equal(await t.page.locator('.day-charts svg .cursor').count(), 3);
});

test('a number that cannot be is named with its range, and the last answer stays, marked', async (t) => {
  await open(t);
  await settled(t.page);
  const before = await answer(t.page);
  await t.page.fill(HIGH, '99');
  const told = t.page.locator('.outcome:has(#day-answer)');
  await t.page.waitForSelector('.outcome.stale:has(#day-answer)');
  assert.match((await told.innerText()).replace(/\u202f/g, ' '), /High of the day: give from .50 to 60 °C/);
  assert.equal(await answer(t.page), before);
  await t.page.fill(HIGH, '38');
  await t.page.waitForSelector('.outcome:not(.stale):has(#day-answer)');
});

test('a change is tried at a tap, and undone', async (t) => {
  await open(t);
  await t.page.fill('#day-days-count', '1');
  await t.page.fill('#banks-0--block-rated-ah', '20');
  await t.page.fill('#banks-0--parallel-count', '1');
  await t.page.waitForFunction(() => /does not last/.test(document.querySelector('#day-answer').textContent));
  await t.page.waitForFunction(() => document.querySelector('#day-changes').textContent === '');
  assert.match(await t.page.locator('.changes li').first().innerText(), /until empty|not empty/);
  await t.page.waitForFunction(() => document.querySelector('#day-bedtime').textContent === '');
  await t.page.locator('.changes li', { hasText: 'string of blocks' }).getByRole('button').click();
  assert.equal(await t.page.inputValue('#banks-0--parallel-count'), '2');
  await t.page.getByRole('button', { name: 'Undo' }).first().click();
  assert.equal(await t.page.inputValue('#banks-0--parallel-count'), '1');
});

test('a weather file is taken, a bad one is named by line and column, and undone', async (t) => {
  await open(t);
  await fold(t.page, 'Place, date and weather');
  const give = (name, text) => {
    const file = join(t.scratch(), name);
    writeFileSync(file, text);
    return t.page.setInputFiles('#weather-file', file);
  };
  const said = t.page.locator('#weather-said');
  await give('miami.tm2', readFileSync(new URL('../data/miami_28_june_1970.tm2', import.meta.url)));
  await t.page.waitForFunction(() => /TMY2, 24 hours/.test(document.querySelector('#weather-said').textContent));
  // The file's own heading: 25° 48' north, five hours behind.
  assert.equal(await t.page.inputValue('#day-latitude-deg'), '25.8');
  assert.equal(await t.page.inputValue('#day-utc-offset-min'), '-300');
  const hours = Array.from({ length: 24 }, (_, hour) => `${hour},${hour === 6 ? 'warm' : 25},0`);
  await give('bad.csv', `hour,temperature,irradiance\n${hours.join('\n')}\n`);
  await t.page.waitForSelector('#weather-said.wrong-log');
  assert.match(await said.innerText(), /Line 8, column 2: temperature is not a number/);
  assert.equal(await t.page.inputValue('#day-latitude-deg'), '25.8');
  await t.page.getByRole('button', { name: 'Undo' }).first().click();
  assert.equal(await t.page.inputValue('#day-latitude-deg'), '');
});

test('the device says where it is, or that it may not', {
  context: { geolocation: { latitude: 38.1234, longitude: -109.0456 }, permissions: ['geolocation'], timezoneId: 'Etc/GMT+7' },
}, async (t) => {
  await open(t);
  await fold(t.page, 'Place, date and weather');
  await t.page.getByRole('button', { name: 'Take my position' }).click();
  await t.page.waitForFunction(() => document.querySelector('#day-latitude-deg').value === '38.12');
  assert.equal(await t.page.inputValue('#day-longitude-deg'), '-109.05');
  assert.equal(await t.page.inputValue('#day-utc-offset-min'), '-420');
  await t.context.clearPermissions();
  await t.page.getByRole('button', { name: 'Take my position' }).click();
  await t.page.waitForFunction(() => /does not let the page know|does not know/.test(document.querySelector('#place-said').textContent));
});

test('a mode plan by the clock and a charger change the answer', async (t) => {
  await open(t);
  await fold(t.page, 'Mode plan by the clock');
  await t.page.getByRole('button', { name: 'Add a time' }).click();
  // The plan that was taken stands there to be edited: off at 07:00, Hold at 21:00.
  assert.equal(await t.page.locator('.mode-row').count(), 2);
  await t.page.selectOption('#mode-row-1', { label: 'Plunge' });
  await t.page.waitForFunction(() => /with Plunge/.test(document.querySelector('#day-answer').textContent));
  await fold(t.page, 'What feeds the bank');
  await t.page.getByRole('button', { name: 'Add a charger' }).click();
  await t.page.waitForFunction(() => /chargers/.test(document.querySelectorAll('.day-charts figcaption')[2].textContent));
});

/** One day on a bank that is about enough. */
const oneDay = async (t, ah) => {
  await open(t);
  await t.page.fill('#day-days-count', '1');
  await t.page.fill('#banks-0--block-rated-ah', ah);
  await t.page.fill('#banks-0--parallel-count', '1');
};
const read = async (page, at, clock, percent, cabin) => {
  await page.getByRole('button', { name: 'Add a reading, now' }).click();
  await page.fill(`#check-ins-${at}--clock-min`, clock);
  await page.fill(`#check-ins-${at}--charge-percent`, percent);
  await page.fill(`#check-ins-${at}--cabin-c`, cabin);
};

test('at 02:10 a reading puts the night right, and three are fitted', async (t) => {
  await oneDay(t, '40');
  await fold(t.page, 'It is night');
  await read(t.page, 0, '02:10', '54', '25');
  const said = (what) => t.page.waitForFunction((text) => document.querySelector('#day-checked').textContent.includes(text), what);
  await said('At 02:10 the bank stands at 54');
  await said('07:00');
  // Drawn on from there in temperatures and charge.
  await t.page.waitForFunction(() => [...document.querySelectorAll('.day-charts .end-label')].filter((one) => one.textContent === 'From now').length === 2);
  await read(t.page, 1, '03:10', '50', '25');
  await read(t.page, 2, '04:10', '46', '25');
  await t.page.waitForFunction(() => /What the bank gives from full to empty|tell neither/.test(document.querySelector('.checked').textContent));
  await t.page.locator('.checked').waitFor();
});

test('the longest cool night becomes the mode plan at a tap', async (t) => {
  await oneDay(t, '40');
  await t.page.waitForFunction(() => document.querySelector('#day-longest').textContent === '');
  await t.page.getByRole('button', { name: 'Take it as the mode plan' }).click();
  await fold(t.page, 'Mode plan by the clock');
  // A fold is built a moment after it opens.
  await t.page.locator('.mode-row').first().waitFor();
  assert.equal(await t.page.inputValue('#mode-plan-0--from-clock-min'), '21:00');
});

test('how much is enough is looked for, and taken', async (t) => {
  await oneDay(t, '20');
  await fold(t.page, 'How much is enough?');
  await t.page.selectOption('#day-unknown', { label: 'the charge of a block' });
  await t.page.waitForFunction(() => /^Blocks of/.test(document.querySelector('#day-enough').textContent));
  await t.page.getByRole('button', { name: 'Take it into the plan' }).click();
  await t.page.waitForFunction(() => /^It lasts/.test(document.querySelector('#day-answer').textContent));
});

test('it fits a phone', { context: { viewport: { width: 390, height: 844 } } }, async (t) => {
  await open(t);
  await settled(t.page);
  await t.page.evaluate(async () => {
    for (let turn = 0; turn < 3; turn += 1) {
      for (const one of document.querySelectorAll('section:has(#question-3) details:not([open])')) one.open = true;
      await new Promise((done) => setTimeout(done, 50));
    }
  });
  const wide = await t.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  assert.ok(wide <= 0, `${wide} px too wide`);
});

test('from disk the band arrives too', async ({ page, scratch }) => {
  const alone = join(scratch(), 'saved page.html');
  copyFileSync(SINGLE, alone);
  await page.goto(pathToFileURL(alone).href);
  await ready(page);
  await unfold(page);
  await settled(page);
});

test('and in a sandboxed frame without an origin', async ({ page, open: serve, scratch }) => {
  const root = scratch();
  copyFileSync(SINGLE, join(root, 'till-morning.html'));
  writeFileSync(join(root, 'index.html'), `<!doctype html><title>A report</title><link rel="icon" href="data:,">
    <iframe title="hours" sandbox="allow-scripts" src="./till-morning.html" width="600" height="800"></iframe>`);
  const site = await serve({ root });
  await page.goto(site.url);
  const frame = await (await page.waitForSelector('iframe')).contentFrame();
  await ready(frame);
  assert.equal(await frame.evaluate(() => window.origin), 'null');
  await unfold(frame);
  await settled(frame);
  assert.match(await answer(frame), /^It lasts all 7 days/);
});
