// Under a content policy that allows the site's own files and nothing inline.
import assert from 'node:assert/strict';
import { complete, expect, kept, ready, test } from './harness.mjs';
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
