// The first minute: someone with a 12 V battery and a phone, from nothing.
import assert from 'node:assert/strict';
import { complete, expect, openAll, test, withExample } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const VOLTS = '#banks-0--battery-nominal-v';
const DRAW = '#start-units-0--modes-0--power-w';
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'en-GB' };
const answer = (page) => page.locator('#answer');
const button = (page, name) => page.getByRole('button', { name, exact: true });
const tap = (page, group, name) => page.locator(group).getByRole('button', { name, exact: true });
const scrolled = (page) => page.evaluate(() => window.scrollY);

/** All of it is inside what is seen, and nothing of the bar at the foot covers it. */
async function inSight(page, selector) {
  const seen = await page.locator(selector).first().evaluate((one) => {
    const box = one.getBoundingClientRect();
    const bar = document.querySelector('.questions');
    const fixed = bar && getComputedStyle(bar).position === 'fixed';
    const foot = fixed ? bar.getBoundingClientRect().top : window.visualViewport.height;
    return { top: box.top, bottom: box.bottom, foot, height: box.height };
  });
  assert.ok(seen.height > 0 && seen.top >= -0.5 && seen.bottom <= seen.foot + 0.5, `${selector}: ${JSON.stringify(seen)}`);
}

test('three fields, twelve keys and four taps at the most give one’s own hours, without a scroll', { context: PHONE }, async ({ page, url, shot }) => {
  await page.goto(url);
  await complete(page);
  for (const one of ['#answer', AH, '#chemistry-tap-0', '#voltage-tap-0', DRAW, '#draw-basis-0-0', '#feed-tap-0']) {
    await inSight(page, one);
  }
  await expect(page.locator('.rests-on')).toHaveText(/Typical values are used for .*capacity.*voltage.*draw/);
  let taps = 0;
  let keys = 0;
  const type = async (field, text) => {
    await page.locator(field).tap();
    taps += 1;
    await page.keyboard.type(text);
    keys += text.length;
  };
  await type(AH, '320');
  await tap(page, '#voltage-tap-0', '12\u202fV').tap();
  taps += 1;
  await type(DRAW, '45');
  await expect(page.locator('.rests-on')).toHaveText('');
  // 320 Ah of 12.8 V for 45 W is between two and four days.
  await expect(answer(page)).toHaveText(/[23](\.\d)? days/);
  await inSight(page, '#answer');
  assert.equal(await scrolled(page), 0);
  assert.ok(taps <= 4 && keys <= 12, `${taps} taps, ${keys} keys`);
  await shot?.('first-minute');
});

test('lead-acid is one tap, and about half the hours', { context: PHONE }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  const before = await answer(page).textContent();
  await tap(page, '#chemistry-tap-0', 'Lead-acid').tap();
  await expect(answer(page)).not.toHaveText(before);
  await expect(tap(page, '#chemistry-tap-0', 'Lead-acid')).toHaveAttribute('aria-pressed', 'true');
});

test('a plan of one’s own never fails to start for a number nobody said', { context: PHONE }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  for (const volts of ['12\u202fV', '24\u202fV', '48\u202fV']) {
    await tap(page, '#voltage-tap-0', volts).tap();
    await expect(answer(page)).not.toHaveText(/start/);
  }
});

test('the example is a tap away, named, and left by a tap; one’s own plan waits', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await page.fill(AH, '77');
  const mine = await answer(page).textContent();
  await button(page, 'Show the example').click();
  await expect(page.locator('#example')).toBeVisible();
  await expect(answer(page)).toHaveText(/Hold/);
  await page.fill('#banks-0--battery-rated-ah', '50');
  await button(page, 'Back to my plan').click();
  await expect(page.locator('#example')).toHaveCount(0);
  await expect(answer(page)).toHaveText(mine);
  await expect(page.locator(AH)).toHaveValue('77');
  await page.reload();
  await complete(page);
  await expect(page.locator(AH)).toHaveValue('77');
});

test('the answer stays in sight over every field of the first question, with a keyboard up', { context: { ...PHONE, viewport: { width: 390, height: 420 } } }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await openAll(page, '.first details');
  for (const field of await page.locator('.first input[type="text"]').all()) {
    await field.focus();
    await field.scrollIntoViewIfNeeded();
    await inSight(page, '#answer');
  }
});

