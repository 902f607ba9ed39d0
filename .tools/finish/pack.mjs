// What esbuild does for the page: one script of glue and loader, and a small style sheet.
import { execFileSync } from 'node:child_process';

function esbuild(args, input) {
  return execFileSync('esbuild', ['--log-level=warning', '--log-override:duplicate-object-key=silent', '--legal-comments=none', '--charset=utf8', '--minify', ...args], {
    input,
    stdio: ['pipe', 'pipe', 'inherit'],
    maxBuffer: 1 << 26,
  }).toString();
}

/** One script of an entry, the glue it calls and what wasm-bindgen made beside it. */
export function packScript(entry, { alias, define = {} }) {
  const each = (option, of) => Object.entries(of).map(([name, value]) => `--${option}:${name}=${value}`);
  return esbuild([entry, '--bundle', '--format=esm', '--target=es2022', ...each('alias', alias), ...each('define', define)]);
}

export const minifyStyle = (css) => esbuild(['--loader=css'], css);
export const minifyScript = (text) => esbuild(['--loader=js'], text);
