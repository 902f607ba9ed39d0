// For those who read with other colours, larger text, without motion, or by ear.
import assert from 'node:assert/strict';
import { misfits } from './fit.mjs';
import { allOpen } from './focus.mjs';
import { complete, expect, layOut, test, withExample } from './harness.mjs';
import { unseen } from './seen.mjs';

const AH = '#banks-0--battery-rated-ah';
const PHONE = { viewport: { width: 390, height: 844 } };

/** The example, everything open and laid out. */
async function spread(page, url) {
  await page.goto(url);
  await withExample(page);
  await allOpen(page);
  await layOut(page);
}

// ---- colours of the reader's system ----

for (const colorScheme of ['light', 'dark']) {
  const context = { ...PHONE, forcedColors: 'active', colorScheme };
  test(`forced colours, ${colorScheme}: fields, buttons, lines and states are seen`, { context }, async ({ page, url, shot }) => {
    await spread(page, url);
    assert.ok(await page.evaluate(() => matchMedia('(forced-colors: active)').matches));
    const { faults, controls, marks } = await unseen(page);
    assert.deepEqual(faults, []);
    assert.ok(controls > 300 && marks > 150, `${controls} controls, ${marks} marks`);
    for (const [what, place] of Object.entries({ charts: '.day-charts', wiring: '.diagram >> nth=2', first: '.first' })) {
      await page.locator(place).first().evaluate((one) => one.scrollIntoView());
      await shot(what);
    }
    // A field whose text is wrong has a heavier edge, and words.
    const edge = () => page.locator(AH).evaluate((one) => Number.parseFloat(getComputedStyle(one).borderTopWidth));
    const before = await edge();
    await page.fill(AH, 'plenty');
    await expect(page.locator(`${AH}-error`)).toHaveText(/enter a number/);
    assert.ok((await edge()) > before);
    await page.locator(AH).evaluate((one) => one.scrollIntoView({ block: 'center' }));
    await shot('wrong');
  });

  test(`forced colours, ${colorScheme}: also where an author chose the other looks`, { context }, async ({ page, url }) => {
    await spread(page, url);
    await page.evaluate((theme) => { document.documentElement.dataset.theme = theme; }, colorScheme === 'dark' ? 'light' : 'dark');
    assert.deepEqual((await unseen(page)).faults, []);
  });
}

test('control: colours of our own on the system’s paper are found', { context: { ...PHONE, forcedColors: 'active', colorScheme: 'dark' } }, async ({ page, url }) => {
  await spread(page, url);
  await page.addStyleTag({ content: ':root:root:root { --ink: #2a2620; --curve-0: #222; --ember: #111; } .quiet { border: 0 !important; }' });
  const { faults } = await unseen(page);
  for (const kind of ['not seen: path.curve style-0', 'not seen: path.pic-wire', 'pressed, and looks', 'no edge: button']) {
    assert.ok(faults.some((fault) => fault.startsWith(kind)), `${kind}\n${faults.join('\n')}`);
  }
});

// ---- larger text ----

const NARROW = { viewport: { width: 320, height: 640 } };
const enlarge = (page, size) => page.addStyleTag({ content: `html { font-size: ${size} !important; }` });

test('text of twice the size at 320 px: nothing is cut off, over another, or outside', { context: NARROW }, async ({ page, url, shot }) => {
  await spread(page, url);
  assert.deepEqual(await misfits(page), [], 'at the usual size');
  await enlarge(page, '200%');
  assert.deepEqual(await misfits(page), []);
  await page.evaluate(() => window.scrollTo(0, 0));
  await shot('twice');
});

test('text of twice the size: the first screen, before a plan is there', { context: NARROW }, async ({ page, url }) => {
  await page.goto(url);
  await complete(page);
  await enlarge(page, '200%');
  await layOut(page);
  assert.deepEqual(await misfits(page), []);
});

test('control: what does not fit is found', { context: NARROW }, async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
  await layOut(page);
  await page.addStyleTag({ content: `
    .rests-on, .detail { white-space: nowrap; }
    ${AH} { font-size: 9rem !important; }
    .duty .field { margin-top: -3rem !important; }
    .foot { height: 1rem; overflow: hidden; }` });
  const found = await misfits(page);
  for (const kind of ['sticks out of the page', 'its text is cut off', 'over one another', 'cut off: p', 'the page is']) {
    assert.ok(found.some((fault) => fault.startsWith(kind)), `${kind}\n${found.join('\n')}`);
  }
});

// ---- motion ----

