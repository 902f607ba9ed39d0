// The page's wasm in two parts: `first` starts the page, `later` is what only the
// doors lead to. `whole` is both in one, for the one-file page.
//
// wasm-opt is called here and not by Trunk, because a door must stay a function of
// its own: built into its one caller it could not be found. (In Rust each is marked
// `inline(never)` for the same reason.)
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

const DOORS = ['later::inside', 'reader::page', 'keep::open', 'keep::link_of', 'files::save', 'files::open'];

const paths = DOORS.map((door) => `till_morning::page::${door}`).join();
// As the compiler writes them: the parts of the path with their lengths between.
const stays = DOORS.map((door) => `--no-inline=*page*${door.replace('::', '*')}*`);

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
  // Read it when a part has grown: bytes, part and name of each function.
  const list = join(dirname(linked(source)), 'till-morning-functions.txt');
  try {
    run('wasm-opt', [bound, '-o', at('small'), '-g', ...stays, '-Oz']);
    console.log(run('till-morning-split', [linked(source), at('small'), paths, ...names.map(at), list]).trim());
    return Object.fromEntries(names.map((name) => [name, readFileSync(at(name))]));
  } catch (error) {
    if (error.code === 'ENOENT') error.message += '\n.tools/setup.sh build installs what is missing';
    throw error;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
