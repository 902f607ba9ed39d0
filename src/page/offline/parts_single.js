// The wasm of the page as one HTML file: all parts come along, packed by gzip and in
// base64, because from file:// and in a sandboxed frame nothing can be fetched.
import packed from 'till-morning-packed';

/** A part's bytes, as a response. */
export async function part(name) {
  const bytes = Uint8Array.from(atob(packed[name]), (c) => c.charCodeAt(0));
  const plain = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(await new Response(plain).arrayBuffer(), { headers: { 'content-type': 'application/wasm' } });
}
