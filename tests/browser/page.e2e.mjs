// What a visitor does with the page, from outside.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { complete, expect, openAll, openLocale, ready, test, withExample } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const DEPTH = '#banks-0--depth-percent';
const POWER = '#units-0--modes-1--power-w';
const answer = (page) => page.locator('#answer').textContent();
const says = (page, text) => expect(page.locator('#answer')).toHaveText(text);
const holds = (page, field, text, why) => expect(page.locator(field), why).toHaveValue(text);
const bars = (page, count) => expect(page.locator('.ribbon .bar-solid')).toHaveCount(count);
/** The page as it opens, with whatever this browser has kept. */
const arrive = async ({ page, url }, fragment = '') => {
  await page.goto(url + fragment);
  await complete(page);
};
/** The same with the example as one's own plan. */
const visit = async (t) => {
  await arrive(t);
  await withExample(t.page);
};
const changed = (page, before) => expect(page.locator('#answer')).not.toHaveText(before);
const button = (page, name) => page.getByRole('button', { name, exact: true });

test('the example is answered, mode by mode', async (t) => {
  await visit(t);
  await says(t.page, /^Hold runs \d+\s?h( \d+\s?min)?, until about \d\d:\d\d\.$/);
  await bars(t.page, 3);
});

test('three numbers of one’s own make another answer', async (t) => {
  await visit(t);
  for (const [field, text] of [[AH, '200'], [DEPTH, '80'], [POWER, '500']]) {
    const before = await answer(t.page);
    await t.page.fill(field, text);
    await changed(t.page, before);
  }
});

test('twice the draw is about half the hours', async (t) => {
  await visit(t);
  const minutes = async () => {
    const [, h, min] = (await answer(t.page)).match(/runs (?:(\d+)\s?h)? ?(?:(\d+)\s?min)?/);
    return 60 * Number(h ?? 0) + Number(min ?? 0);
  };
  const once = await minutes();
  const before = await answer(t.page);
  await t.page.fill(POWER, '860');
  await changed(t.page, before);
  // Other loads keep it above half; sag keeps it near.
  const ratio = (await minutes()) / once;
  assert.ok(ratio > 0.47 && ratio < 0.56, `ratio ${ratio}`);
});

