// The scorecard: the built site against two pages that know much less, in one run.
//   node tests/browser/scorecard.mjs COUNTER        (make bench)
//
// L is a bare Leptos counter (bench/counter, built into the folder COUNTER), V a page
// written by hand (bench/by-hand). A processor at a quarter of its speed, medians of five
// visits that take turns, so that all three see the same machine. It prints a table and
// judges nothing: what misses its goal is marked.
import { readFileSync, statSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { chromiumOptions } from './chromium.mjs';
import { DIST } from './harness.mjs';
import { serve } from './serve.mjs';
import { LINES, median, type, visit, warm } from './visits.mjs';

const VISITS = 5;
const [SLOW_4G, SLOWEST] = Object.values(LINES);
const rows = [];
/** A row: what it is, ours, what it is held against, and the goal in the same unit. */
function row(name, ours, { against, of, goal, unit = 'ms' } = {}) {
  const round = (value) => (unit === '' ? value.toFixed(4) : `${value < 10 ? value.toFixed(1) : Math.round(value)} ${unit}`);
  const ratio = against ? `${(ours / against).toFixed(2)} x ${of} (${round(against)})` : '';
  const met = goal === undefined ? '' : ours <= goal ? 'met' : 'MISSED';
  rows.push([name, round(ours), ratio, goal === undefined ? '' : round(goal), met]);
}

const browser = await chromium.launch(chromiumOptions);
const sites = {
  ours: await serve({ root: DIST, compress: true }),
  L: await serve({ root: process.argv[2], compress: true }),
  V: await serve({ root: fileURLToPath(new URL('./bench/by-hand', import.meta.url)), compress: true }),
};

/** The medians of a line's visits, the three sites in turns. */
async function over(line) {
  const seen = { ours: [], L: [], V: [] };
  for (let count = 0; count < VISITS; count += 1) {
    for (const name of Object.keys(sites)) seen[name].push(await visit(browser, sites[name], line));
  }
  const medians = Object.entries(seen).map(([name, visits]) => [name, Object.fromEntries(['paint', 'ready', 'bytes'].map((what) => [what, median(visits.map((one) => one[what]))]))]);
  return Object.fromEntries(medians);
}

const fast = await over(SLOW_4G);
row('transfer until the first answer, brotli', fast.ours.bytes / 1000, { against: fast.L.bytes / 1000, of: 'L', goal: 190, unit: 'kB' });
row('single HTML file', statSync(join(DIST, 'till-morning.html')).size / 1000, { goal: 1100, unit: 'kB' });
row('first paint, slow 4G', fast.ours.paint, { against: fast.V.paint, of: 'V', goal: 1.1 * fast.V.paint });
row('first answer, slow 4G', fast.ours.ready, { against: fast.L.ready, of: 'L', goal: Math.min(1.5 * fast.L.ready, 2500) });
const slow = await over(SLOWEST);
row('first answer, 400 kbps and 400 ms', slow.ours.ready, { against: slow.L.ready, of: 'L', goal: 5000 });

/** A later visit with the server closed, and what it asks for. */
async function offline() {
  const site = await serve({ root: DIST, compress: true, store: false });
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const tools = await context.newCDPSession(page);
  await page.goto(site.url);
  await page.waitForFunction(async () => { await navigator.serviceWorker.ready; return navigator.serviceWorker.controller !== null; });
  await page.waitForSelector('html:not([data-later])', { state: 'attached' });
  await site.close();
  await tools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const took = [];
  for (let count = 0; count < VISITS; count += 1) {
    await page.reload();
    await page.waitForSelector('html[data-ready]', { state: 'attached' });
    took.push(await page.evaluate(() => performance.now()));
  }
  await context.close();
  return median(took);
}
row('a repeat visit, without a signal', await offline(), { goal: 500 });

const typed = await visit(browser, sites.ours, undefined, type);
const keys = typed.keys.sort((a, b) => a - b);
row('key to paint, p98 of 400 keys (16 ms: none was slower)', keys[Math.floor(keys.length - 1 - 400 * 0.02)] ?? 16, { goal: 50 });
row('longest task while typing (50 ms: none was longer)', Math.max(50, ...typed.tasks), { goal: 50 });
row('layout shift, whole visit', typed.shift, { goal: 0, unit: '' });
const hot = await visit(browser, sites.ours, undefined, warm);
row('a hot day’s band after a key', median(hot.extra));

/** Lighthouse, where it is installed (`.tools/setup.sh bench`). */
async function lighthouse() {
  const entry = process.env.LIGHTHOUSE && join(process.env.LIGHTHOUSE, 'node_modules/lighthouse/core/index.js');
  if (!entry || !existsSync(entry)) return;
  const { default: audit } = await import(entry);
  const port = 9300 + (process.pid % 500);
  const own = await chromium.launch({ ...chromiumOptions, args: [...chromiumOptions.args, `--remote-debugging-port=${port}`] });
  const { lhr } = await audit(sites.ours.url, { port, logLevel: 'error' });
  for (const one of Object.values(lhr.categories)) {
    const score = 100 * one.score;
    rows.push([`Lighthouse, phone: ${one.title}`, String(Math.round(score)), '', '100', score >= 99.5 ? 'met' : 'MISSED']);
  }
  const figure = (id) => lhr.audits[id]?.displayValue ?? '';
  rows.push(['Lighthouse: blocking time, largest paint', `${figure('total-blocking-time')}, ${figure('largest-contentful-paint')}`, '', '', '']);
  await own.close();
}
await lighthouse();

const version = JSON.parse(readFileSync(join(DIST, 'manifest.webmanifest'), 'utf8')).name;
console.log(`${version}, ${new Date().toISOString().slice(0, 10)}, Chromium ${browser.version()}, ${VISITS} visits each\n`);
const table = [['what', 'ours', 'against', 'goal', ''], ['---', '---', '---', '---', '---'], ...rows];
for (const cells of table) console.log(`| ${cells.join(' | ')} |`);
await browser.close();
await Promise.all(Object.values(sites).map((site) => site.close()));
process.exit(0);
