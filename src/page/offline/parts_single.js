// The wasm of the page as one HTML file, and the words of each language: all of it comes
// along, packed by gzip and in base64, because from file:// and in a sandboxed frame
// nothing can be fetched.
import packed from 'till-morning-packed';

function unpacked(name) {
  const bytes = Uint8Array.from(atob(packed[name]), (c) => c.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip')));
}

/** A part's bytes, as a response. */
export async function part(name) {
  return new Response(await unpacked(name).arrayBuffer(), { headers: { 'content-type': 'application/wasm' } });
}

/** A language's words. */
export const words = (tag) => unpacked(`words-${tag}`).text();
