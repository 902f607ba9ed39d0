// The module (pkg/, by .tools/module.sh): in a page of one's own, and by itself.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, test } from './harness.mjs';
import { STRICT_CSP } from './serve.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const pkg = join(root, 'pkg');
/** The module as just loaded: from a copy, because Node loads a file once. */
function fresh(dir) {
  cpSync(pkg, dir, { recursive: true });
  return import(pathToFileURL(join(dir, 'index.js')).href);
}
const json = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'));

/** The example as somebody hosts it: its own folder and the module's, nothing else. */
function hosted(dir) {
  mkdirSync(join(dir, 'examples'));
  cpSync(join(root, 'examples/module'), join(dir, 'examples/module'), { recursive: true });
  cpSync(pkg, join(dir, 'pkg'), { recursive: true });
  return dir;
}

test('an example page shows an answer, under a strict policy', async ({ page, open, scratch, shot }) => {
  const site = await open({ root: hosted(scratch()), csp: STRICT_CSP });
  await page.goto(`${site.url}examples/module/`);
  const out = page.locator('#hours');
  await expect(out).toHaveText(/^Hold/);
  const hours = async () => Number((await out.textContent()).match(/^Hold: ([\d.]+) h/)[1]);
  const small = await hours();
  // Energy over power, by hand: 25.6 V x 100 Ah x 0.9 / 430 W is 5.4 h; the voltage of a
  // rested LFP bank stands above nominal and sag takes some back, so within a tenth.
  assert(Math.abs(small - 5.36) < 0.536, String(small));
  await page.fill('#ah', '200');
  await expect.poll(hours).toBeGreaterThan(1.98 * small);
  await expect(page.locator('#link')).toHaveAttribute('href', /#p\d\.[\w-]+$/);
  await page.fill('#ah', '-4');
  await expect(out).toHaveText(/^banks\[0\]\.battery_rated_ah: /);
  await shot();
});

/** The module as each of its two wasms. */
async function both(scratch) {
  const [small, whole] = [await fresh(scratch()), await fresh(scratch())];
  assert.deepEqual(await small.start(), { ok: true });
  assert.deepEqual(await whole.start(whole.WHOLE), { ok: true });
  return { small, whole };
}

test('both answer as the native engine does', async ({ scratch }) => {
  const { small, whole } = await both(scratch);
  for (const name of ['measured_bank', 'lead_acid_by_inverter', 'broken']) {
    for (const module of [small, whole]) {
      const here = module.answer(json(`tests/golden/plans/${name}.json`));
      assert(here.ok, name);
      // The golden file holds the native answer's numbers to six digits.
      const hours = (answer) => answer.runs.map((run) => Number(run.hours_h.likely.toPrecision(6)));
      assert.deepEqual(hours(here.answer), hours(json(`tests/golden/answers/${name}.json`)), name);
    }
  }
});

test('the small one has the same hours and banks, and no more', async ({ scratch }) => {
  const { small, whole } = await both(scratch);
  const plan = json('tests/links/week_with_claims.json');
  const [all, night] = [whole.answer(plan).answer, small.answer(plan).answer];
  // Cautions need the hot day and the wiring, which the small one leaves out.
  const { day, refill, pocket, claims, wiring, cautions, findings, ...first } = all;
  assert(day && claims && wiring && cautions.length);
  const { findings: found, ...rest } = night;
  assert.deepEqual(rest, first);
  // What a later answer has to say is the whole one's; all that is said of the plan both say.
  assert.deepEqual(found, findings.filter((finding) => found.some((own) => JSON.stringify(own) === JSON.stringify(finding))));
});

test('the small one finds what is wrong anywhere in a plan', async ({ scratch }) => {
  const { small, whole } = await both(scratch);
  const plan = json('tests/links/week_with_claims.json');
  plan.banks[0].depth_percent = 400;
  plan.day.latitude_deg = 91;
  plan.claims[0].rate_a = -3;
  const errors = (module) => module.answer(plan).answer.findings.filter(({ severity }) => severity === 'error');
  assert.deepEqual(errors(small), errors(whole));
  const fields = errors(small).map(({ field, min, max }) => [field, min, max]);
  // The ranges as src/range.rs has them.
  assert.deepEqual(fields, [['banks[0].depth_percent', 1, 100], ['day.latitude_deg', -90, 90], ['claims[0].rate_a', 0.01, 5000]]);
  for (const wrong of [{ day: 3 }, { claims: [{ about: 'luck' }] }, { wiring: { unit: { fuse_a: 'big' } } }, { colour: 1 }]) {
    const [here, there] = [small, whole].map((module) => module.link_from_plan({ ...plan, ...wrong }));
    assert.equal(here.error.kind, 'other_shape');
    assert.deepEqual(here, there);
  }
});

test('a link goes there and back, whole, in both', async ({ scratch }) => {
  const { small, whole } = await both(scratch);
  for (const name of ['demo', 'week_with_claims', 'everything']) {
    const plan = { ok: true, plan: json(`tests/links/${name}.json`) };
    const link = readFileSync(join(root, `tests/links/${name}.link`), 'utf8').trim();
    for (const module of [small, whole]) {
      assert.deepEqual(module.plan_from_link(`#${link}`), plan, name);
      assert.deepEqual(module.plan_from_link(module.link_from_plan(plan.plan).link), plan, name);
    }
    assert.deepEqual(small.link_from_plan(plan.plan), whole.link_from_plan(plan.plan));
  }
});

test('nothing is thrown, whatever comes in', async ({ scratch }) => {
  const module = await fresh(scratch());
  assert.equal(module.answer({}).error.kind, 'not_started');
  const nowhere = await module.start('http://localhost:1/none.wasm');
  assert.equal(nowhere.error.kind, 'cannot_start');
  await module.start();
  const round = {};
  round.round = round;
  const odd = [undefined, null, 3, 'x', '{', [], {}, round, { version: 9 }, { version: 1n }, Symbol('s'), () => 1,
    '['.repeat(100_000), '{"version":1,"banks":[{', '\ud800', ' '.repeat(1 << 20)];
  for (const input of odd) {
    for (const call of ['answer', 'link_from_plan', 'plan_from_link']) {
      const { ok, error } = module[call](input);
      assert.equal(ok, false, `${call} ${String(input).slice(0, 40)}`);
      assert(['malformed', 'other_shape', 'unknown_version', 'too_long', 'no_link'].includes(error.kind), error.kind);
    }
  }
  assert.equal(module.answer(json('tests/links/demo.json')).ok, true, 'and it still answers');
});

/** TypeScript's own reading of the types, against what their reader may and may not write. */
test('its types hold', async ({ scratch }) => {
  const dir = scratch();
  cpSync(pkg, join(dir, 'pkg'), { recursive: true });
  const check = (body) => {
    writeFileSync(join(dir, 'use.ts'), `import { answer, link_from_plan, type Plan } from './pkg/index.js';\n${body}`);
    const compiler = join(root, 'tests/browser/node_modules/typescript/bin/tsc');
    const flags = ['--noEmit', '--strict', '--target', 'es2022', '--module', 'nodenext', '--lib', 'es2022,dom'];
    try { execFileSync('node', [compiler, ...flags, 'use.ts'], { cwd: dir, encoding: 'utf8' }); return ''; } catch (error) { return error.stdout; }
  };
  const plan = `const plan: Plan = { version: 1,
    banks: [{ chemistry: 'lfp', battery_nominal_v: 12.8, battery_rated_ah: { value: 100, from: 'measured' } }],
    units: [{ modes: [{ name: 'Hold', power_w: 430 }] }] };\n`;
  const use = `const found = answer(plan);
    const hours: number | undefined = found.ok ? found.answer.runs[0]?.hours_h.likely : undefined;
    if (!found.ok && found.error.kind === 'malformed') console.log(found.error.line + 1, hours);
    const link = link_from_plan('{}'); if (link.ok) link.link.length;\n`;
  assert.equal(check(plan + use), '');
  const own = `import './pkg/element.js'; const own = document.createElement('till-morning'); own.plan = plan;
    own.addEventListener('till-morning-answer', ({ detail }) => { if (detail.ok) detail.answer.runs.length; });\n`;
  assert.equal(check(plan + own), '');
  assert.match(check(own.replace('own.plan = plan', 'own.plan = 3')), /'number' is not assignable/);
  assert.match(check(plan.replace('lfp', 'cheese')), /cheese/);
  assert.match(check('const found = answer({} as Plan); found.answer;'), /'answer' does not exist/);
});

test('the package names what is in it', async () => {
  const own = json('pkg/package.json');
  for (const path of Object.values(own.exports).flatMap((to) => (typeof to === 'string' ? to : Object.values(to)))) {
    assert(readFileSync(join(pkg, path)).length > 0, path);
  }
  assert.match(own.version, /^\d+\.\d+\.\d+$/);
});

test('an element: fields, hours and a bad text, under a strict policy', async ({ page, open, scratch, shot }) => {
  const site = await open({ root: hosted(scratch()), csp: STRICT_CSP });
  await page.goto(`${site.url}examples/module/element.html`);
  const hours = page.locator('till-morning dl');
  await expect(hours).toHaveText(/^Plunge\d+ h.*Hold\d+ h.*Hush\d+ h/);
  const all = await hours.textContent();
  // Of the same plan the native engine says so much, here to ten minutes.
  const golden = json('tests/golden/answers/demo.json').runs[1].hours_h.likely;
  const [, h, min] = all.match(/Hold(\d+) h(?: (\d+) min)? /);
  assert(Math.abs(Number(h) + Number(min ?? 0) / 60 - golden) <= 5.01 / 60, `${all} ${golden}`);
  const result = () => page.evaluate(() => new Promise((done) => {
    const own = document.querySelector('till-morning');
    own.addEventListener('till-morning-answer', ({ detail }) => done(detail), { once: true });
    own.plan = own.plan;
  }));
  assert.equal((await result()).ok, true);
  await page.fill('till-morning #banks-0-battery_rated_ah', '52,5');
  await expect(hours).not.toHaveText(all);
  const before = await hours.textContent();
  await page.fill('till-morning #banks-0-battery_rated_ah', 'plenty');
  await expect(page.locator('till-morning .error:visible')).toHaveText('a number');
  await expect(hours, 'the last good answer stays').toHaveText(before);
  await page.fill('till-morning #banks-0-battery_rated_ah', '-4');
  await expect(page.locator('till-morning .error:visible')).toHaveText(/^from [\d.]+ to \d+$/);
  await shot();
  await page.evaluate(() => { document.querySelector('till-morning').lang = 'de'; });
  await page.locator('till-morning label', { hasText: 'Kapazität einer Batterie (Ah)' }).waitFor();
});

test('the element takes anybody’s addresses and links without harm', async ({ page, open, scratch }) => {
  const site = await open({ root: hosted(scratch()), csp: STRICT_CSP });
  await page.goto(`${site.url}examples/module/element.html`);
  await page.locator('till-morning dl').waitFor();
  const set = (name, value) => page.evaluate(([name, value]) => document.querySelector('till-morning').setAttribute(name, value), [name, value]);
  await set('fields', '__proto__.x constructor.prototype.y banks[7].battery_rated_ah banks[0].depth_percent');
  await expect(page.locator('till-morning input')).toHaveCount(1);
  await page.fill('till-morning input', '50');
  assert.equal(await page.evaluate(() => ({}).x ?? ({}).y ?? 'clean'), 'clean');
  await set('link', 'p1.q1Y');
  await page.waitForFunction(() => document.querySelector('till-morning').result.error?.kind === 'damaged');
});
