// The page's wasm in parts: `first` starts the page; `keeping` is what reads and
// writes plans, and what a link's visitor needs; `later` the folded questions.
// `whole` is all in one, for the one-file page.
//
// wasm-opt is called here and not by Trunk, because a door must stay a function of
// its own: built into its one caller it could not be found. (In Rust each is marked
// `inline(never)` for the same reason.)
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

// The doors to the second part, then those to the third.
const DOORS = [
  ['reader::page', 'keep::open', 'keep::link_of', 'files::save', 'files::open'],
  ['later::inside', 'reader::on_paper'],
];

const paths = DOORS.map((doors) => doors.map((door) => `till_morning::page::${door}`).join()).join('/');
// As the compiler writes them: the parts of the path with their lengths between.
const stays = DOORS.flat().map((door) => `--no-inline=*page*${door.replace('::', '*')}*`);

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

/** Bytes of first, keeping, later and whole, from the wasm that wasm-bindgen has made. */
export function parts(bound, source) {
  const scratch = mkdtempSync(join(tmpdir(), 'till-morning-'));
  const at = (name) => join(scratch, name);
  const program = linked(source);
  try {
    run('wasm-opt', [bound, '-o', at('small.wasm'), '-g', ...stays, '-Oz']);
    console.log(run('till-morning-split', [program, at('small.wasm'), paths, scratch]).trim());
    // Read it when a part has grown: bytes, part and name of each function.
    copyFileSync(at('functions.txt'), join(dirname(program), 'till-morning-functions.txt'));
    const [first, keeping, later, whole] = ['0', '1', '2', 'whole'].map((name) => readFileSync(at(`${name}.wasm`)));
    return { first, keeping, later, whole };
  } catch (error) {
    if (error.code === 'ENOENT') error.message += '\n.tools/setup.sh build installs what is missing';
    throw error;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
