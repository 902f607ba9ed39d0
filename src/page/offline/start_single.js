// Entry of the page as one HTML file: the wasm comes along, packed by gzip and
// in base64, because from file:// and in a sandboxed frame nothing can be fetched.
import './frame.js';
import init from 'till-morning-glue';
import packed from 'till-morning-wasm.gz';
import { start } from './outcome.js';

async function unpack(text) {
  const bytes = Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
  const plain = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(plain).arrayBuffer();
}

start(async () => init({ module_or_path: await unpack(packed) }));
