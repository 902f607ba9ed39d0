// Draws style/icons/*.png from mark.svg, by Chromium (make icons). The drawing
// lies inside the middle circle that a mask leaves, so the maskable and the touch
// icon are the same drawing on an unrounded ground.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { chromiumOptions } from '../tests/browser/chromium.mjs';

const { chromium } = createRequire(new URL('../tests/browser/', import.meta.url))('playwright-core');
const icons = new URL('../style/icons/', import.meta.url);
const rounded = readFileSync(new URL('mark.svg', icons), 'utf8');
const square = rounded.replace(/ rx="\d+"/, '');

const wanted = [
  ['mark-192.png', 192, rounded],
  ['mark-512.png', 512, rounded],
  ['maskable-512.png', 512, square],
  ['touch-180.png', 180, square],
];

const browser = await chromium.launch(chromiumOptions);
for (const [name, side, svg] of wanted) {
  const page = await browser.newPage({ viewport: { width: side, height: side } });
  await page.setContent(`<body style="margin:0">${svg.replace('<svg', `<svg style="display:block" width="${side}" height="${side}"`)}`);
  await page.screenshot({ path: new URL(name, icons).pathname, omitBackground: true });
  await page.close();
  console.log(`style/icons/${name}`);
}
await browser.close();