test('a bad text is kept, named, and the last good answer stays, marked', async (t) => {
  await visit(t);
  const before = await answer(t.page);
  await t.page.fill(AH, 'plenty');
  await t.page.waitForSelector('.outcome.stale');
  await says(t.page, before);
  await expect(t.page.locator(`${AH}-error`)).toHaveText(/Capacity of one battery: enter a number from 0\.1/);
  await expect(t.page.locator(AH)).toHaveAttribute('aria-invalid', 'true');
  await t.page.locator(AH).blur();
  await holds(t.page, AH, 'plenty');
  await expect.poll(() => t.page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('plenty');
  await t.page.reload();
  await ready(t.page);
  await holds(t.page, AH, 'plenty', 'typed text survives a reload');
  await t.page.fill(AH, '105');
  await t.page.waitForSelector('.outcome:not(.stale)');
});

test('texts are understood as people write them, and echoed', async (t) => {
  await visit(t);
  for (const [text, echo] of [['2x100', 'read as 2 strings of 100\u202fAh'], ['2560 Wh', 'read as 100\u202fAh']]) {
    await t.page.fill(AH, text);
    await t.page.getByText(echo, { exact: true }).waitFor();
    await holds(t.page, AH, text, 'nothing is rewritten while typing');
  }
  await t.page.fill(DEPTH, '87,5');
  await t.page.locator(DEPTH).blur();
  await holds(t.page, DEPTH, '87.5');
  await t.page.fill('#night-start-clock-min', '9 pm');
  await t.page.getByText('read as 21:00').waitFor();
});

test('undo brings back what was there, step by step', async (t) => {
  await visit(t);
  const first = await answer(t.page);
  await t.page.fill(AH, '50');
  await changed(t.page, first);
  const second = await answer(t.page);
  await t.page.fill(DEPTH, '50');
  await changed(t.page, second);
  await button(t.page, 'Undo').click();
  await says(t.page, second);
  await button(t.page, 'Undo').click();
  await says(t.page, first);
  // Having taken the example is a step too: before it the plan was empty.
  await button(t.page, 'Undo').click();
  await holds(t.page, AH, '');
  await expect(button(t.page, 'Undo')).toBeDisabled();
});

test('the plan stays in the browser', async (t) => {
  await visit(t);
  const before = await answer(t.page);
  await t.page.fill(AH, '77');
  await changed(t.page, before);
  const mine = await answer(t.page);
  await t.page.reload();
  await ready(t.page);
  await says(t.page, mine);
  await expect(t.page.locator('#notice')).toHaveCount(0);
});

test('a damaged storage is said, set aside, and an empty plan shown', async (t) => {
  await arrive(t);
  await t.page.evaluate(() => localStorage.setItem('till-morning.draft.1', '{"plan": 3'));
  await t.page.reload();
  await ready(t.page);
  await t.page.getByText('could not be read').waitFor();
  assert.equal(await t.page.evaluate(() => localStorage.getItem('till-morning.damaged')), '{"plan": 3');
});

test('a full storage is said, and the page goes on', async (t) => {
  await t.page.addInitScript(() => {
    Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
  });
  await visit(t);
  const before = await answer(t.page);
  await t.page.fill(AH, '60');
  await changed(t.page, before);
  await t.page.getByText('storage is full').waitFor();
});

test('a link carries the plan to another browser', async (t) => {
  await visit(t);
  const before = await answer(t.page);
  await t.page.fill(AH, '123');
  await changed(t.page, before);
  await button(t.page, 'Copy link').click();
  await holds(t.page, '#link', /#p\d\./);
  const link = await t.page.inputValue('#link');
  const mine = await answer(t.page);
  const other = await t.browser.newContext({ locale: 'en-GB' });
  const page = await other.newPage();
  await page.goto(link);
  await ready(page);
  await holds(page, AH, '123');
  await says(page, mine);
  await other.close();
});

test('the address follows the plan, and a reader’s own plan is one undo away', async (t) => {
  await visit(t);
  const before = await answer(t.page);
  await t.page.fill(AH, '66');
  await changed(t.page, before);
  await expect(t.page).toHaveURL(/#.{20,}/);
  const link = t.page.url();
  await t.page.fill(AH, '99');
  await expect(t.page).not.toHaveURL(link);
  await t.page.goto('about:blank');
  await t.page.goto(link);
  await ready(t.page);
  await holds(t.page, AH, '66');
  await t.page.getByText('This plan came from a link').waitFor();
  await button(t.page, 'Undo').click();
  await holds(t.page, AH, '99');
});

test('a plan of one’s own is not said to have come by a link', async (t) => {
  await visit(t);
  await t.page.fill(AH, '66');
  await expect(t.page).toHaveURL(/#.{20,}/);
  // The address is still that of the number before: it follows after a rest.
  await t.page.evaluate(() => { history.replaceState = () => {}; });
  await t.page.fill(AH, '99');
  await expect.poll(() => t.page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('99');
  await t.page.reload();
  await complete(t.page);
  await holds(t.page, AH, '99');
  await expect(t.page.locator('#notice')).toHaveCount(0);
});

test('a fragment that is no link of ours is said to be that', async (t) => {
  await visit(t);
  await t.page.fill(AH, '77');
  await expect.poll(() => t.page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('77');
  for (const fragment of ['#something-else', '#q2.AAAA']) {
    await t.page.goto('about:blank');
    await arrive(t, fragment);
    await expect(t.page.locator('#notice')).toHaveText(/not a link from this page/);
    await holds(t.page, AH, '77');
  }
  // A place in the page is one.
  await t.page.goto('about:blank');
  await arrive(t, '#question-2');
  await holds(t.page, AH, '77');
  await expect(t.page.locator('#notice')).toHaveCount(0);
  await t.page.evaluate(() => { location.hash = 'nowhere'; });
  await expect(t.page.locator('#notice')).toHaveText(/not a link from this page/);
});

/** Two tabs that show the same plan. */
async function twoTabs(t) {
  await visit(t);
  await t.page.fill(AH, '50');
  await expect.poll(() => t.page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('50');
  const other = await t.context.newPage();
  await arrive({ page: other, url: t.url });
  await holds(other, AH, '50');
  return other;
}
const told = (page) => page.locator('#other-tab');

test('two tabs: each keeps its plan, and is told of the other’s', async (t) => {
  const other = await twoTabs(t);
  await other.fill(AH, '60');
  await expect(told(t.page)).toBeVisible();
  await holds(t.page, AH, '50');
  await expect(told(other)).toHaveCount(0);
  // Typing on here overwrites nothing in silence: now the other one is told.
  await t.page.fill(AH, '70');
  await expect(told(other)).toBeVisible();
  await holds(other, AH, '60');
  // A reload opens what this tab had, and still tells.
  await other.reload();
  await complete(other);
  await holds(other, AH, '60');
  await expect(told(other)).toBeVisible();
  await button(other, 'Use the other tab’s plan').click();
  await holds(other, AH, '70');
  await expect(told(other)).toHaveCount(0);
  await expect(told(t.page)).toHaveCount(0);
  await button(other, 'Undo').click();
  await holds(other, AH, '60');
});

test('two tabs: this one is kept where one says so', async (t) => {
  const other = await twoTabs(t);
  await other.fill(AH, '60');
  await expect(told(t.page)).toBeVisible();
  await button(t.page, 'Keep this one').click();
  await expect(told(t.page)).toHaveCount(0);
  await expect(told(other)).toBeVisible();
  await holds(other, AH, '60');
  await other.close();
  const third = await t.context.newPage();
  await arrive({ page: third, url: t.url });
  await holds(third, AH, '50');
});

test('a plan that another tab overwrote unseen is set aside', async (t) => {
  const other = await twoTabs(t);
  // As a tab that the system has put to sleep: it hears of nothing.
  await other.evaluate(() => window.addEventListener('storage', (event) => event.stopImmediatePropagation(), true));
  await t.page.fill(AH, '70');
  await expect.poll(() => t.page.evaluate(() => localStorage.getItem('till-morning.draft.1'))).toContain('70');
  await t.page.close();
  await other.fill(AH, '60');
  await expect(told(other)).toBeVisible();
  await button(other, 'Use the other tab’s plan').click();
  await holds(other, AH, '70');
});

test('damaged and later links say so, and show one’s own plan', async (t) => {
  await arrive(t, '#p1.AAAA');
  await expect(t.page.locator('#notice')).toHaveText(/The link is damaged/);
  await t.page.goto('about:blank');
  await arrive(t, '#p9.AAAA');
  await expect(t.page.locator('#notice')).toHaveText(/later version/);
});

test('a plan goes into a file and comes back', async (t) => {
  await visit(t);
  await t.page.fill(AH, '88');
  const [download] = await Promise.all([
    t.page.waitForEvent('download'),
    button(t.page, 'Save as file').click(),
  ]);
  const path = join(t.scratch(), 'plan.json');
  await download.saveAs(path);
  assert.equal(JSON.parse(readFileSync(path, 'utf8')).banks[0].battery_rated_ah, 88);
  await button(t.page, 'Start fresh').click();
  await expect(t.page.locator(AH)).not.toHaveValue('88');
  await t.page.setInputFiles('#plan-file', path);
  await t.page.getByText('The plan from the file is open').waitFor();
  await holds(t.page, AH, '88');
});

test('a file that is no plan changes nothing', async (t) => {
  await visit(t);
  const before = await answer(t.page);
  await t.page.setInputFiles('#plan-file', { name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"version":1}') });
  await t.page.getByText('The file is not a plan').waitFor();
  await says(t.page, before);
});

test('feet and degrees Fahrenheit change what is shown, not the answer', async (t) => {
  await visit(t);
  await t.page.getByText('Split cooler: supply and cable').click();
  const length = '#units-0--cable-length-m';
  await holds(t.page, length, '2.5');
  const before = await answer(t.page);
  await openLocale(t.page);
  await t.page.check('#us-units');
  await holds(t.page, length, /^8\.2/);
  await holds(t.page, '#units-0--cable-temperature-c', '104');
  await says(t.page, before);
});

test('another bank and another unit are laid beside the first', async (t) => {
  await visit(t);
  await button(t.page, 'Compare a second bank').click();
  await bars(t.page, 6);
  await button(t.page, 'Compare a second cooling unit').click();
  await bars(t.page, 12);
  await t.page.fill('#banks-1--battery-rated-ah', 'no');
  await button(t.page, 'Remove this bank').first().click();
  await bars(t.page, 6);
  await holds(t.page, AH, 'no', 'a text moves up with its row');
});

test('modes are added, named and removed', async (t) => {
  await visit(t);
  await button(t.page, 'Add a mode').click();
  await t.page.fill('#mode-name-0-3', 'Snore');
  await t.page.locator('.ribbon').getByText('Snore').waitFor();
  await t.page.getByRole('button', { name: 'Remove this mode' }).first().click();
  await bars(t.page, 3);
  await holds(t.page, '#mode-name-0-2', 'Snore');
});

test('any one of bank, hours, draw and depth can be asked for', async (t) => {
  await visit(t);
  const said = t.page.locator('section:has(#question-2) .answer');
  for (const [index, words] of [['0', /needs .*Ah/], ['1', /runs .* on this bank/], ['2', /may draw .*W/], ['3', /depth of discharge of .*%/]]) {
    await t.page.selectOption('#unknown', index);
    await expect(said).toHaveText(words);
  }
});

test('a fold shows the working with this plan’s numbers', async (t) => {
  await visit(t);
  await t.page.getByText('Show the working').click();
  await t.page.getByText('open-circuit voltage at the start').first().waitFor();
  await expect(t.page.locator('.working')).toHaveText(/210\s?Ah/);
});

test('charts are read with the keyboard alone', async (t) => {
  await visit(t);
  await t.page.getByText('Curves', { exact: true }).focus();
  await t.page.keyboard.press('Enter');
  const chart = t.page.locator('.chart .canvas').first();
  await chart.focus();
  await t.page.keyboard.press('End');
  await expect(chart).toHaveAttribute('aria-valuetext', /840\s?Ah: Plunge/);
  await t.page.keyboard.press('ArrowLeft');
  await expect(chart).not.toHaveAttribute('aria-valuetext', /840\s?Ah: Plunge/);
});

test('nothing shifts during a visit', async (t) => {
  await t.page.addInitScript(() => {
    window.shift = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.shift += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await visit(t);
  await t.page.waitForLoadState('networkidle');
  assert.ok((await t.page.evaluate(() => window.shift)) < 0.01);
});

for (const width of [320, 390, 768, 1440]) {
  test(`no sideways scrolling at ${width} px`, { context: { viewport: { width, height: 800 } } }, async (t) => {
    await visit(t);
    await openAll(t.page);
    await expect(t.page.locator('.chart svg').first()).toBeAttached();
    const wide = await t.page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= width, `${wide} px wide`);
  });
}
