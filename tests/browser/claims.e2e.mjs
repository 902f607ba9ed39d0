// The fifth question, from outside: a file in, a column corrected, a stretch
// moved, figures in the plan, and the report on paper.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, layOut, test, withExample } from './harness.mjs';

const open = async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
  await page.locator('summary:has(#question-5)').click();
  await page.locator('.drop').waitFor();
};
/** Minutes, volts and amps: 100 minutes at 20 A and 13 V, then 100 at 10 A. */
const rows = (cell = (k) => (k < 100 ? 20 : 10)) =>
  Array.from({ length: 201 }, (_, k) => `${k},13.0,${cell(k)}`).join('\n');
const give = async (t, name, text) => {
  const file = join(t.scratch(), name);
  writeFileSync(file, text);
  await t.page.setInputFiles('#log-file', file);
};
const energy = (page) => page.locator('.totals tr', { hasText: 'Energy' }).locator('td');

test('a log gives its totals, its stretches and a report', async (t) => {
  await open(t);
  await give(t, 'log.csv', `elapsed min,bank V,draw A\n${rows()}\n`);
  await t.page.waitForSelector('.stretch');
  // 20 A for 100 min and 10 A for 100 min at 13 V are 650 Wh, by hand.
  await expect(energy(t.page)).toHaveText(/^[\d.]+/);
  const wh = Number((await energy(t.page).textContent()).match(/^[\d.]+/)[0]);
  assert.ok(Math.abs(wh - 650) < 3, `${wh} Wh`);
  await expect(t.page.locator('.stretch')).toHaveCount(2);
  await t.page.getByRole('button', { name: 'Use period 1 as the draw of Hold' }).click();
  await expect(t.page.locator('#units-0--modes-1--power-w')).toHaveValue('260');
  await t.page.getByRole('button', { name: 'Check the totals against the label' }).click();
  await expect(t.page.locator('.verdicts')).toContainText('falls short');
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
});

test('a column is corrected, and a bad cell is named by line and column', async (t) => {
  await open(t);
  // Bare headings say nothing: the amps must be spoken for.
  await give(t, 'bare.csv', `elapsed min,one,two\n${rows()}\n`);
  await t.page.waitForSelector('.wrong-log');
  await t.page.selectOption('#column-1', { label: 'voltage' });
  await t.page.selectOption('#column-2', { label: 'current' });
  await t.page.getByRole('button', { name: 'Read it again this way' }).click();
  await t.page.waitForSelector('.stretch');
  await give(t, 'bad.csv', `elapsed min,bank V,draw A\n${rows((k) => (k === 7 ? '2o' : 20))}\n`);
  await t.page.waitForSelector('.wrong-log');
  await expect(t.page.locator('.log-said')).toContainText('Line 9, column 3');
});

test('an edge moves by keys and by pointer', async (t) => {
  await open(t);
  await give(t, 'log.csv', `elapsed min,bank V,draw A\n${rows()}\n`);
  await t.page.waitForSelector('.stretch');
  const edge = t.page.getByRole('slider', { name: 'End of period 1' });
  const now = async () => Number(await edge.getAttribute('aria-valuenow'));
  const before = await now();
  await edge.focus();
  await t.page.keyboard.press('PageDown');
  await expect.poll(now).toBe(before - 10);
  const box = await edge.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await t.page.mouse.move(x, y);
  await t.page.mouse.down();
  await t.page.mouse.move(x - 60, y, { steps: 6 });
  await t.page.mouse.up();
  await expect.poll(now).toBeLessThan(before - 15);
});

test('a stretch is cut, left out, and looked for anew', async (t) => {
  await open(t);
  await give(t, 'log.csv', `elapsed min,bank V,draw A\n${rows()}\n`);
  const count = (many) => expect(t.page.locator('.stretch')).toHaveCount(many);
  await count(2);
  await t.page.getByRole('button', { name: 'Split in two, period 1' }).click();
  await count(3);
  await t.page.getByRole('button', { name: 'Leave out, period 3' }).click();
  await count(2);
  await t.page.getByRole('button', { name: 'Find them again' }).click();
  await expect(t.page.locator('.stretch').nth(1)).toContainText('130');
});

test('the invented bench report fits its paper', async (t) => {
  await open(t);
  await t.page.getByRole('button', { name: 'Try the invented log' }).click();
  await t.page.waitForSelector('.stretch');
  await t.page.getByRole('button', { name: 'Check the totals against the label' }).click();
  await t.page.waitForSelector('.verdicts');
  const file = join(t.scratch(), 'report.pdf');
  await t.page.pdf({ path: file, format: 'A4' });
  assert.equal(readFileSync(file).subarray(0, 5).toString(), '%PDF-');
  await t.page.emulateMedia({ media: 'print' });
  await t.page.setViewportSize({ width: 718, height: 1000 });
  const cut = await t.page.evaluate(() => [...document.querySelectorAll('.bench-report *, .totals *')]
    .filter((one) => one.getBoundingClientRect().right > innerWidth + 1).length);
  assert.equal(cut, 0);
});

test('a night is fitted, its last third predicted, and the figures taken into the plan', async (t) => {
  await open(t);
  await t.page.getByRole('button', { name: 'Try an invented night' }).click();
  await t.page.waitForSelector('#log-night');
  await t.page.getByRole('button', { name: 'Fit the plan to this log' }).click();
  const figures = t.page.locator('#log-night-figures tbody tr');
  // The fit comes in slices: half a minute is plenty for a slow machine.
  await expect(figures).toHaveCount(6, { timeout: 30_000 });
  const loss = figures.filter({ hasText: 'Heat that enters the cabin' });
  await expect(loss).toContainText('yes');
  await expect(loss).toContainText('W/K');
  await expect(t.page.locator('#log-night .predicted figure.chart')).toHaveCount(3);
  await expect(t.page.locator('#log-night .predicted')).toContainText('the bank gave');
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).include('#log-night').analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
  await t.page.getByRole('button', { name: 'Use the fitted figures in the plan' }).click();
  await expect(t.page.locator('#log-night-said')).toContainText('Undo reverses it');
  await t.page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(t.page.locator('#log-night-said')).toHaveText('');
  await expect(t.page.getByRole('button', { name: 'Use the fitted figures in the plan' })).toBeVisible();
});

test('a log too short for a fit says what is needed', async (t) => {
  await open(t);
  const short = Array.from({ length: 90 }, (_, k) => `${k},26.0,15,25`).join('\n');
  await give(t, 'short.csv', `elapsed min,bank V,draw A,cabin °C\n${short}\n`);
  await t.page.getByRole('button', { name: 'Fit the plan to this log' }).click();
  await expect(t.page.locator('#log-night-said')).toContainText('a fit takes 3');
});
