// What esbuild does for the page: one script of glue and loader, and a small style sheet.
import { execFileSync } from 'node:child_process';

function esbuild(args, input) {
  return execFileSync('esbuild', ['--log-level=warning', '--legal-comments=none', '--charset=utf8', '--minify', ...args], {
    input,
    stdio: ['pipe', 'pipe', 'inherit'],
    maxBuffer: 1 << 26,
  }).toString();
}

/** One script of an entry, the glue it calls and what wasm-bindgen made beside it. */
export function packScript(entry, glue, { define = {}, wasm } = {}) {
  const defines = Object.entries(define).map(([name, value]) => `--define:${name}=${value}`);
  const alias = wasm ? [`--alias:till-morning-wasm.gz=${wasm}`, '--loader:.gz=base64'] : [];
  const args = ['--bundle', '--format=esm', '--target=es2022', `--alias:till-morning-glue=${glue}`];
  return esbuild([entry, ...args, ...alias, ...defines]);
}

export const minifyStyle = (css) => esbuild(['--loader=css'], css);
export const minifyScript = (text) => esbuild(['--loader=js'], text);
