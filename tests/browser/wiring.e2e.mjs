// The fourth question, from outside: an answer, cables that open to the rule that
// decided, bad input, cautions, and a sheet of paper for an electrician.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, layOut, test, withExample } from './harness.mjs';

const QUESTION = 'section:has(#question-4)';
const open = async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
  await page.locator('summary:has(#question-4)').click();
  await page.locator('#wiring-answer').waitFor();
};
const fold = (page, text) => page.locator(`${QUESTION} summary`, { hasText: text }).click();
const answer = (page) => page.locator('#wiring-answer');
const text = (locator) => locator.textContent();
const field = (page, id) => page.locator(`${QUESTION} input[id$="${id}"]`);

test('the example is answered, and a cable opens to its rule in one tap', async (t) => {
  await open(t);
  await expect(answer(t.page)).toHaveText(/^Yes.*cable to the unit carries/s);
  const circuit = t.page.locator('#circuit-unit');
  await expect(circuit.locator('summary').first()).toHaveText(/16\s?mm², carries it/);
  await circuit.locator('summary').first().click();
  await circuit.locator('.deciding').waitFor();
  // Both systems, the rule and where it comes from.
  for (const part of [/At least .+\. What decides is/, /AWG/, /mm²/, /33 CFR 183\.425 table 5/]) await expect(circuit).toHaveText(part);
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).include(QUESTION).analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
});

test('a cable of the diagram opens its row, by a tap and by the keyboard', async (t) => {
  await open(t);
  const picture = t.page.locator('.diagram').first();
  const svg = picture.locator('svg');
  await expect(svg).toHaveAttribute('role', 'img');
  await expect(svg).toHaveAttribute('aria-label', /single-line diagram.*To the unit: carries it; .*16\s?mm²/);
  // As wide as the column, or as lines are easily followed, and nothing of it cut off.
  const wide = await svg.evaluate((one) => [one.getBoundingClientRect().width, one.parentElement.getBoundingClientRect().width]);
  assert(Math.abs(wide[0] - Math.min(wide[1], 720)) < 1.5, String(wide));
  const row = (name) => t.page.locator(`#circuit-${name}`);
  const button = (name) => picture.getByRole('button', { name });
  // Where the cable is drawn, and not only where its button says it is.
  await button(/^To the unit: carries it/).click({ position: { x: 12, y: 24 } });
  await expect(row('unit')).toHaveAttribute('open', '');
  await expect(row('unit').locator('summary').first()).toBeFocused();
  await row('unit').locator('.deciding').waitFor();
  await expect(row('panel')).not.toHaveAttribute('open');
  await button(/^Panels to controller/).focus();
  await t.page.keyboard.press('Enter');
  await expect(row('panel')).toHaveAttribute('open', '');
  await expect(row('panel').locator('summary').first()).toBeFocused();
  await layOut(t.page);
  const found = await new AxeBuilder({ page: t.page }).include(`${QUESTION} .diagram`).analyze();
  assert.deepEqual(found.violations.map((one) => one.id), []);
});

test('what fails in the diagram is a cross and a word, and follows the fields', async (t) => {
  await open(t);
  const picture = t.page.locator('.diagram').first();
  await expect(picture.locator('path.pic-wire.bad')).toHaveCount(0);
  await fold(t.page, 'Your cables');
  await field(t.page, 'units-0--cable-length-m').fill('30');
  await expect(picture.locator('path.pic-wire.bad')).toHaveCount(1);
  await expect(picture.locator('text', { hasText: /^fails: voltage drop/ })).toHaveCount(1);
  await expect(picture.getByRole('button', { name: /^To the unit: fails/ })).toBeVisible();
});

test('a longer, thinner cable fails and says so while its row stays open', async (t) => {
  await open(t);
  await t.page.locator('#circuit-unit summary').first().click();
  await t.page.locator('#circuit-unit .deciding').waitFor();
  await fold(t.page, 'Your cables');
  await field(t.page, 'units-0--cable-length-m').fill('12');
  const conductor = field(t.page, 'units-0--cable-area-mm2');
  await conductor.fill('awg 8');
  await conductor.blur();
  await expect(conductor).toHaveValue('8 AWG');
  await expect(answer(t.page)).toHaveText(/^No, not as entered: the cable to the unit has a voltage drop/);
  await expect(t.page.locator('#circuit-unit .circuit-verdict')).toHaveText(/fails: voltage drop/);
  await expect(t.page.locator('#circuit-unit .deciding')).toBeVisible();
  // The first question runs on the same cable.
  await t.page.locator('section:has(#assumed) details').nth(2).locator('summary').first().click();
  await expect(t.page.locator('#units-0--cable-area-mm2')).toHaveValue('8 AWG');
});

test('what is no number stays, is named, and the last answer with it', async (t) => {
  await open(t);
  await fold(t.page, 'Your cables');
  const before = await text(answer(t.page));
  const length = field(t.page, 'wiring-panel-m');
  const stale = t.page.locator(`${QUESTION} .outcome.stale:has(#wiring-answer)`);
  await length.fill('plenty');
  await expect(t.page.locator(`${QUESTION} [id$="wiring-panel-m-error"]`)).toHaveText(/from 0 to 200/);
  await expect(stale).toBeVisible();
  await expect(answer(t.page)).toHaveText(before);
  await length.fill('4');
  await expect(stale).toHaveCount(0);
});

test('above 50 V while charging it says which tables end', async (t) => {
  await open(t);
  await t.page.locator('#banks-0--series-count').fill('2');
  await t.page.locator('.wiring-cautions', { hasText: 'less than 50 V' }).first().waitFor();
});

test('the electrician’s sheet: the drawing and its cables on one page, what they rest on on the next, and nothing else', async (t) => {
  await open(t);
  await t.page.locator('#electrician > summary').click();
  await t.page.locator('.sheet').waitFor();
  // What the button does before it calls for the printer.
  await t.page.evaluate(() => document.body.classList.add('for-electrician'));
  const file = join(t.scratch(), 'sheet.pdf');
  await t.page.pdf({ path: file, format: 'A4' });
  const pages = readFileSync(file, 'latin1').match(/\/Type\s*\/Page\b/g).length;
  assert.equal(pages, 2);
  await t.page.emulateMedia({ media: 'print' });
  await t.page.setViewportSize({ width: 718, height: 1000 });
  const seen = await t.page.evaluate(() => {
    const shown = (one) => one.getBoundingClientRect().width > 0;
    const cut = [...document.querySelectorAll('.sheet *')].filter((one) => one.getBoundingClientRect().right > innerWidth + 1);
    return { masthead: shown(document.querySelector('.masthead')), sheet: shown(document.querySelector('.sheet')), cut: cut.length };
  });
  assert.deepEqual(seen, { masthead: false, sheet: true, cut: 0 });
});

test('its button prints the sheet and puts everything back', async (t) => {
  await open(t);
  await t.page.evaluate(() => {
    window.print = () => { window.printed = document.body.className; };
  });
  await t.page.getByRole('button', { name: 'Print this page for an electrician' }).click();
  await expect.poll(() => t.page.evaluate(() => window.printed)).toBe('for-electrician');
  await expect.poll(() => t.page.evaluate(() => document.body.className)).toBe('');
});
