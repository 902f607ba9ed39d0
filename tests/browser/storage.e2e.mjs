// A storage that refuses, is full, is damaged, or was written by another version of the
// page: the page starts, says what it must, and loses nothing that was typed.
import assert from 'node:assert/strict';
import { complete, expect, test } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const DRAW = '#start-units-0--modes-0--power-w';
const DRAFT = 'till-morning.draft.1';
const DAMAGED = 'till-morning.damaged';
const notice = (page) => page.locator('#notice');
const holds = (page, field, text) => expect(page.locator(field)).toHaveValue(text);
const stored = (page, key) => page.evaluate((name) => localStorage.getItem(name), key);

async function arrive(page, url) {
  await page.goto(url);
  await complete(page);
}

/** Types a plan of one's own, and waits until the address has it. */
async function typed(page) {
  await page.fill(AH, '222');
  const before = page.url();
  await page.fill(DRAW, '45');
  await expect(page).toHaveURL(/#p\d\./);
  if (/#/.test(before)) await expect(page).not.toHaveURL(before);
}

/** What a browser may refuse, and what is said then. */
const refusals = {
  'the mere look throws': {
    said: /keeps nothing here/,
    with: () => {
      for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty(window, name, { get() { throw new DOMException('refused', 'SecurityError'); } });
    },
  },
  'there is none': {
    said: /keeps nothing here/,
    with: () => { for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty(window, name, { get: () => null }); },
  },
  'only that of the tab throws': {
    said: null,
    with: () => { Object.defineProperty(window, 'sessionStorage', { get() { throw new DOMException('refused', 'SecurityError'); } }); },
  },
  'it cannot be written': {
    said: /storage is full/,
    with: () => { Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }; },
  },
  // As Firefox does where the file behind it is corrupt.
  'every call to it throws': {
    said: /storage is full/,
    with: () => {
      for (const name of ['getItem', 'setItem', 'removeItem', 'key']) Storage.prototype[name] = () => { throw new DOMException('', 'NS_ERROR_FILE_CORRUPTED'); };
    },
  },
};

for (const [what, { said, with: refuse }] of Object.entries(refusals)) {
  test(`a storage of which ${what}: the page works, and the address keeps the plan`, async ({ page, url }) => {
    await page.addInitScript(refuse);
    await arrive(page, url);
    const first = await page.locator('#answer').textContent();
    await typed(page);
    await expect(page.locator('#answer')).not.toHaveText(first);
    if (said) await expect(notice(page)).toHaveText(said);
    else await expect(notice(page)).toHaveCount(0);
    const answer = await page.locator('#answer').textContent();
    await page.reload();
    await complete(page);
    await holds(page, AH, '222');
    await holds(page, DRAW, '45');
    await expect(page.locator('#answer')).toHaveText(answer);
    await expect(page.locator('#broken')).toBeHidden();
  });
}

test('control: a storage that works says nothing, and needs no address', async ({ page, url }) => {
  await arrive(page, url);
  await typed(page);
  await expect(notice(page)).toHaveCount(0);
  await page.goto('about:blank');
  await arrive(page, url);
  await holds(page, AH, '222');
});

test('a storage that fills up while one types loses nothing that was there', async ({ page, url }) => {
  await arrive(page, url);
  await typed(page);
  const before = await stored(page, DRAFT);
  await page.evaluate(() => { Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }; });
  const address = page.url();
  await page.fill(AH, '333');
  await expect(notice(page)).toHaveText(/storage is full/);
  assert.equal(await stored(page, DRAFT), before);
  await expect(page).not.toHaveURL(address);
  // Room again: the next key keeps all of it.
  await page.reload();
  await complete(page);
  await holds(page, AH, '333');
  await page.fill(DRAW, '46');
  await expect.poll(() => stored(page, DRAFT)).toMatch(/333.*46/);
});

/** What the storage may hold that is no draft of this version. */
const damage = {
  'nothing': () => '',
  'no object': () => 'null',
  'an empty list': () => '[]',
  'an empty object': () => '{}',
  'half a draft': (draft) => draft.slice(0, draft.length / 2),
  'a draft with a hole': (draft) => draft.replace('"banks"', '"bonks"'),
  'no text of ours': () => '\u0000\uffff\u{1f50b}'.repeat(50),
  'half a megabyte': () => 'x'.repeat(500_000),
  'very deep lists': () => '['.repeat(100_000),
  'numbers beyond any': (draft) => draft.replace('222', '1e999'),
  'a draft of a later version': (draft) => draft.replace('"version":1', '"version":9'),
  'a draft with a part of a later version': (draft) => draft.replace('"version":1', '"version":1,"later_part":{"depth_m":3}'),
};

test('whatever the storage holds, the page starts, says so, and sets it aside', async ({ page, url }) => {
  await arrive(page, url);
  await typed(page);
  await expect.poll(() => stored(page, DRAFT)).toMatch(/222.*45/);
  const draft = await stored(page, DRAFT);
  for (const [what, make] of Object.entries(damage)) {
    const text = make(draft);
    assert.notEqual(text, draft, what);
    await page.goto('about:blank');
    await page.goto(`${url}till-morning.html`); // the same storage, another document
    await page.evaluate(([key, value]) => { localStorage.clear(); sessionStorage.clear(); localStorage.setItem(key, value); }, [DRAFT, text]);
    await page.goto('about:blank');
    await arrive(page, url);
    await expect(notice(page), what).toHaveText(/could not be read/);
    assert.equal(await stored(page, DAMAGED), text, what);
    // It stands where it was until something is typed, and is still there after that.
    assert.equal(await stored(page, DRAFT), text, what);
    await page.fill(AH, '77');
    await expect.poll(() => stored(page, DRAFT), what).toContain('77');
    assert.equal(await stored(page, DAMAGED), text, what);
  }
});

test('control: the draft itself is read', async ({ page, url }) => {
  await arrive(page, url);
  await typed(page);
  await expect.poll(() => stored(page, DRAFT)).toMatch(/222.*45/);
  const draft = await stored(page, DRAFT);
  await page.evaluate(([key, value]) => { sessionStorage.clear(); localStorage.setItem(key, value); }, [DRAFT, draft]);
  await page.goto('about:blank');
  await arrive(page, url);
  await holds(page, AH, '222');
  await expect(notice(page)).toHaveCount(0);
});

test('a draft with no more than a plan must have, as the first pages wrote it, opens', async ({ page, url }) => {
  const older = '{"plan":{"version":1,"banks":[{"chemistry":"lfp","battery_rated_ah":222}],"units":[{"modes":[{"name":"","power_w":45}]}]}}';
  await page.addInitScript(([key, text]) => { if (!localStorage.getItem(key)) localStorage.setItem(key, text); }, [DRAFT, older]);
  await arrive(page, url);
  await holds(page, AH, '222');
  await holds(page, DRAW, '45');
  await expect(notice(page)).toHaveCount(0);
});

test('what an older and a later page keep under their own names stays as it is', async ({ page, url }) => {
  const others = { 'till-morning.draft.0': '{"ah":5}', 'till-morning.draft.2': '{"plan":{"version":2}}', 'another.page': 'x' };
  await page.addInitScript((all) => { for (const [key, text] of Object.entries(all)) localStorage.setItem(key, text); }, others);
  await arrive(page, url);
  await expect(notice(page)).toHaveCount(0);
  await typed(page);
  await expect.poll(() => stored(page, DRAFT)).toMatch(/222.*45/);
  for (const [key, text] of Object.entries(others)) assert.equal(await stored(page, key), text);
});
