// Prints what each file of dist/ weighs, raw and as a host sends it, and fails
// when the first load, the later part or the one-file page is over its budget.
//   node .tools/sizes.mjs dist
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';

const FIRST_LOAD_BROTLI = 150_000; // all that index.html refers to
const LATER_BROTLI = 150_000; // fetched once the first answer stands
const SINGLE_RAW = 500_000; // till-morning.html holds both, and is passed on as it is

const dir = process.argv[2] ?? 'dist';
const names = readdirSync(dir, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(join(dir).length + 1))
  .sort();

function weigh(name) {
  const data = readFileSync(join(dir, name));
  return { name, raw: data.length, gzip: gzipSync(data, { level: 9 }).length, brotli: brotliCompressSync(data).length };
}
const sum = (name, rows) => rows.reduce(
  (all, row) => ({ name, raw: all.raw + row.raw, gzip: all.gzip + row.gzip, brotli: all.brotli + row.brotli }),
  { name, raw: 0, gzip: 0, brotli: 0 },
);
const line = ({ name, raw, gzip, brotli }) => [raw, gzip, brotli].map((n) => String(n).padStart(9)).join('') + `  ${name}`;

const rows = names.map(weigh);
const shell = readFileSync(join(dir, 'index.html'), 'utf8');
// Relative addresses only; the touch icon and the manifest's icons are fetched when the page is put on a home screen.
const asked = [...shell.matchAll(/<(?:link|script)\b[^>]*\b(?:href|src)="\.\/([^"]+)"/g)]
  .filter(([tag]) => !tag.includes('apple-touch-icon'))
  .map(([, name]) => name);
const first = sum('first load', rows.filter((row) => row.name === 'index.html' || asked.includes(row.name)));
const later = rows.find(({ name }) => name.startsWith('till-morning-later-'));
const single = rows.find((row) => row.name === 'till-morning.html');
const worker = readFileSync(join(dir, 'sw.js'), 'utf8');
const kept = sum('kept for use without a signal', rows.filter(({ name }) => name === 'index.html' || worker.includes(`"./${name}"`)));

console.log('      raw     gzip   brotli');
rows.forEach((row) => console.log(line(row)));
console.log();
console.log(line(first));
console.log(line({ ...later, name: 'later part' }));
console.log(line(kept));

const over = [];
if (first.brotli > FIRST_LOAD_BROTLI) over.push(`first load: ${first.brotli} bytes by brotli, budget ${FIRST_LOAD_BROTLI}`);
if (later.brotli > LATER_BROTLI) over.push(`later part: ${later.brotli} bytes by brotli, budget ${LATER_BROTLI}`);
if (single.raw > SINGLE_RAW) over.push(`till-morning.html: ${single.raw} bytes, budget ${SINGLE_RAW}`);
console.log(over.length ? `OVER BUDGET\n${over.join('\n')}` : 'within budget: first load 150 kB and later part 150 kB by brotli, one file 500 kB');
process.exitCode = over.length ? 1 : 0;
