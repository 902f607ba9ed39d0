// What is handed on, read by programs that others wrote: tables by Papa Parse,
// Python's csv and two spreadsheets (HyperFormula, Gnumeric), the answer by another
// JSON Schema validator (Ajv) than the one in the native tests, pictures by
// another SVG renderer (resvg) than the browser's, the code by jsQR, and HTML by
// the Nu checker. All of it is written by examples/hand_on.rs.
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import Ajv2020 from 'ajv/dist/2020.js';
import { HyperFormula } from 'hyperformula';
import jsQR from 'jsqr';
import Papa from 'papaparse';
import { DIST, test } from './harness.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const json = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'));

const demo = () => json('tests/links/demo.json');

/** Names that would run, break out or break rows, wherever a text may stand. */
const NASTY = ['=1+1', '+SUM(A1)', '-2+3', '@x', '\t=q', 'x;=1+1;', '＝1+1', 'a "b", c', 'a|b\\|c\\', '\u200b=1', '\u202e=1', '\0=1',
  '\r=2', 'x\t=1', 'x;"=1', '<script>alert(1)</script>', '](javascript:alert(1))', 'line\nbreak', "'quoted'", '&amp; é ☾', 'www.example.org', 'https://example.org'];
/** The first twelve as a table has them: trimmed, an apostrophe before what would run, no control characters. */
const TAMED = ["'=1+1", "'+SUM(A1)", "'-2+3", "'@x", "'=q", "x;'=1+1;", "'＝1+1", 'a "b", c', 'a|b\\|c\\', "'\u200b=1", "'\u202e=1", "' =1"];

/** A draw that no unit has. */
function huge() {
  const plan = demo();
  plan.units[0].modes[1].power_w = 1e308;
  return plan;
}

function hostile() {
  const plan = demo();
  plan.title = NASTY.join(' ');
  plan.banks[0].name = NASTY[0];
  plan.units[0].name = NASTY[2];
  const [mode] = plan.units[0].modes;
  plan.units[0].modes = NASTY.slice(0, 12).map((name) => ({ ...mode, name }));
  plan.loads = NASTY.map((name) => ({ name, power_w: 2 }));
  return plan;
}

/** All files of a plan, by name. */
function handedOn(dir, plan) {
  const run = spawnSync('cargo', ['run', '--quiet', '--example', 'hand_on', '--', dir], { cwd: root, input: JSON.stringify(plan), encoding: 'utf8' });
  assert.equal(run.status, 0, run.stderr);
  const names = readdirSync(dir);
  const of = (ending) => names.filter((name) => name.endsWith(ending));
  return { dir, names, of, text: (name) => readFileSync(join(dir, name), 'utf8') };
}

const NUMBER = /^-?\d+(\.\d+)?(e-?\d+)?$/;

const cells = (text) => {
  const { data, errors } = Papa.parse(text, { newline: '\r\n' });
  assert.deepEqual(errors, []);
  assert.deepEqual(data.pop(), [''], 'the last row ends too');
  return data;
};

const byPython = (path) => JSON.parse(execFileSync('python3', ['-c', `
import csv, json, sys
with open(sys.argv[1], newline='', encoding='utf-8') as file:
    print(json.dumps(list(csv.reader(file, strict=True))))`, path], { encoding: 'utf8', maxBuffer: 1 << 26 }));

test('tables: two readers of CSV see the same rows, all of one length', async ({ scratch }) => {
  for (const plan of [demo(), hostile(), huge(), json('tests/links/week_with_claims.json')]) {
    const files = handedOn(scratch(), plan);
    assert(files.of('.csv').length >= 6, files.names.join(' '));
    for (const name of files.of('.csv')) {
      const rows = cells(files.text(name));
      assert.deepEqual(byPython(join(files.dir, name)), rows, name);
      assert.deepEqual([...new Set(rows.map((row) => row.length))], [rows[0].length], name);
    }
  }
});

test('tables: to a spreadsheet no text is a formula and every number is a number', async ({ scratch }) => {
  const files = handedOn(scratch(), hostile());
  let numbers = 0;
  // Where the comma separates, and in countries and settings where something else does.
  for (const name of files.of('.csv')) for (const delimiter of [',', ';', '\t', '|']) {
    const rows = Papa.parse(files.text(name), { newline: '\r\n', delimiter }).data;
    const sheet = HyperFormula.buildFromArray(rows, { licenseKey: 'gpl-v3' });
    rows.forEach((row, y) => row.forEach((text, x) => {
      const at = { sheet: 0, row: y, col: x };
      assert.equal(sheet.doesCellHaveFormula(at), false, `${name}: ${text}`);
      if (NUMBER.test(text)) { numbers += 1; assert.equal(sheet.getCellValue(at), Number(text), text); }
    }));
    sheet.destroy();
  }
  assert(numbers > 200, String(numbers));
  // And the engine would have run them.
  const sheet = HyperFormula.buildFromArray([['=1+1']], { licenseKey: 'gpl-v3' });
  assert.equal(sheet.getCellValue({ sheet: 0, row: 0, col: 0 }), 2);
  sheet.destroy();
});

/** The cells of a file as Gnumeric's: a formula has no type of value, a number is of type 40. */
function byGnumeric(path) {
  const out = `${path}.xml`;
  execFileSync('ssconvert', ['-I', 'Gnumeric_stf:stf_csvtab', '-E', 'UTF-8', '-T', 'Gnumeric_XmlIO:sax:0', path, out], { stdio: 'ignore', env: { ...process.env, LC_ALL: 'C.UTF-8' } });
  const cell = /<gnm:Cell Row="(\d+)" Col="(\d+)"(?: ValueType="(\d+)")?[^>]*>([^<]*)<\/gnm:Cell>/g;
  return [...readFileSync(out, 'utf8').matchAll(cell)].map(([, row, column, type, text]) => ({ row: Number(row), column: Number(column), type, text }));
}

