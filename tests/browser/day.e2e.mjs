// The third question, from outside: the week at the lake, odds and bands a moment
// later, numbers that cannot be, a weather file, the device's position; and all of
// it as one file and in a frame without an origin.
import assert from 'node:assert/strict';
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { DIST, expect, layOut, openAll, ready, test, withExample } from './harness.mjs';

const SINGLE = join(DIST, 'till-morning.html');
const HIGH = '#day-high-c';

const unfold = async (frame) => {
  await frame.locator('summary:has(#question-3)').click();
  await frame.locator('#day-answer').waitFor();
};
const open = async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
  await unfold(page);
};
/** Odds and band are there, and of the present numbers. */
const settled = (frame) => frame.waitForFunction(() => {
  const text = (id) => document.querySelector(id)?.textContent ?? '';
  return text('#day-band') === '' && /certain|%|chance/.test(text('.odds')) && !document.querySelector('.odds.old');
});
const answer = (frame) => frame.locator('#day-answer');
const figure = (frame, at) => frame.locator('.day-charts figure').nth(at);
const band = (frame) => figure(frame, 1).locator('path.band');
const shape = (frame) => band(frame).getAttribute('d');
const field = (frame, id) => frame.locator(`#${id}`);
const fold = (frame, name) => frame.locator('section:has(#question-3) details.fold > summary', { hasText: name }).click();

test('the week at the lake reads from the third question alone', async (t) => {
  await open(t);
  await expect(answer(t.page)).toHaveText(/^It lasts all 7 days/);
  await settled(t.page);
  await expect(t.page.locator('.odds')).toContainText('Never empty in 7 days');
  await expect(t.page.locator('.day-charts figure svg')).toHaveCount(3);
  await expect(band(t.page)).toHaveAttribute('d', /^.{101,}/s);
  // A week has seven nights, and each of them a stretch of dark.
  await expect(figure(t.page, 0).locator('path.shade')).toHaveAttribute('d', /^(M[^M]*){7,}$/);
  await t.page.locator('.changes li').first().waitFor();
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
});

test('the trace follows the keys, the band comes after, and comes the same', async (t) => {
  await open(t);
  await settled(t.page);
  // What comes after the band is there: it has been refined to all its nights.
  await t.page.locator('.changes li').first().waitFor();
  const first = await shape(t.page);
  await t.page.fill(HIGH, '43');
  // At once: the answer is of the new number in the very next frame.
  const at = await t.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(document.querySelector('.day-charts figcaption').textContent))));
  assert.match(at.replace(/\u202f/g, ' '), /to 43 °C/);
  await settled(t.page);
  await expect(band(t.page)).not.toHaveAttribute('d', first);
  await t.page.fill(HIGH, '36');
  await settled(t.page);
  // Refined to as many nights as before.
  await expect(band(t.page)).toHaveAttribute('d', first);
});

test('three charts are read at one stop, by keys', async (t) => {
  await open(t);
  const canvas = t.page.locator('.day-charts .canvas').first();
  await canvas.focus();
  await t.page.keyboard.press('End');
  await expect(t.page.locator('.day-charts .read-out')).toHaveText([1, 2, 3].map(() => /^night 8, 21:00: /));
  await expect(t.page.locator('.day-charts svg .cursor')).toHaveCount(3);
});

test('a number that cannot be is named with its range, and the last answer stays, marked', async (t) => {
  await open(t);
  await settled(t.page);
  const before = await answer(t.page).textContent();
  await t.page.fill(HIGH, '99');
  await expect(t.page.locator('.outcome.stale:has(#day-answer)')).toHaveText(/High of the day: enter a number from .50 to 60\s°C/);
  await expect(answer(t.page)).toHaveText(before);
  await t.page.fill(HIGH, '38');
  await expect(t.page.locator('.outcome:not(.stale):has(#day-answer)')).toHaveCount(1);
});

test('a change is tried at a tap, and undone', async (t) => {
  await open(t);
  await t.page.fill('#day-days-count', '1');
  await t.page.fill('#banks-0--battery-rated-ah', '20');
  await t.page.fill('#banks-0--parallel-count', '1');
  await expect(answer(t.page)).toHaveText(/does not last/);
  await expect(field(t.page, 'day-changes')).toHaveText('');
  await expect(t.page.locator('.changes li').first()).toHaveText(/until empty|lasts all/);
  await expect(field(t.page, 'day-bedtime')).toHaveText('');
  await t.page.locator('.changes li', { hasText: 'battery in parallel' }).getByRole('button').click();
  await expect(field(t.page, 'banks-0--parallel-count')).toHaveValue('2');
  await t.page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(field(t.page, 'banks-0--parallel-count')).toHaveValue('1');
});

