// 'Can it be recharged', from outside: a sentence, rows that open to their working,
// more amps are no slower, a number that cannot be, and a bank that nothing fills.
import assert from 'node:assert/strict';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, layOut, test, withExample } from './harness.mjs';

const QUESTION = 'section:has(#question-4)';
const answer = (page) => page.locator('#refill-answer');

async function open({ page, url }) {
  await page.goto(url);
  await withExample(page);
  await page.locator('summary:has(#question-4)').click();
  await expect(answer(page)).toHaveText(/\d/);
}
const fold = (page, text) => page.locator(`${QUESTION} summary`, { hasText: text }).click();

/** Minutes in a row's verdict such as `6 h 20 min`. */
async function minutes(page, row) {
  const verdict = page.locator(`${row} .source-verdict`);
  await expect(verdict).toHaveText(/\d\s(h|min)/);
  const text = (await verdict.textContent()).replaceAll(/[\u2009\u202f\u00a0]/g, ' ');
  const found = /(?:(\d+) h)? ?(?:(\d+) min)?/.exec(text.slice(text.search(/\d/)));
  const all = 60 * Number(found[1] ?? 0) + Number(found[2] ?? 0);
  assert.ok(all > 0, text);
  return all;
}

test('the example is answered, and each source opens to its working', async (t) => {
  await open(t);
  // By night the bank falls, and the sun is what fills it.
  await expect(answer(t.page)).toHaveText(/^Tonight leaves \d+.%\. Tomorrow/s);
  const rows = t.page.locator('.sources-of-charge details');
  await expect(rows).not.toHaveCount(0);
  for (const row of await rows.all()) {
    await row.locator('summary').first().click();
    await expect(row.locator('.fold-body').first()).toHaveText(/\d/);
  }
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).include(QUESTION).analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
  await t.shot();
});

test('more amps fill it sooner; a number that cannot be leaves the last answer, marked', async (t) => {
  await open(t);
  await fold(t.page, 'What charges it');
  await t.page.locator(QUESTION).getByRole('button', { name: 'Add a charger' }).click();
  const amps = t.page.locator(`${QUESTION} input[id$="most-a"]`).first();
  await amps.waitFor();
  const settled = () => expect(t.page.locator('.refill .outcome.behind')).toHaveCount(0);
  await t.page.locator('#charger-0').waitFor();
  const usual = await minutes(t.page, '#charger-0');
  await amps.fill('10');
  await amps.blur();
  // Ten amps are fewer than what is assumed.
  await expect.poll(() => minutes(t.page, '#charger-0')).toBeGreaterThan(usual);
  await settled();
  const slow = await minutes(t.page, '#charger-0');
  const before = await answer(t.page).textContent();
  await amps.fill('20');
  await amps.blur();
  await expect(answer(t.page)).not.toHaveText(before);
  await settled();
  await expect.poll(() => minutes(t.page, '#charger-0')).toBeLessThan(slow);
  const good = await answer(t.page).textContent();
  await amps.fill('many');
  await t.page.locator('.refill .outcome.stale').waitFor();
  await expect(answer(t.page)).toHaveText(good);
  await expect(t.page.locator(`${QUESTION} .field.wrong .error`).first()).toHaveText(/\d.*A/);
  await expect(amps).toHaveValue('many');
});

test('curves of current and charge are drawn', async (t) => {
  await open(t);
  await expect(t.page.getByText('Charging curves'), 'without a charger there are none').toBeHidden();
  await fold(t.page, 'What charges it');
  await t.page.locator(QUESTION).getByRole('button', { name: 'Add a charger' }).click();
  await fold(t.page, 'Charging curves');
  await t.page.locator('.refill svg path.curve').first().waitFor();
});

// The answer comes a moment after the plan has changed: the table is of the answer.
test('the table behind a curve names the charger that the curve is of', async (t) => {
  await open(t);
  await fold(t.page, 'What charges it');
  await t.page.locator(QUESTION).getByRole('button', { name: 'Add a charger' }).click();
  await fold(t.page, 'Charging curves');
  const chart = t.page.locator('.refill figure.chart').first();
  await chart.locator('summary').click();
  const head = chart.locator('table th[scope="col"]').nth(1);
  await expect(head).toHaveText(/Shore charger/);
  await t.page.locator(`${QUESTION} select[id$="fed-0"]`).selectOption({ index: 1 });
  await expect(chart.locator('svg')).toHaveText(/Engine charger/);
  await expect(head).toHaveText(/Engine charger/);
});
