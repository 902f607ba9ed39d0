// The core tasks in every browser engine: node tests/browser/engines/run.mjs [name ...]
//
// The other browser tests look closely at one engine. These are few, and ask of each
// engine what a person at a campsite does. What an engine cannot do is in its `lacks`,
// with the reason, and is said in the README.
import { belongings } from '../harness.mjs';
import * as chromium from './chromium.mjs';
import * as firefox from './firefox.mjs';
import { tasks } from './tasks.mjs';
import * as webkit from './webkit.mjs';

const LONGEST = 120_000; // of one task: a stop for what hangs, not a measure
const ENGINES = { chromium, firefox, webkit };

const late = () => new Promise((_, fail) => { setTimeout(() => fail(new Error(`not done after ${LONGEST / 1000} s`)), LONGEST).unref(); });

let failed = 0;
let passed = 0;
for (const name of process.argv.length > 2 ? process.argv.slice(2) : Object.keys(ENGINES)) {
  const engine = await ENGINES[name].launch();
  for (const [title, task] of Object.entries(tasks)) {
    const lack = engine.lacks?.[title];
    if (lack) { console.log(`--   ${name}: ${title}: ${lack}`); continue; }
    const own = belongings();
    const page = await engine.open();
    try {
      await Promise.race([task({ page, ...own }), late()]);
      passed += 1;
      console.log(`ok   ${name}: ${title}`);
    } catch (error) {
      failed += 1;
      console.log(`FAIL ${name}: ${title}\n${String(error.stack ?? error).replace(/^/gm, '     ')}`);
    }
    await page.close();
    await own.clear();
  }
  await engine.close();
}
if (passed + failed === 0) failed = 1;
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed ? 1 : 0);
