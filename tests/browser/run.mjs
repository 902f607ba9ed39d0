// Runs the browser tests: node tests/browser/run.mjs [part of a file's name ...]
// One Chromium, a fresh context for each test, nothing tried twice.
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { chromiumOptions } from './chromium.mjs';
import { belongings, DIST, OUT, tests } from './harness.mjs';
import { serve } from './serve.mjs';
import { settleAfterActions } from './settle.mjs';

const LONGEST = 180_000; // of one test: a stop for what hangs, not a measure

/** Collects what goes wrong in any page of the context without the test noticing. */
function listenForErrors(context) {
  const errors = [];
  context.on('console', (message) => {
    if (message.type() === 'error') errors.push(`console: ${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => errors.push(`uncaught: ${error.error()}`));
  return errors;
}

function withinTime(work) {
  let timer;
  const late = new Promise((_, fail) => {
    timer = setTimeout(() => fail(new Error(`not done after ${LONGEST / 1000} s`)), LONGEST);
  });
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}

async function runOne(browser, site, { name, options, run }) {
  // Units follow the browser's language until somebody chooses: here they are metric.
  const context = await browser.newContext({ locale: 'en-GB', ...options.context });
  const errors = listenForErrors(context);
  context.on('page', settleAfterActions);
  const own = belongings();
  const page = await context.newPage();
  const file = name.replace(/[^a-z0-9]+/gi, '-');
  const shot = (what = 'page') => page.screenshot({ path: join(OUT, `${file}-${what}.png`) });
  try {
    await withinTime(run({ page, context, browser, site, url: site.url, shot, ...own }));
    if (errors.length && !options.expectErrors) throw new Error(errors.join('\n'));
  } catch (error) {
    await shot('failed').catch(() => {});
    error.message += errors.length ? `\nerrors seen:\n${errors.join('\n')}` : '';
    throw error;
  } finally {
    await context.close();
    await own.clear();
  }
}

const wanted = process.argv.slice(2);
const here = new URL('./', import.meta.url);
const files = readdirSync(here).filter((name) => name.endsWith('.e2e.mjs')).sort()
  .filter((name) => !wanted.length || wanted.some((part) => name.includes(part)));
mkdirSync(OUT, { recursive: true });
let passed = 0;
let failed = 0;
const browser = await chromium.launch(chromiumOptions);
const site = await serve({ root: DIST });
for (const file of files) {
  tests.length = 0;
  await import(new URL(file, here).href);
  for (const one of tests) {
    const title = `${file.replace('.e2e.mjs', '')}: ${one.name}`;
    try {
      await runOne(browser, site, one);
      passed += 1;
      console.log(`ok   ${title}`);
    } catch (error) {
      failed += 1;
      console.log(`FAIL ${title}\n${String(error.stack ?? error).replace(/^/gm, '     ')}`);
    }
  }
}
await browser.close();
await site.close();
if (passed + failed === 0) { failed = 1; console.log(`FAIL no tests found: ${wanted.join(' ')}`); }
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed ? 1 : 0;
