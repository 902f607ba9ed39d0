// Under a content policy that allows the site's own files and nothing inline.
import assert from 'node:assert/strict';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { allOpen } from './focus.mjs';
import { complete, expect, kept, ready, test, withExample } from './harness.mjs';
import { STRICT_CSP } from './serve.mjs';

const watch = (page) => page.addInitScript(() => {
  window.violations = [];
  document.addEventListener('securitypolicyviolation', (event) => {
    window.violations.push(`${event.violatedDirective} ${event.blockedURI}`);
  });
});
const violations = (page) => page.evaluate(() => window.violations);

test('the page starts and works without a signal, with no violation', async ({ page, open }) => {
  const site = await open({ csp: STRICT_CSP });
  await watch(page);
  await page.goto(site.url);
  await complete(page);
  await kept(page);
  assert.deepEqual(await violations(page), []);
  await site.close();
  await page.reload();
  await ready(page);
  assert.deepEqual(await violations(page), []);
});

test('with everything open and a log in it, no violation', async ({ page, open, scratch }) => {
  const site = await open({ csp: STRICT_CSP });
  await watch(page);
  await page.goto(site.url);
  await withExample(page);
  await allOpen(page);
  const file = join(scratch(), 'log.csv');
  writeFileSync(file, `elapsed min,bank V,draw A\n${Array.from({ length: 200 }, (_, at) => `${at},13,20`).join('\n')}\n`);
  await page.setInputFiles('#log-file', file);
  // The handles of a stretch and the parts of a drawing stand where they belong.
  // (The first part of the drawing begins at its left edge.)
  for (const [placed, side] of [['.edge.to', 'left'], ['.picture-spot', 'top']]) {
    await expect.poll(() => page.locator(placed).first().evaluate((one, side) => Number.parseFloat(getComputedStyle(one)[side]), side), placed).toBeGreaterThan(0);
  }
  assert.deepEqual(await violations(page), []);
});

test('control: the policy is in force', { expectErrors: true }, async ({ page, open }) => {
  const site = await open({ csp: STRICT_CSP });
  await watch(page);
  await page.goto(site.url);
  await ready(page);
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.inlineRan = true';
    document.head.append(script);
    return window.inlineRan === true;
  });
  assert.equal(ran, false);
  await expect.poll(async () => (await violations(page)).some((text) => text.startsWith('script-src-elem inline'))).toBe(true);
});
