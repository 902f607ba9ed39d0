// With the keyboard alone: no mouse, and no field that is not reached by Tab.
import assert from 'node:assert/strict';
import { allOpen, focused, tabTo, walk } from './focus.mjs';
import { complete, expect, test, withExample } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const DRAW = '#start-units-0--modes-0--power-w';
const PHONE = { viewport: { width: 390, height: 844 } };
const handle = (number) => `section:has(#question-${number}) > details > summary`;
const wrongs = (way) => way.filter(({ wrong }) => wrong.length).map(({ name, wrong }) => `${name}: ${wrong.join(', ')}`);

/** Goes there by Tab; the focus is seen at every stop on the way. */
async function to(page, selector, key) {
  const way = await tabTo(page, selector, key);
  assert.deepEqual(wrongs(way), []);
}

/** Opens a folded question by a key on its title. */
async function unfold(page, number, key) {
  await to(page, handle(number));
  await page.keyboard.press(key);
  await expect(page.locator(`section:has(#question-${number}) > details`)).toHaveAttribute('open', '');
  await expect(page.locator(`section:has(#question-${number}) .fold-body > div`).first()).not.toHaveText(/^(Loading.*)?$/);
}

/** Types over what stands in the field with the keyboard: Tab has chosen all of it. */
async function typeOver(page, selector, text) {
  await to(page, selector);
  await page.keyboard.type(text);
  await expect(page.locator(selector)).toHaveValue(text);
}

test('from an empty plan through all six questions by keys', { context: PHONE }, async ({ page, url, shot }) => {
  await page.goto(url);
  await complete(page);
  await to(page, AH);
  await page.keyboard.type('320');
  await to(page, '#voltage-tap-0 button');
  await page.keyboard.press('Space');
  await expect(page.locator('#voltage-tap-0 button').first()).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('#voltage-tap-0 button').first(), 'a pressed tap keeps the keyboard').toBeFocused();
  await to(page, DRAW);
  await page.keyboard.type('45');
  // 320 Ah of 12.8 V, nine tenths of it, over 45 W: 82 h by hand, less what is lost on the way.
  await expect(page.locator('#answer')).toHaveText(/runs 3\.[345] days/);

  // 2: another unknown is asked for.
  const needed = page.locator('section:has(#question-2) .answer');
  await to(page, '#unknown');
  await page.keyboard.press('ArrowDown');
  await expect(needed).toHaveText(/runs .* on this bank/);

  // 3: the day's high, and its charts by arrows.
  await unfold(page, 3, 'Enter');
  await expect(page.locator('#day-answer')).toHaveText(/\w/);
  // Until all of the answer stands it still grows, and moves what is below it.
  await expect(page.locator('.changes li').first()).toBeAttached();
  await typeOver(page, '#day-high-c', '46');
  await expect(page.locator('.day-charts figcaption').first()).toHaveText(/46\s°C/);
  await to(page, '.day-charts .canvas', { key: 'Shift+Tab' });
  await page.keyboard.press('End');
  const end = await page.locator('.day-charts .canvas:focus').getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowLeft');
  await expect(page.locator('.day-charts .canvas:focus')).not.toHaveAttribute('aria-valuetext', end);

  // 4: the picture's first part opens its row and gives it the keyboard.
  await unfold(page, 4, 'Space');
  await to(page, '.picture-spot');
  await page.keyboard.press('Enter');
  await expect(page.locator('.circuits details[open] > summary:focus, .refill details[open] > summary:focus')).toHaveCount(1);
  assert.deepEqual((await focused(page)).wrong, []);
  await shot('wiring-opened');

  // 5: a claim is added and filled in.
  await unfold(page, 5, 'Enter');
  await to(page, 'section:has(#question-5) button.quiet');
  await page.keyboard.press('Enter');
  await typeOver(page, '#claims-0--claimed-wh', '4096');
  await expect(page.locator('#claims-answer')).toHaveText(/Claim 1/);

  // 6: the link's code is made.
  await unfold(page, 6, 'Space');
  await to(page, 'section:has(#question-6) .fold-body button');
  await page.keyboard.press('Enter');
  await expect(page.locator('#notice, section:has(#question-6) [role=status]').first()).toHaveText(/\w/);

  // And back: a title folds its question away again, what was typed stays.
  await to(page, handle(5), { key: 'Shift+Tab' });
  await page.keyboard.press('Enter');
  await expect(page.locator('section:has(#question-5) > details')).not.toHaveAttribute('open', '');
  await expect(page.locator(AH)).toHaveValue('320');
  await expect(page.locator(DRAW)).toHaveValue('45');
});

test('a question’s link, the undo and a term’s mark by keys', { context: PHONE }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await to(page, '.questions a[href="#question-4"]');
  await page.keyboard.press('Enter');
  await expect(page.locator('section:has(#question-4) > details')).toHaveAttribute('open', '');
  // From there on Tab goes on in that question, and not from the top of the page.
  await page.keyboard.press('Tab');
  await expect(page.locator('section[aria-labelledby="question-4"]:focus-within')).toHaveCount(1);
  await to(page, AH, { key: 'Shift+Tab' });
  await page.keyboard.type('150');
  await to(page, '.questions .quiet', { key: 'Shift+Tab' });
  await page.keyboard.press('Space');
  await expect(page.locator(AH)).toHaveValue('');
  await to(page, '.meaning-mark');
  await page.keyboard.press('Enter');
  await expect(page.locator('.meaning-mark').first()).toHaveAttribute('aria-expanded', 'true');
});

test('with everything open Tab reaches all there is in its order, and back', { context: PHONE }, async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
  await page.reload(); // nothing has the keyboard
  await complete(page);
  const count = await allOpen(page);
  assert.ok(count > 400, `${count} stops`);
  const order = Array.from({ length: count }, (_, place) => place);
  const on = await walk(page);
  assert.deepEqual(on.map(({ place }) => place), order);
  assert.deepEqual(wrongs(on), []);
  const back = await walk(page, 'Shift+Tab');
  assert.deepEqual(back.map(({ place }) => place), order.reverse());
  assert.deepEqual(wrongs(back), []);
});

/** The page with a fault in it that a walk must see. */
const faults = {
  'no outline': { style: 'summary:focus-visible { outline: 0; }', seen: /no outline/ },
  'an outline of the paper’s colour': { style: 'summary:focus-visible { outline-color: var(--rule); }', seen: /too faint/ },
  'an outline cut off': { style: '.locale { overflow: hidden; } .locale > summary { outline-offset: 8px !important; }', seen: /cut off/ },
  'a bar over it': { style: 'main::before { content: ""; position: fixed; inset: 0; z-index: 9; }', seen: /covered/ },
};

for (const [fault, { style, seen }] of Object.entries(faults)) {
  test(`control: the walk sees ${fault}`, async ({ page, url }) => {
    await page.goto(url);
    await complete(page);
    await page.addStyleTag({ content: style });
    const way = await tabTo(page, AH);
    assert.ok(wrongs(way).some((text) => seen.test(text)), wrongs(way).join('\n'));
  });
}

test('control: the walk sees a trap and another order', async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await page.locator(AH).evaluate((one) => { one.tabIndex = 5; });
  const way = await tabTo(page, DRAW);
  assert.equal(way[0].name, AH);
  await page.evaluate((field) => document.querySelector(field).addEventListener('keydown', (event) => event.preventDefault()), AH);
  await assert.rejects(tabTo(page, handle(3), { key: 'Shift+Tab', most: 40 }), /not reached/);
});
