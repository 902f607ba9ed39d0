// Measures what a visitor feels, on the built site; prints a table, judges nothing.
//   node tests/browser/measure.mjs            (after `make build`)
//
// Lines are slowed in the server, the processor by the browser's own throttle
// (4x). Each figure is the median of three fresh visits, unless it says worst.
import { chromium } from 'playwright-core';
import { chromiumOptions } from './chromium.mjs';
import { DIST } from './harness.mjs';
import { serve } from './serve.mjs';
import { LINES, median, type, visit, warm } from './visits.mjs';

const VISITS = 3;

const site = await serve({ root: DIST, compress: true });
const browser = await chromium.launch(chromiumOptions);
const row = (name, value) => console.log(`${name.padEnd(58)}${value}`);
const ms = (value) => `${Math.round(value)} ms`;
for (const [name, line] of Object.entries(LINES)) {
  const visits = [];
  for (let count = 0; count < VISITS; count += 1) visits.push(await visit(browser, site, line));
  row(`first paint, ${name}, 4x`, ms(median(visits.map((v) => v.paint))));
  row(`first answer, ${name}, 4x`, ms(median(visits.map((v) => v.ready))));
}
const typed = await visit(browser, site, undefined, type);
const keys = typed.keys.sort((a, b) => a - b);
row('key to paint, worst but 2 % of 400 keys, 4x', keys.length ? ms(keys[Math.floor(keys.length - 1 - 400 * 0.02)] ?? keys[0]) : 'under 16 ms');
row('longest task while typing, 4x', typed.tasks.length ? ms(Math.max(...typed.tasks)) : 'under 50 ms (the browser reports none)');
const hot = await visit(browser, site, undefined, warm);
row('a hot day’s band after a key, 4x', `${ms(median(hot.extra))}, ${ms(Math.max(...hot.extra))} at the worst`);
row('longest task after the last of those keys, 4x', hot.tasks.length ? ms(Math.max(...hot.tasks)) : 'under 50 ms (the browser reports none)');
row('layout shift, whole visit', typed.shift.toFixed(4));
await browser.close();
await site.close();
