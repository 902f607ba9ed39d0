// Prints what each file of dist/ weighs, raw and as a host sends it, and what of it is
// over what was aimed at; with pkg/, if it is there.
//   node .tools/sizes.mjs dist
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';

// Measured and shown, not bent for: where a number here would cost a plain house, keep
// the house and raise the number.
const FIRST_LOAD_BROTLI = 190_000; // all that index.html refers to, and the words: the first answer
const LATER_BROTLI = 400_000; // what is fetched once the first answer stands
const MODULE_BROTLI = [100_000, 250_000]; // pkg/: the first two questions, and all six
const SINGLE_RAW = 1_100_000; // till-morning.html holds all, and is passed on as it is

const dir = process.argv[2] ?? 'dist';
const names = readdirSync(dir, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(join(dir).length + 1))
  .sort();

function weigh(name, of = dir) {
  const data = readFileSync(join(of, name));
  return { name, raw: data.length, gzip: gzipSync(data, { level: 9 }).length, brotli: brotliCompressSync(data).length };
}
const sum = (name, rows) => rows.reduce(
  (all, row) => ({ name, raw: all.raw + row.raw, gzip: all.gzip + row.gzip, brotli: all.brotli + row.brotli }),
  { name, raw: 0, gzip: 0, brotli: 0 },
);
const line = ({ name, raw, gzip, brotli }) => [raw, gzip, brotli].map((n) => String(n).padStart(9)).join('') + `  ${name}`;

const rows = names.map((name) => weigh(name));
const shell = readFileSync(join(dir, 'index.html'), 'utf8');
// Relative addresses only; the touch icon and the manifest's icons are fetched when the page is put on a home screen.
const asked = [...shell.matchAll(/<(?:link|script)\b[^>]*\b(?:href|src)="\.\/([^"]+)"/g)]
  .filter(([tag]) => !tag.includes('apple-touch-icon'))
  .map(([, name]) => name);
// English, as most visitors have it; the other languages are about as long.
const words = (name) => name.startsWith('till-morning-words-en-');
const first = sum('first load', rows.filter(({ name }) => name === 'index.html' || asked.includes(name) || words(name)));
const parts = ['rest', 'keeping', 'shared', 'later']
  .map((name) => sum(name, rows.filter((row) => row.name.startsWith(`till-morning-${name}-`))));
const laterParts = sum('later parts', parts);
const single = rows.find((row) => row.name === 'till-morning.html');
// The module for scripts, if it has been made.
const pkg = fileURLToPath(new URL('../pkg', import.meta.url));
const module = ['till-morning.wasm', 'till-morning-whole.wasm'].filter((name) => existsSync(join(pkg, name)))
  .map((name) => ({ ...weigh(name, pkg), name: `pkg/${name}` }));
const worker = readFileSync(join(dir, 'sw.js'), 'utf8');
const kept = sum('kept for use without a signal', rows.filter(({ name }) => name === 'index.html' || worker.includes(`"./${name}"`)));

console.log('      raw     gzip   brotli');
rows.forEach((row) => console.log(line(row)));
console.log();
console.log(line(first));
parts.forEach((row) => console.log(line(row)));
console.log(line(laterParts));
console.log(line(kept));
module.forEach((row) => console.log(line(row)));

const over = [
  ['first load, by brotli', first.brotli, FIRST_LOAD_BROTLI],
  ['later parts, by brotli', laterParts.brotli, LATER_BROTLI],
  ...module.map(({ name, brotli }, at) => [`${name}, by brotli`, brotli, MODULE_BROTLI[at]]),
  ['till-morning.html', single.raw, SINGLE_RAW],
].filter(([, bytes, aim]) => bytes > aim);
console.log(over.length
  ? over.map(([name, bytes, aim]) => `over what was aimed at: ${name}: ${bytes} bytes, aimed at ${aim}`).join('\n')
  : 'within what was aimed at');
