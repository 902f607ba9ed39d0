// A small static server, for `make serve` and for the browser tests.
//   node tests/browser/serve.mjs dist [--port 8080] [--base /some/folder/] [--csp] [--compress]
import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { brotliCompressSync } from 'node:zlib';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

const HASHED = /-[0-9a-f]{16}\.\w+$/; // the name changes with the content

/** The strictest policy the page must run under: its own files, and nothing inline. */
export const STRICT_CSP = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The file that an address means, or nothing: outside the base or the folder there is none. */
function find(root, base, address) {
  let path;
  try { path = decodeURIComponent(new URL(address, 'http://x').pathname); } catch { return undefined; }
  if (!path.startsWith(base)) return undefined;
  const file = normalize(join(root, path.slice(base.length), path.endsWith('/') ? 'index.html' : ''));
  if (!file.startsWith(root + sep)) return undefined;
  const found = statSync(file, { throwIfNoEntry: false });
  return found?.isFile() ? { file, size: found.size } : undefined;
}

function listen(server, port, host) {
  return new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, host, () => { server.off('error', failed); done(server.address().port); });
  });
}

/**
 * Serves `root` under `base`. `requests` fills with {path, status}; `root` may be
 * changed while it runs (a new release); `close` ends open connections too. With
 * `store: false` the browser's own cache keeps nothing, and only a service worker can;
 * with `shared` any origin may read them, with `compress` files go out by brotli, as a good host sends them.
 */
export async function serve({ root, base = '/', csp, shared = false, store = true, compress = false, port = 0, host = '127.0.0.1' }) {
  const site = { root: resolve(root), requests: [] };
  const packed = new Map();
  const server = createServer((request, response) => {
    const found = /^(GET|HEAD)$/.test(request.method) && find(site.root, base, request.url);
    site.requests.push({ path: request.url, status: found ? 200 : 404 });
    if (!found) return response.writeHead(404, { 'Content-Type': 'text/plain' }).end('not here\n');
    const headers = {
      'Content-Type': TYPES[extname(found.file)] ?? 'application/octet-stream',
      'Content-Length': found.size,
      'Cache-Control': !store ? 'no-store' : HASHED.test(found.file) ? 'max-age=31536000, immutable' : 'no-cache',
    };
    if (csp) headers['Content-Security-Policy'] = csp;
    if (shared) headers['Access-Control-Allow-Origin'] = '*';
    if (compress && /\.(html|js|css|wasm|json|svg|txt)$/.test(found.file)) {
      const data = packed.get(found.file) ?? brotliCompressSync(readFileSync(found.file));
      packed.set(found.file, data);
      return response.writeHead(200, { ...headers, 'Content-Encoding': 'br', 'Content-Length': data.length }).end(data);
    }
    response.writeHead(200, headers);
    return request.method === 'HEAD' ? response.end() : createReadStream(found.file).pipe(response);
  });
  const taken = await listen(server, port, host).catch((error) => {
    if (error.code !== 'EADDRINUSE') throw error;
    return listen(server, 0, host);
  });
  const close = () => new Promise((done) => { server.close(done); server.closeAllConnections(); });
  return Object.assign(site, { port: taken, url: `http://localhost:${taken}${base}`, close });
}

function option(name) {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? undefined : process.argv[at + 1];
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  const csp = process.argv.includes('--csp') ? STRICT_CSP : undefined;
  const compress = process.argv.includes('--compress');
  const site = await serve({ root: process.argv[2], compress, base: option('base')?.replace(/^\/*(.*?)\/*$/, '/$1/').replace(/^\/\/$/, '/'), port: Number(option('port') ?? 8080), csp });
  console.log(`serving ${site.root}\n\n  ${site.url}\n\nstop with Ctrl-C`);
}
