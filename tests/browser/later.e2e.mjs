// The parts of the wasm that the first answer does without: they come by themselves, are
// kept, and where one cannot come the page says so and goes on.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { DIST, expect, kept, ready, test } from './harness.mjs';

const [FIRST, REST, KEEPING, LATER] = ['', 'rest-', 'keeping-', 'later-'].map((part) =>
  readdirSync(DIST).find((name) => new RegExp(`^till-morning-${part}[0-9a-f]{16}\\.wasm$`).test(name)));
const [ENGLISH, GERMAN] = ['en', 'de'].map((tag) => readdirSync(DIST).find((name) => name.startsWith(`till-morning-words-${tag}-`)));
const there = (page) => page.waitForSelector('html:not([data-later])', { state: 'attached' });
const missing = (page) => page.waitForSelector('html[data-later="missing"]', { state: 'attached' });
const folds = (page) => page.locator('details.later');
const words = (page) => page.locator('details.later').first().locator('.fold-body').first();
/** A question stands there: not a line on how far its part is. */
const built = async (page) => {
  await expect(words(page)).not.toHaveText(/Loading|not arrived/);
  await expect(words(page)).toHaveText(/\w/);
};
const alone = { context: { serviceWorkers: 'block' } };

/** Opens every folded question, as far as it goes; the runner sees what fails. */
async function openAll(page) {
  await expect(folds(page)).toHaveCount(4);
  for (const one of await folds(page).all()) {
    await one.locator('summary').first().click();
    await expect(one.locator('.fold-body > div').first()).toBeAttached();
  }
}

const charge = (page) => page.locator('#banks-0--battery-rated-ah');

/** Keeps a part back until the function that is returned is called. */
async function holdBack(page, part) {
  let release;
  const held = new Promise((done) => { release = done; });
  await page.route(`**/${part}`, async (route) => { await held; await route.continue(); });
  return release;
}

/** The storage holds a plan with this in it. */
const keeps = (page, text) => expect.poll(() => page.evaluate(() => Object.values(localStorage).join())).toContain(text);

/** A visit that leaves a plan with 17 Ah in the storage. */
async function keepSeventeen(page, url) {
  await page.goto(url);
  await ready(page);
  await there(page);
  await charge(page).fill('17');
  await keeps(page, '17');
}

test('comes by itself, after the first part, and once', alone, async ({ page, open }) => {
  const site = await open();
  await page.goto(site.url);
  await ready(page);
  await there(page);
  await openAll(page);
  await built(page);
  const asked = site.requests.map(({ path }) => path.slice(1));
  assert.deepEqual(asked.filter((name) => [FIRST, REST, KEEPING, LATER].includes(name)), [FIRST, REST, KEEPING, LATER]);
  // One language, and no other.
  assert.deepEqual(asked.filter((name) => name.includes('-words-')), [ENGLISH]);
});

test('what stands below the first screen comes after the answer, and moves nothing', alone, async ({ page, open, shot }) => {
  const site = await open();
  const release = await holdBack(page, REST);
  await page.goto(site.url);
  await ready(page);
  await expect(page.locator('#answer')).toHaveText(/\d/);
  await expect(page.locator('.rest')).toHaveText(/Loading/);
  await charge(page).fill('17');
  await expect(page.locator('#banks-0--series-count')).toHaveCount(0);
  await shot();
  const top = () => page.evaluate(() => document.querySelector('#start').getBoundingClientRect().top);
  const before = await top();
  release();
  await there(page);
  await expect(page.locator('#banks-0--series-count')).toBeVisible();
  await expect(charge(page)).toHaveValue('17');
  assert.equal(await top(), before);
});

test('where that does not come the first screen works, and it is asked for again', { ...alone, expectErrors: true }, async ({ page, open }) => {
  const site = await open();
  await page.route(`**/${REST}`, (route) => route.abort());
  await page.goto(site.url);
  await ready(page);
  await there(page);
  const answer = await page.locator('#answer').textContent();
  await charge(page).fill('17');
  await expect(page.locator('#answer')).not.toHaveText(answer);
  await page.unroute(`**/${REST}`);
  await page.locator('.rest').getByRole('button', { name: 'Try again' }).click();
  await expect(page.locator('#banks-0--series-count')).toBeVisible();
});

test('a language that does not arrive is said, and the one before stays', { ...alone, expectErrors: true }, async ({ page, open }) => {
  const site = await open();
  await page.route(`**/${GERMAN}`, (route) => route.abort());
  await page.goto(site.url);
  await ready(page);
  await there(page);
  await page.locator('.locale > summary').click();
  await page.selectOption('#language', { label: 'Deutsch' });
  await expect(page.getByText('The words of that language have not loaded')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
  await expect(page.locator('#language')).toHaveValue('0');
  await page.unroute(`**/${GERMAN}`);
  await page.selectOption('#language', { label: 'Deutsch' });
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.locator('#question-2')).toHaveText(/Batteriebank/);
});

test('without its words the page says that it did not start', { ...alone, expectErrors: true }, async ({ page, open }) => {
  const site = await open();
  await page.route(`**/${ENGLISH}`, (route) => route.abort());
  await page.goto(site.url);
  await expect(page.locator('#shell .failed')).toBeVisible();
});