test('a weather file is taken, a bad one is named by line and column, and undone', async (t) => {
  await open(t);
  await fold(t.page, 'Place, date and weather');
  const give = (name, text) => {
    const file = join(t.scratch(), name);
    writeFileSync(file, text);
    return t.page.setInputFiles('#weather-file', file);
  };
  const said = field(t.page, 'weather-said');
  await give('miami.tm2', readFileSync(new URL('../data/miami_28_june_1970.tm2', import.meta.url)));
  await expect(said).toHaveText(/TMY2, 24 hours/);
  // The file's own heading: 25° 48' north, five hours behind.
  const latitude = field(t.page, 'day-latitude-deg');
  await expect(latitude).toHaveValue('25.8');
  await expect(field(t.page, 'day-utc-offset-min')).toHaveValue('-300');
  const hours = Array.from({ length: 24 }, (_, hour) => `${hour},${hour === 6 ? 'warm' : 25},0`);
  await give('bad.csv', `hour,temperature,irradiance\n${hours.join('\n')}\n`);
  await expect(said).toHaveClass(/wrong-log/);
  await expect(said).toHaveText(/Line 8, column 2: temperature is not a number/);
  await expect(latitude).toHaveValue('25.8');
  await t.page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(latitude).toHaveValue('');
});

test('the device says where it is, or that it may not', {
  context: { geolocation: { latitude: 38.1234, longitude: -109.0456 }, permissions: ['geolocation'], timezoneId: 'Etc/GMT+7' },
}, async (t) => {
  await open(t);
  await fold(t.page, 'Place, date and weather');
  await t.page.getByRole('button', { name: 'Take my position' }).click();
  await expect(field(t.page, 'day-latitude-deg')).toHaveValue('38.12');
  await expect(field(t.page, 'day-longitude-deg')).toHaveValue('-109.05');
  await expect(field(t.page, 'day-utc-offset-min')).toHaveValue('-420');
  await t.context.clearPermissions();
  await t.page.getByRole('button', { name: 'Take my position' }).click();
  await expect(field(t.page, 'place-said')).toHaveText(/does not let the page know|does not know/);
});

test('a mode plan by the clock and a charger change the answer', async (t) => {
  await open(t);
  await fold(t.page, 'Mode plan by the clock');
  await t.page.getByRole('button', { name: 'Add a time' }).click();
  // The plan that was taken stands there to be edited: off at 07:00, Hold at 21:00.
  await expect(t.page.locator('.mode-row')).toHaveCount(2);
  await t.page.selectOption('#mode-row-1', { label: 'Plunge' });
  await expect(answer(t.page)).toHaveText(/with Plunge/);
  await fold(t.page, 'What feeds the bank');
  await t.page.getByRole('button', { name: 'Add a charger' }).click();
  await expect(figure(t.page, 2).locator('figcaption')).toHaveText(/chargers/);
});

/** One day on a bank that is about enough. */
const oneDay = async (t, ah) => {
  await open(t);
  await t.page.fill('#day-days-count', '1');
  await t.page.fill('#banks-0--battery-rated-ah', ah);
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
  await fold(t.page, 'Readings at night');
  await read(t.page, 0, '02:10', '54', '25');
  const said = (what) => expect(field(t.page, 'day-checked')).toContainText(what);
  await said('02:10: the bank is at 54');
  await said('07:00');
  // Drawn on from there in temperatures and charge.
  await expect(t.page.locator('.day-charts .end-label').getByText('From now', { exact: true })).toHaveCount(2);
  await read(t.page, 1, '03:10', '50', '25');
  await read(t.page, 2, '04:10', '46', '25');
  await expect(t.page.locator('.checked')).toHaveText(/Usable energy of the bank|nothing new/);
});

test('the longest cool night becomes the mode plan at a tap', async (t) => {
  await oneDay(t, '40');
  await expect(field(t.page, 'day-longest')).toHaveText('');
  await t.page.getByRole('button', { name: 'Take it as the mode plan' }).click();
  await fold(t.page, 'Mode plan by the clock');
  await expect(field(t.page, 'mode-plan-0--from-clock-min')).toHaveValue('21:00');
});

test('how much is enough is looked for, and taken', async (t) => {
  await oneDay(t, '20');
  await fold(t.page, 'How much is enough?');
  await t.page.selectOption('#day-unknown', { label: 'capacity of one battery' });
  await expect(field(t.page, 'day-enough')).toHaveText(/^Batteries of/);
  await t.page.getByRole('button', { name: 'Take it into the plan' }).click();
  await expect(answer(t.page)).toHaveText(/^It lasts/);
});

test('it fits a phone', { context: { viewport: { width: 390, height: 844 } } }, async (t) => {
  await open(t);
  await settled(t.page);
  await openAll(t.page, 'section:has(#question-3) details');
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
  // One's own plan, empty: storage and example need no origin.
  await expect(answer(frame)).toHaveText(/^It lasts until 07:00/);
  await withExample(frame);
  await expect(answer(frame)).toHaveText(/^It lasts all 7 days/);
});