/** The fields of a question's section, folds open, over which none of its answers is in sight. */
const outOfSight = (section) => section.evaluate(async (one) => {
  const shown = (field) => field.checkVisibility() && !field.matches('[type=file]');
  const missed = [];
  let count = 0;
  for (const field of [...one.querySelectorAll('input, select')].filter(shown)) {
    field.scrollIntoView({ block: 'center' });
    field.focus();
    await new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); });
    const inSight = [...one.querySelectorAll('.answer')].some((answer) => {
      const { top, bottom, height } = answer.getBoundingClientRect();
      return height > 0 && top >= -1 && bottom > 0 && top < window.visualViewport.height;
    });
    count += 1;
    if (!inSight) missed.push(field.id);
  }
  return { count, missed };
});

for (const [number, least] of [[2, 5], [3, 40], [4, 30], [5, 10]]) {
  test(`an answer stays in sight over every field of question ${number}, with a keyboard up`, { context: { ...PHONE, viewport: { width: 390, height: 420 } } }, async ({ page, url }) => {
    await page.goto(url);
    await withExample(page);
    await page.locator(`.questions a[href="#question-${number}"]`).click();
    const section = page.locator(`section:has(#question-${number})`);
    await section.locator('.answer').first().waitFor();
    await openAll(page, `section:has(#question-${number}) details`);
    const { count, missed } = await outOfSight(section);
    assert.ok(count >= least, `${count} fields`);
    assert.deepEqual(missed, []);
  });
}

test('the six questions are links, and the back button works between them', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  const nav = page.getByRole('navigation', { name: 'Questions' });
  await expect(nav.getByRole('link')).toHaveCount(6);
  await nav.getByRole('link', { name: 'Wiring' }).click();
  await expect(page.locator('section:has(> details > summary #question-4) > details')).toHaveAttribute('open', '');
  await nav.getByRole('link', { name: 'Hot day' }).click();
  assert.match(page.url(), /#question-3$/);
  await page.goBack();
  assert.match(page.url(), /#question-4$/);
});

test('a question’s link opens it again after it was folded, and after a reload', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  const link = page.getByRole('navigation', { name: 'Questions' }).getByRole('link', { name: 'Hot day' });
  const fold = page.locator('section:has(#question-3) > details');
  await link.click();
  await expect(fold).toHaveAttribute('open', '');
  await fold.locator('> summary').click();
  await expect(fold).not.toHaveAttribute('open', '');
  await link.click();
  await expect(fold).toHaveAttribute('open', '');
  await page.reload();
  await complete(page);
  await expect(fold).toHaveAttribute('open', '');
});

test('undo is in reach, by keys too, and survives a reload', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await page.fill(AH, '150');
  await page.locator(AH).blur();
  await page.fill(DRAW, '60');
  await page.locator(DRAW).blur();
  await page.keyboard.press('Control+z');
  await expect(page.locator(DRAW)).toHaveValue('');
  await expect(page.locator(AH)).toHaveValue('150');
  await page.reload();
  await complete(page);
  await expect(page.locator(AH)).toHaveValue('150');
  await page.keyboard.press('Control+z');
  await expect(page.locator(AH)).toHaveValue('');
});

test('amps or watts, while running or on average, battery or AC are taps', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await tap(page, '#voltage-tap-0', '12\u202fV').click();
  await page.fill(DRAW, '30');
  await tap(page, '#draw-unit-0-0', 'A').click();
  await expect(page.locator(DRAW)).toHaveValue(/^30/);
  await expect(page.getByText('read as 30\u202fA at 12.8\u202fV')).toBeVisible();
  const running = await answer(page).textContent();
  await page.fill('#start-units-0--modes-0--duty-percent', '50');
  await expect(answer(page)).not.toHaveText(running);
  await tap(page, '#draw-basis-0-0', 'on average').click();
  await expect(answer(page)).toHaveText(running);
  await tap(page, '#feed-tap-0', 'on AC').click();
  await expect(answer(page)).not.toHaveText(running);
});

test('a term that a camper may not know opens to one plain sentence', { context: PHONE }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  const mark = button(page, 'What does this mean? Compressor duty cycle').first();
  await expect(page.getByText(/share of the time the compressor runs/).first()).toBeHidden();
  await mark.tap();
  await expect(page.getByText(/share of the time the compressor runs/).first()).toBeVisible();
  await mark.tap();
  await expect(page.getByText(/share of the time the compressor runs/).first()).toBeHidden();
});
