// Trunk's post_build hook: makes the finished site of what Trunk has staged.
//
//   till-morning-HASH.{wasm,js,css}   named by their content; loader and glue in one script
//   till-morning-rest-HASH.wasm       what stands below the first screen
//   till-morning-keeping-HASH.wasm    what reads and writes plans: links, files, storage
//   till-morning-later-HASH.wasm      the folded questions
//   till-morning-shared-HASH.wasm     what several of these use, and the first answer does not
//   till-morning-words-LANG-HASH.txt  what is said, a file a language
//   index.html                        no inline script or style: runs under a strict content policy
//   sw.js                             the service worker with this build's list of files
//   embed.js                          for pages that frame this one: the frame's height
//   till-morning.html                 the whole page as one file, for file:// and sandboxed frames
//
// The same sources give the same bytes: nothing here reads clock or machine.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { minifyScript, minifyStyle, packScript } from './pack.mjs';
import { element, oneFile, replaceOnce, staged } from './html.mjs';
import { withParts } from './parts.mjs';

const dir = process.env.TRUNK_STAGING_DIR;
if (!dir) throw new Error('finish.mjs is run by Trunk (trunk build)');
const source = join(process.env.TRUNK_SOURCE_DIR, 'src/page/offline');

const read = (name) => readFileSync(join(dir, name));
const drop = (name) => rmSync(join(dir, name), { recursive: true, force: true });
const hashOf = (data) => createHash('sha256').update(data).digest('hex').slice(0, 16);
const write = (name, data) => { writeFileSync(join(dir, name), data); return name; };
const writeHashed = (end, data, part = '') => write(`till-morning-${part}${hashOf(data)}.${end}`, data);

/**
 * The service worker: its list, and a version that changes when any file does.
 * Written before the one-file page, which is for taking away and stays out of it.
 */
function writeWorker() {
  const files = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(dir.length + 1))
    // Home-screen icons are the system's: it fetches them when the page is put there.
    .filter((name) => !/^icons\/.*\.png$/.test(name))
    .sort();
  const version = hashOf(files.map((name) => `${name} ${hashOf(read(name))}\n`).join(''));
  // The folder stands for its index.html: some hosts redirect the long name.
  const list = files.map((name) => (name === 'index.html' ? './' : `./${name}`));
  let text = readFileSync(join(source, 'worker.js'), 'utf8');
  text = replaceOnce(text, 'VERSION_OF_THIS_BUILD', version);
  text = replaceOnce(text, "['FILES_OF_THIS_BUILD']", JSON.stringify(list));
  write('sw.js', minifyScript(text));
}

const page = staged(read('index.html').toString());
const css = minifyStyle(page.styles.map((name) => read(name)).join('\n'));

/** What a part of the wasm is called, from what the splitter calls it. */
function titleOf(name) {
  const [, title] = name.match(/^split_(\w+)\.wasm$/) ?? [];
  if (!title && !/^chunk_\d+\.wasm$/.test(name)) throw new Error(`a part of another kind: ${name}`);
  return `${title ?? 'shared'}-`;
}

const made = withParts(process.env.TRUNK_SOURCE_DIR, ({ dir: bound, glue, main, others, keeping, words }) => {
  const wasmFile = writeHashed('wasm', main);
  const files = [
    ...Object.entries(others).map(([name, bytes]) => [name, writeHashed('wasm', bytes, titleOf(name))]),
    ...Object.entries(words).map(([name, bytes]) => [name, writeHashed('txt', bytes, `${name}-`)]),
  ];
  const script = packScript(join(source, 'start.js'), {
    alias: { 'till-morning-glue': glue, 'till-morning-parts': join(source, 'parts.js') },
    define: { WASM_FILE: JSON.stringify(wasmFile), FILES_BY_PART: JSON.stringify(Object.fromEntries(files)), FILES_OF_KEEPING: JSON.stringify(keeping) },
  });
  const packed = Object.entries({ main, ...others, ...words })
    .map(([name, bytes]) => [name, gzipSync(bytes, { level: 9, memLevel: 9 }).toString('base64')]);
  const carried = join(bound, 'packed.json');
  writeFileSync(carried, JSON.stringify(Object.fromEntries(packed)));
  const single = packScript(join(source, 'start_single.js'), {
    alias: { 'till-morning-glue': glue, 'till-morning-parts': join(source, 'parts_single.js'), 'till-morning-packed': carried },
  });
  return { wasmFile, script, single };
});
const { wasmFile, script, single } = made;

[page.glue, page.wasm, ...page.styles, 'snippets'].forEach(drop);

const head = [
  element.style(writeHashed('css', css)),
  element.script(writeHashed('js', script)),
  element.preload(wasmFile),
].join('\n  ');
write('index.html', page.withHead(head));
writeWorker();
// For pages that frame this one; not of the page itself.
write('embed.js', minifyScript(readFileSync(join(source, 'embed.js'), 'utf8')));
const licence = readFileSync(join(process.env.TRUNK_SOURCE_DIR, '.licenses/MIT.txt'), 'utf8');
write('till-morning.html', oneFile(page, { css, script: single, read, licence }));
