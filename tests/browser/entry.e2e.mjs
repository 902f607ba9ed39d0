// What is typed and how it is understood, from outside.
import { deflateRawSync, deflateSync } from 'node:zlib';
import { expect, openLocale, ready, test, withExample } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const POWER = '#units-0--modes-0--power-w';
const visit = async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
};
/** The page has come to say so. */
const says = (frame, selector, wanted) => expect(frame.locator(selector).first()).toHaveText(wanted);
const value = (frame, selector, wanted) => expect(frame.locator(selector)).toHaveValue(wanted);
const echo = (field) => `.field:has(${field}) .echo`;
const unit = (field) => `.field:has(${field}) .unit`;
const button = (page, name) => page.getByRole('button', { name, exact: true });

test('amps typed in a draw are amps, and the field keeps the keyboard', async (t) => {
  await visit(t);
  await t.page.focus(POWER);
  await t.page.fill(POWER, '');
  await t.page.keyboard.type('45 A');
  await says(t.page, echo(POWER), /45\s?A at 25\.6\s?V/);
  await expect(t.page.locator(POWER)).toBeFocused();
  await value(t.page, POWER, '45 A');
  await t.page.keyboard.press('Tab');
  await value(t.page, POWER, '45');
  await says(t.page, unit(POWER), /^A$/);
  await says(t.page, echo(POWER), /45\s?A at 25\.6\s?V/);
  await t.page.fill(POWER, '230-250 W');
  await says(t.page, echo(POWER), /240\s?W ±10\s?W/);
  await t.page.fill(POWER, '690 W');
  await t.page.locator(POWER).blur();
  await value(t.page, POWER, '690');
  await says(t.page, unit(POWER), /^W$/);
});

test('a browser set to en-US begins with US units, and a fresh plan keeps them', { context: { locale: 'en-US' } }, async (t) => {
  await visit(t);
  await openLocale(t.page);
  await expect(t.page.locator('#us-units')).toBeChecked();
  await t.page.getByText('Split cooler: supply and cable').click();
  const length = '#units-0--cable-length-m';
  await value(t.page, length, '8.202');
  await t.page.fill(length, '9999');
  await says(t.page, `${length}-error`, /from 0 to 656\s?ft/);
  await button(t.page, 'Start fresh').click();
  await says(t.page, '#notice', /fresh plan/);
  await expect(t.page.locator('#us-units')).toBeChecked();
  await t.page.uncheck('#us-units');
  await button(t.page, 'Start fresh').click();
  await expect(t.page.locator('#us-units')).not.toBeChecked();
});

test('the vane and the airflow follow the units', async (t) => {
  await visit(t);
  await openLocale(t.page);
  await t.page.check('#us-units');
  await t.page.locator('summary:has(#question-5)').click();
  await t.page.getByText('Cooling capacity from air readings').click();
  await says(t.page, unit('#air-airflow-m3-h'), /^cfm$/);
  await says(t.page, unit('#air-free-area-m2'), /^ft²$/);
  await says(t.page, unit('#air-vane'), /^ft\/min$/);
  await t.page.fill('#air-vane', '500 510 fpm 2.5m/s');
  await t.page.locator('#air-vane').blur();
  await t.page.uncheck('#us-units');
  await says(t.page, unit('#air-vane'), /^m\/s$/);
  await value(t.page, '#air-vane', '2.54 2.5908 2.5');
});

test('a claim that was added is spoken of, and one without a meter is not judged', async (t) => {
  await visit(t);
  await t.page.locator('summary:has(#question-5)').click();
  await says(t.page, '#claims-answer', /^No claim yet/);
  await button(t.page, 'Add a claim').click();
  await says(t.page, '#claims-answer', /^Claim 1: enter what is claimed/);
  await t.page.fill('#claims-0--claimed-wh', '4096');
  await t.page.fill('#claims-0--measured-wh', '4319');
  await says(t.page, '#claims-answer', /not checked yet \(meter not chosen\)/);
  await value(t.page, '.field:has(#claims-0--measured-wh) select', 'measured');
});

// Invented, like all gear here.
const published = {
  version: 1,
  banks: [{ chemistry: 'lfp', battery_nominal_v: 12.8, battery_rated_ah: 100, measured: { measured_ah: { value: 104, from: 'measured' } } }],
  units: [{ modes: [{ name: 'Hold', power_w: 200 }] }],
  reader: { language: 'en', open: ['banks[0].battery_rated_ah', 'banks[0].chemistry'] },
};
function linkOf(what) {
  const json = Buffer.from(JSON.stringify(what));
  const sum = deflateSync(json).subarray(-4); // RFC 1950: Adler-32 comes last
  return `p1.${Buffer.concat([deflateRawSync(json, { level: 9 }), sum]).toString('base64url')}`;
}

test('a reader types 2x100 and takes it back, and is told what went', async ({ page, url }) => {
  await page.goto(`${url}#${linkOf(published)}`);
  await ready(page);
  const answer = page.locator('#answer');
  const first = await answer.textContent();
  await says(page, '#not-measured', '');
  await page.fill(AH, '2x100');
  await says(page, echo(AH), /200\s?Ah/);
  await says(page, '#not-measured', /not the one that was measured/);
  await expect(answer).not.toHaveText(first);
  await page.locator(AH).blur();
  await value(page, AH, '200');
  await page.fill(AH, '100');
  await says(page, '#answer', first);
  await says(page, '#not-measured', /^$/);
  await page.selectOption('#banks-0--chemistry', { label: 'AGM lead-acid' });
  await expect(answer).not.toHaveText(first);
  await says(page, '#not-measured', /not the one that was measured/);
  await page.selectOption('#banks-0--chemistry', { index: 0 });
  await says(page, '#answer', first);
});