test('a question opened before it is there waits for it', alone, async ({ page, open }) => {
  const site = await open();
  const release = await holdBack(page, LATER);
  await page.goto(site.url);
  await ready(page);
  await openAll(page);
  await expect(words(page)).toHaveText(/Loading/);
  release();
  await there(page);
  await built(page);
});

test('where it does not come the page says so, works on, and tries again', { ...alone, expectErrors: true }, async ({ page, open, shot }) => {
  const site = await open();
  await page.route(`**/${LATER}`, (route) => route.abort());
  await page.goto(site.url);
  await ready(page);
  await missing(page);
  await openAll(page);
  await page.getByText('has not loaded').first().waitFor();
  await shot();
  const answer = await page.locator('#answer').textContent();
  await page.locator('#question-1').locator('xpath=..').locator('input').first().fill('17');
  await expect(page.locator('#answer')).not.toHaveText(answer);
  await page.unroute(`**/${LATER}`);
  await page.getByRole('button', { name: 'Try again' }).first().click();
  await there(page);
  await built(page);
});

test('an answer that is no wasm is a part that has not come', { ...alone, expectErrors: true }, async ({ page, open }) => {
  const site = await open();
  await page.route(`**/${LATER}`, (route) => route.fulfill({ status: 404, body: 'not here' }));
  await page.goto(site.url);
  await ready(page);
  await missing(page);
});

test('opens with the server closed', async ({ page, open }) => {
  const site = await open({ store: false });
  await page.goto(site.url);
  await ready(page);
  await there(page);
  await kept(page);
  await site.close();
  await page.reload();
  await ready(page);
  await there(page);
  await openAll(page);
  await built(page);
});

test('what is changed before it is there is kept once it is', alone, async ({ page, open }) => {
  const site = await open();
  const release = await holdBack(page, KEEPING);
  await page.goto(site.url);
  await ready(page);
  const before = await page.locator('#answer').textContent();
  await charge(page).fill('17');
  await expect(page.locator('#answer')).not.toHaveText(before);
  assert.equal(await page.evaluate(() => localStorage.length), 0);
  release();
  await there(page);
  await expect(charge(page)).toHaveValue('17');
  await page.goto('about:blank');
  await page.goto(site.url);
  await ready(page);
  await expect(charge(page)).toHaveValue('17');
});

test('a plan of one’s own is never preceded by the example', alone, async ({ page, open }) => {
  const site = await open();
  await keepSeventeen(page, site.url);
  const release = await holdBack(page, KEEPING);
  await page.goto('about:blank');
  const asked = page.waitForRequest((request) => request.url().endsWith(KEEPING));
  await page.goto(site.url);
  await asked;
  await expect(page.locator('html[data-ready]')).toHaveCount(0);
  release();
  await ready(page);
  await expect(charge(page)).toHaveValue('17');
});

test('where it does not come one’s own plan is safe, and comes with it', { ...alone, expectErrors: true }, async ({ page, open, shot }) => {
  const site = await open();
  await keepSeventeen(page, site.url);
  const kept = await page.evaluate(() => JSON.stringify(localStorage));
  await page.route(`**/${KEEPING}`, (route) => route.abort());
  await page.goto('about:blank');
  await page.goto(site.url);
  await ready(page);
  await page.locator('#notice').getByText('has not loaded').waitFor();
  await shot();
  await expect(charge(page)).not.toHaveValue('17');
  await charge(page).fill('23');
  await page.getByRole('button', { name: 'Copy link' }).click();
  assert.equal(await page.evaluate(() => JSON.stringify(localStorage)), kept);
  await page.unroute(`**/${KEEPING}`);
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await there(page);
  await expect(charge(page)).toHaveValue('17');
  await expect(page.locator('#notice')).toHaveCount(0);
  await page.locator('.questions').getByRole('button', { name: 'Undo' }).click();
  await expect(charge(page)).toHaveValue('23');
});

test('a link’s visitor waits for two parts, on their way at once', alone, async ({ page, open, context }) => {
  const site = await open();
  await keepSeventeen(page, site.url);
  await expect(page).toHaveURL(/#.{20,}/);
  const link = page.url();
  const other = await context.browser().newContext({ locale: 'en-GB', serviceWorkers: 'block' });
  try {
    const guest = await other.newPage();
    let first;
    await guest.route(`**/${FIRST}`, (route) => { first = route; });
    const release = await holdBack(guest, LATER);
    await Promise.all([guest.waitForRequest((request) => request.url().endsWith(KEEPING)), guest.goto(link, { waitUntil: 'commit' })]);
    await first.continue();
    await ready(guest);
    await expect(charge(guest)).toHaveValue('17');
    release();
    await there(guest);
  } finally {
    await other.close();
  }
});

test('where only the questions do not come, plans are kept', { ...alone, expectErrors: true }, async ({ page, open }) => {
  const site = await open();
  await page.route(`**/${LATER}`, (route) => route.abort());
  await page.goto(site.url);
  await ready(page);
  await missing(page);
  await charge(page).fill('17');
  await keeps(page, '17');
});