/** Transitions, animations and gliding scrolls that the style sheet asks for. */
const motions = (page) => page.evaluate(() => {
  const long = (list) => list.split(',').some((time) => Number.parseFloat(time) > 0);
  const all = [...document.querySelectorAll('*')].filter((one) => {
    const its = getComputedStyle(one);
    return long(its.transitionDuration) || its.animationName !== 'none' || its.scrollBehavior === 'smooth';
  });
  return all.map((one) => `${one.tagName} ${one.className}`);
});

/** Follows a question's link, types, and presses; gives what ran meanwhile. */
async function moved(page) {
  await page.evaluate(() => {
    window.ran = [];
    for (const kind of ['transitionrun', 'animationstart']) window.addEventListener(kind, ({ target }) => window.ran.push(target.tagName), true);
  });
  await page.locator('.questions a[href="#question-4"]').click();
  await page.locator('#voltage-tap-0 button').nth(1).hover();
  await page.locator('#voltage-tap-0 button').nth(1).click();
  await page.fill(AH, 'plenty');
  await page.waitForSelector('.outcome.stale');
  return page.evaluate(() => [...window.ran, ...document.getAnimations().map((one) => one.effect.target.tagName)]);
}

test('who asks for no motion gets none', { context: { ...PHONE, reducedMotion: 'reduce' } }, async ({ page, url }) => {
  await spread(page, url);
  assert.deepEqual(await motions(page), []);
  assert.deepEqual(await moved(page), []);
});

test('control: without asking there are transitions', { context: { ...PHONE, reducedMotion: 'no-preference' } }, async ({ page, url }) => {
  await page.goto(url);
  await withExample(page);
  assert.ok((await motions(page)).length > 20);
  assert.ok((await moved(page)).length > 0);
});

// ---- by ear, and as a table ----

const cells = (row) => row.locator('th, td').allTextContents();
const plain = (text) => text.replace(/\s+/gu, ' ').trim();

test('every chart has a name, and its table the numbers that it reads out', { context: PHONE }, async ({ page, url }) => {
  await spread(page, url);
  // The example has no charger: a chart without a curve would say what is not so.
  await expect(page.locator('figure.chart:not(:has(.curve, .layer))').filter({ visible: true })).toHaveCount(0);
  const charts = page.locator('figure.chart:not([hidden]):has(.curve, .layer)');
  const count = await charts.count();
  assert.ok(count >= 7, `${count} charts`);
  for (let at = 0; at < count; at += 1) {
    const chart = charts.nth(at);
    const canvas = chart.locator('.canvas');
    await expect(canvas).toHaveRole('slider');
    await expect(canvas).toHaveAccessibleName(/\w{3}/);
    await expect(chart.locator('figcaption')).toHaveText(/\w/);
    const title = await canvas.getAttribute('aria-label');
    // Three charts on one clock have their tables together, each under its title.
    const own = chart.locator('table');
    const table = (await own.count()) ? own : page.locator(`.day-charts div:has(> h4:text-is("${title}")) table`);
    await canvas.focus();
    await canvas.press('Home');
    const said = plain(await canvas.getAttribute('aria-valuetext'));
    const [first, ...values] = (await cells(table.locator('tbody tr').first())).map(plain);
    const heads = (await cells(table.locator('thead tr').first())).map(plain).slice(1);
    assert.ok(values.some((value) => /\d/.test(value)), `${title}: ${values}`);
    const read = heads.map((head, place) => values[place] && `${head} ${values[place]}`).filter(Boolean).join(', ');
    assert.equal(said, `${first}: ${read}`, title);
  }
});

test('every drawing has a name with its numbers, and they stand in a table too', { context: PHONE }, async ({ page, url }) => {
  await spread(page, url);
  const drawings = page.locator('main figure:not([hidden]) svg:not([aria-hidden=true])');
  const names = await drawings.evaluateAll((all) => all.map((one) => [one.getAttribute('role'), one.ariaLabel]));
  assert.ok(names.length >= 6, `${names.length} drawings`);
  for (const [role, name] of names) {
    assert.equal(role, 'img');
    assert.match(name, /\w{3}/);
  }
  const tables = (await page.locator('main :is(td, th)').allTextContents()).map(plain).join('\n');
  // What is printed on the battery stands in its field.
  const typed = await page.locator('main input').evaluateAll((all) => all.map((one) => one.value));
  const missing = names.flatMap(([, name]) => plain(name).match(/[\d.]+ (?:k?Wh|A|V|mm²)(?!\w)/g) ?? []).filter((number) => !tables.includes(number) && !typed.includes(number.split(' ')[0]));
  assert.deepEqual(missing, []);
  // Control: there are numbers to look for, and another would be missed.
  assert.ok(names.flatMap(([, name]) => name.match(/\d/g) ?? []).length > 100);
  assert.ok(!tables.includes('9199 Wh'));
});
