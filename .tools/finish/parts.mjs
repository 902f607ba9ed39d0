// The page's wasm in two parts: `first` starts the page, `later` is what only the
// door leads to, src/page/later.rs. `whole` is both in one, for the one-file page.
//
// wasm-opt is called here and not by Trunk, because the door must stay a function
// of its own: built into its one caller it could not be found.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const DOOR = 'till_morning::page::later::inside';
const DOOR_MANGLED = '*page*later*inside*';

/** A program's output; what it has to say besides is shown only when it fails. */
function run(program, args, options) {
  return execFileSync(program, args, { stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 28, ...options }).toString();
}

/** The program as the linker left it, with the references that the cut goes by. */
function linked(source) {
  const metadata = run('cargo', ['metadata', '--no-deps', '--offline', '--format-version', '1'], { cwd: source });
  const profile = process.env.TRUNK_PROFILE ?? 'release';
  return join(JSON.parse(metadata).target_directory, 'wasm32-unknown-unknown', profile, 'till-morning-page.wasm');
}

/** Bytes of first, later and whole, from the wasm that wasm-bindgen has made. */
export function parts(bound, source) {
  const scratch = mkdtempSync(join(tmpdir(), 'till-morning-'));
  const at = (name) => join(scratch, `${name}.wasm`);
  const names = ['first', 'later', 'whole'];
  try {
    run('wasm-opt', [bound, '-o', at('small'), '-g', `--no-inline=${DOOR_MANGLED}`, '-Oz']);
    console.log(run('till-morning-split', [linked(source), at('small'), DOOR, ...names.map(at)]).trim());
    return Object.fromEntries(names.map((name) => [name, readFileSync(at(name))]));
  } catch (error) {
    if (error.code === 'ENOENT') error.message += '\n.tools/setup.sh build installs what is missing';
    throw error;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
