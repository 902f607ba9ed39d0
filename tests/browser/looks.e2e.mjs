// Accessibility in every state that a visitor meets, and the pictures for the README.
import assert from 'node:assert/strict';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, layOut, openAll, test, withExample } from './harness.mjs';

const AH = '#banks-0--battery-rated-ah';

async function violations(page) {
  await layOut(page);
  // Target size ships switched off; a thumb in the dark needs it.
  const { violations: found } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .options({ rules: { 'target-size': { enabled: true } } })
    .analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

const unfold = async (page) => {
  await openAll(page);
  await expect(page.locator('.chart svg').first()).toBeAttached();
};

const states = {
  light: { colorScheme: 'light', viewport: { width: 390, height: 844 } },
  dark: { colorScheme: 'dark', viewport: { width: 390, height: 844 } },
  narrow: { colorScheme: 'light', viewport: { width: 320, height: 640 } },
  wide: { colorScheme: 'dark', viewport: { width: 1280, height: 900 } },
};

for (const [name, context] of Object.entries(states)) {
  test(`axe finds nothing: ${name}, all folds open`, { context }, async ({ page, url }) => {
    await page.goto(url);
    await withExample(page);
    await unfold(page);
    assert.deepEqual(await violations(page), []);
  });
}

for (const colorScheme of ['light', 'dark']) {
  test(`axe finds nothing: errors shown, ${colorScheme}`, { context: { colorScheme } }, async ({ page, url }) => {
    await page.goto(url);
    await withExample(page);
    await page.fill(AH, 'plenty');
    await page.waitForSelector('.outcome.stale');
    assert.deepEqual(await violations(page), []);
  });
}

const sizes = { phone: { width: 390, height: 844 }, desktop: { width: 1200, height: 900 } };
for (const [size, viewport] of Object.entries(sizes)) {
  for (const colorScheme of ['light', 'dark']) {
    test(`picture: ${size}, ${colorScheme}`, { context: { viewport, colorScheme } }, async ({ page, url, shot }) => {
      await page.goto(url);
      await withExample(page);
      await shot(`${size}-${colorScheme}`);
    });
  }
}

test('picture: a bad number, on a phone', { context: { viewport: sizes.phone } }, async ({ page, url, shot }) => {
  await page.goto(url);
  await withExample(page);
  await page.fill(AH, 'plenty');
  await page.waitForSelector('.outcome.stale');
  await shot('phone-bad-number');
});

test('picture: the curves', { context: { viewport: sizes.phone } }, async ({ page, url, shot }) => {
  await page.goto(url);
  await withExample(page);
  await page.getByText('Curves', { exact: true }).click();
  await page.locator('.chart').first().scrollIntoViewIfNeeded();
  await shot('phone-curves');
});
