// The page on a home screen: what the browser itself says of the manifest.
import assert from 'node:assert/strict';
import { kept, ready, test } from './harness.mjs';

test('the manifest is sound and every icon has the size it names', async ({ page, context, open }) => {
  const site = await open({ base: '/a/folder/' });
  await page.goto(site.url);
  await ready(page);
  await kept(page);
  const devtools = await context.newCDPSession(page);
  const { url, errors, data } = await devtools.send('Page.getAppManifest');
  assert.deepEqual(errors, []);
  const manifest = JSON.parse(data);
  assert.equal(new URL(manifest.start_url, url).href, site.url);
  for (const icon of manifest.icons) {
    const side = await page.evaluate(async (src) => {
      const image = new Image();
      image.src = src;
      await image.decode();
      return image.naturalWidth;
    }, new URL(icon.src, url).href);
    if (icon.sizes !== 'any') assert.equal(`${side}x${side}`, icon.sizes);
  }
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // A private context, as the tests use, can never install; nothing else may stand in the way.
  assert.deepEqual(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito'), []);
});
