// The later parts of the wasm, each a file beside this script: which of them is asked
// for, the page says; the splitter's loaders call this.

// By the names that the splitter knows them by; the build puts them in.
const FILES = FILES_BY_PART;
const begun = new Map();

async function fetched(name) {
  const address = new URL(FILES[name], import.meta.url);
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${response.status} for ${address}`);
  // Whatever kind the host says it is of.
  return new Response(await response.arrayBuffer(), { headers: { 'content-type': 'application/wasm' } });
}

/** A part's bytes, as a response. */
export function part(name) {
  const early = begun.get(name);
  begun.delete(name);
  return early ?? fetched(name);
}

// A link's plan, or one kept here, takes what reads plans: it is then on its way beside
// the first part. A sandboxed frame throws at the look into the storage.
function somethingToOpen() {
  try {
    return location.hash.length > 1 || localStorage.length > 0;
  } catch {
    return false;
  }
}

/** Begins to fetch what reads plans, where there may be one. */
export function begin() {
  if (!somethingToOpen()) return;
  for (const name of Object.keys(FILES)) {
    if (name === 'split_later.wasm') continue;
    const early = fetched(name);
    early.catch(() => {}); // told to whoever asks for it
    begun.set(name, early);
  }
}
