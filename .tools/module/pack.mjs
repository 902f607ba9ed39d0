// Makes pkg/, an npm-shaped folder, of the module's wasm. Run by .tools/module.sh.
//   node .tools/module/pack.mjs STAGED
// STAGED holds what wasm-bindgen and wasm-opt have made: glue.js and the two wasms.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync } from 'node:zlib';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = join(here, '../..');
const pkg = join(root, 'pkg');
const staged = process.argv[2];
const WASMS = ['till-morning.wasm', 'till-morning-whole.wasm'];

const cargo = readFileSync(join(root, 'Cargo.toml'), 'utf8');
const of = (key) => cargo.match(new RegExp(`^${key} = "(.*)"$`, 'm'))[1];

rmSync(pkg, { recursive: true, force: true });
mkdirSync(pkg);
for (const name of ['index.js', 'index.d.ts', 'element.js', 'element.d.ts', 'README.md']) cpSync(join(here, name), join(pkg, name));
for (const [name, as] of [['MIT', 'LICENSE-MIT'], ['Apache-2.0', 'LICENSE-APACHE']]) cpSync(join(root, '.licenses', `${name}.txt`), join(pkg, as));
for (const name of ['glue.js', ...WASMS]) cpSync(join(staged, name), join(pkg, name));
for (const name of ['plan', 'answer']) {
  const schema = join(root, 'tests/schema', `${name}.schema.json`);
  cpSync(schema, join(pkg, `${name}.schema.json`));
  // The types are the schema's, so that they cannot say anything else.
  const args = ['--input', schema, '--additionalProperties=false', '--bannerComment', `// Made from ${name}.schema.json.`];
  writeFileSync(join(pkg, `${name}.d.ts`), execFileSync('json2ts', args));
}
writeFileSync(join(pkg, 'package.json'), `${JSON.stringify({
  name: of('name'),
  version: of('version'),
  description: of('description'),
  license: '(MIT OR Apache-2.0)',
  type: 'module',
  main: './index.js',
  types: './index.d.ts',
  exports: {
    '.': { types: './index.d.ts', default: './index.js' },
    './element.js': { types: './element.d.ts', default: './element.js' },
    './till-morning.wasm': './till-morning.wasm',
    './till-morning-whole.wasm': './till-morning-whole.wasm',
    './plan.schema.json': './plan.schema.json',
    './answer.schema.json': './answer.schema.json',
  },
  files: ['*.js', '*.d.ts', '*.wasm', '*.schema.json'],
  // It defines the element.
  sideEffects: ['./element.js'],
}, null, 2)}\n`);

for (const name of WASMS) {
  const wasm = readFileSync(join(pkg, name));
  console.log(`pkg/${name}: ${wasm.length} bytes, ${brotliCompressSync(wasm).length} by brotli`);
}