test('tables: nor to another spreadsheet', async ({ scratch }) => {
  // It guesses the separator: from hostile names it takes another than the comma.
  const hostileFiles = handedOn(scratch(), hostile());
  for (const name of hostileFiles.of('.csv')) {
    for (const { type, text } of byGnumeric(join(hostileFiles.dir, name))) assert(type, `${name}: ${text} is a formula`);
  }
  for (const plan of [demo(), huge()]) {
    const files = handedOn(scratch(), plan);
    let numbers = 0;
    for (const name of files.of('.csv')) {
      const rows = cells(files.text(name));
      for (const { row, column, type, text } of byGnumeric(join(files.dir, name))) {
        assert(type, `${name}: ${text} is a formula`);
        const written = rows[row][column];
        if (!NUMBER.test(written)) continue;
        numbers += 1;
        assert.equal(type, '40', `${name}: ${written}`);
        assert(Math.abs(Number(text) - Number(written)) <= 1e-12 * Math.abs(Number(written)), `${name}: ${written} read as ${text}`);
      }
    }
    assert(numbers > 200, String(numbers));
  }
  // And it would have run them.
  const bad = join(scratch(), 'bad.csv');
  writeFileSync(bad, 'a,b\r\n=1+1,2\r\n');
  assert.equal(byGnumeric(bad).find(({ text }) => text === '=1+1').type, undefined);
});

test('tables: negative numbers stay numbers, and names come back letter by letter', async ({ scratch }) => {
  const files = handedOn(scratch(), hostile());
  const all = cells(files.text('till-morning-the-plan-with-its-assumed-values.csv'));
  const south = all.find((row) => row[7] === 'day.longitude_deg');
  assert(Number(south?.[2]) < 0, 'the demonstration lies west of Greenwich');
  const modes = cells(files.text('till-morning-hours-of-each-mode.csv')).slice(1).map(([mode]) => mode);
  assert.deepEqual(modes, TAMED);
});

test('the answer is what its schema says, to Ajv too', async ({ scratch }) => {
  const validate = new Ajv2020({ strict: false, allErrors: true, validateFormats: false }).compile(json('tests/schema/answer.schema.json'));
  for (const plan of [demo(), hostile(), json('tests/golden/plans/broken.json'), json('tests/golden/plans/lead_acid_by_inverter.json')]) {
    const answer = JSON.parse(handedOn(scratch(), plan).text('till-morning-answer.json'));
    assert(validate(answer), JSON.stringify(validate.errors?.slice(0, 3)));
    answer.runs = 'none';
    assert(!validate(answer));
  }
});

test('pictures: another renderer draws them, ink where the curves are', async ({ scratch }) => {
  for (const plan of [demo(), hostile()]) {
    const files = handedOn(scratch(), plan);
    assert(files.of('.svg').length >= 6);
    for (const name of files.of('.svg').filter((name) => !name.includes('link'))) {
      const drawn = new Resvg(files.text(name), { font: { loadSystemFonts: true } }).render();
      assert.equal(drawn.width, 720, name);
      const ink = new Set();
      const { pixels } = drawn; // a copy at each look
      for (let at = 0; at < pixels.length; at += 4) ink.add(pixels.readUIntBE(at, 3));
      assert(ink.has(0xffffff), `${name}: white paper`);
      // Bands are see-through over paper: no pixel need have the pure colour.
      if (/where-the/.test(name)) {
        const channels = (one) => [one >> 16, (one >> 8) & 255, one & 255];
        const isColour = (one) => Math.max(...channels(one)) - Math.min(...channels(one)) > 64;
        assert([...ink].some(isColour), `${name}: colour`);
        continue;
      }
      // The ribbon is of one colour, the wiring and the bank of lines in ink, all else of curves.
      const first = name.includes('ribbon') ? 0xb3400f : /wiring|battery-by/.test(name) ? 0x2a2620 : 0x0072b2;
      assert(ink.has(first), `${name}: first colour`);
    }
  }
});

test('the code holds the link, to another decoder, drawn by another renderer', async ({ scratch }) => {
  for (const plan of [demo(), json('tests/links/everything.json')]) {
    const files = handedOn(scratch(), plan);
    const drawn = new Resvg(files.text('till-morning-link.svg')).render();
    const read = jsQR(Uint8ClampedArray.from(drawn.pixels), drawn.width, drawn.height);
    assert.equal(read?.data, files.text('link.txt'));
  }
});

test('HTML: the Nu checker has nothing to say', async ({ scratch }) => {
  const jar = join(root, 'tests/browser/node_modules/vnu-jar/build/dist/vnu.jar');
  const reports = [demo(), hostile(), json('tests/golden/plans/broken.json')].map((plan) => join(handedOn(scratch(), plan).dir, 'till-morning-report.html'));
  const pages = [join(DIST, 'index.html'), join(root, 'examples/module/index.html'), join(root, 'examples/module/element.html')];
  const checked = (files) => {
    const { stderr } = spawnSync('java', ['-jar', jar, '--format', 'json', ...files], { encoding: 'utf8', maxBuffer: 1 << 26 });
    return JSON.parse(stderr).messages.map(({ url, lastLine, message }) => `${url}:${lastLine}: ${message}`);
  };
  assert.deepEqual(checked([...reports, ...pages]), []);
  const broken = join(scratch(), 'broken.html');
  writeFileSync(broken, '<!doctype html><title>x</title><p><b>open');
  assert(checked([broken]).length > 0, 'and would have');
});
