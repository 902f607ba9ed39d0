// The page's wasm in parts: the main one starts the page, the others come when a
// function marked with `wasm_split` is called (src/page/part.rs). The splitter works on
// the linker's output, so wasm-bindgen and wasm-opt run here, after it, and not in Trunk.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The main part, as wasm-bindgen names it. */
const MAIN = 'main_bg.wasm';
/** What loads the others; the splitter writes it and the glue imports it. */
const LOADERS = '__wasm_split.js';

// What the compiler may use, named: with all features wasm-opt makes what browsers refuse.
const FEATURES = ['bulk-memory', 'bulk-memory-opt', 'multivalue', 'mutable-globals', 'nontrapping-float-to-int', 'reference-types', 'sign-ext']
  .map((name) => `--enable-${name}`);

/** Runs a program; what it has to say is shown only when it fails. */
function run(program, args, options) {
  try {
    return execFileSync(program, args, { stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 28, ...options }).toString();
  } catch (error) {
    if (error.code === 'ENOENT') error.message += '\n.tools/setup.sh build installs what is missing';
    throw error;
  }
}

/** The program as the linker left it, with the relocations that the splitter goes by. */
function linked(source) {
  const metadata = run('cargo', ['metadata', '--no-deps', '--offline', '--format-version', '1'], { cwd: source });
  const profile = process.env.TRUNK_PROFILE ?? 'release';
  return join(JSON.parse(metadata).target_directory, 'wasm32-unknown-unknown', profile, 'till-morning-page.wasm');
}

/**
 * The loaders fetch a part from beside their own script. Ours may be elsewhere and has
 * another name: they ask `part` for it (offline/parts.js, offline/parts_single.js).
 */
function askForParts(text, names) {
  const asked = text.replace(/fetch\(new URL\("\.\/([^"]+)", import\.meta\.url\)\)/g, 'part("$1")');
  const found = [...asked.matchAll(/part\("([^"]+)"\)/g)].map(([, name]) => name).sort();
  if (found.join() !== names.join() || /\bfetch\(/.test(asked)) {
    throw new Error(`the splitter's loaders are of another make: ${found.join()} for ${names.join()}`);
  }
  return `import { part } from 'till-morning-parts';\n${asked}`;
}

/** What a part takes beside its own file, by the names that `part` is asked for. */
function filesOf(part, loaders) {
  const [, shared] = loaders.match(new RegExp(`__wasm_split_load_${part} = [^]*?\\n, \\[([^\\]]*)\\]`)) ?? [];
  if (shared === undefined) throw new Error(`the splitter's loaders have no ${part}`);
  const names = shared.split(',').map((name) => name.trim()).filter(Boolean);
  return [`split_${part}.wasm`, ...names.map((name) => `${name.replace(/^__/, '')}.wasm`)];
}

/** Each language's words: they ride in the program, in sections that it does not use (src/main.rs). */
function wordsIn(source, program) {
  const module = new WebAssembly.Module(readFileSync(program));
  const words = readdirSync(join(source, 'src/text/catalogue')).sort().map((tag) => {
    const [section, ...more] = WebAssembly.Module.customSections(module, `words-${tag}`);
    if (!section || more.length) throw new Error(`the words of ${tag} are not in ${program}`);
    return [`words-${tag}`, Buffer.from(section)];
  });
  return Object.fromEntries(words);
}

/**
 * Makes the parts, hands them to `use` and clears up: `glue`, a script, `main`, the bytes
 * of the first part, `others`, bytes by the names that `part` is asked for, `keeping`, which
 * of them it takes to read a plan, and `words`, bytes by language.
 */
export function withParts(source, use) {
  const scratch = mkdtempSync(join(tmpdir(), 'till-morning-'));
  const [split, bound] = [join(scratch, 'split'), join(scratch, 'bound')];
  try {
    const program = linked(source);
    run('wasm-split-cli', [program, split, '--target', 'web', '--out-name', 'main']);
    run('wasm-bindgen', [
      '--target', 'web', '--no-typescript', '--keep-lld-exports', '--remove-name-section', '--remove-producers-section',
      '--out-dir', bound, '--out-name', 'main', join(split, 'main.wasm'),
    ]);
    const small = (path) => {
      run('wasm-opt', [path, '-Oz', ...FEATURES, '--strip-debug', '--strip-producers', '-o', path]);
      return readFileSync(path);
    };
    const names = readdirSync(split).filter((name) => name.endsWith('.wasm') && name !== 'main.wasm').sort();
    const others = Object.fromEntries(names.map((name) => [name, small(join(split, name))]));
    const loaders = readFileSync(join(split, LOADERS), 'utf8');
    writeFileSync(join(bound, LOADERS), askForParts(loaders, names));
    return use({ dir: bound, glue: join(bound, 'main.js'), main: small(join(bound, MAIN)), others, keeping: filesOf('keeping', loaders), words: wordsIn(source, program) });
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
