// The later parts of the wasm and the words of each language, each a file beside this
// script. Which part is asked for, the page says: the splitter's loaders call `part`, and
// page/words.rs calls `words`.

// By the names that they are asked for; the build puts them in.
const FILES = FILES_BY_PART;
const begun = new Map();

async function fetched(name) {
  const address = new URL(FILES[name], import.meta.url);
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${response.status} for ${address}`);
  return response;
}

function early(name) {
  const response = begun.get(name);
  begun.delete(name);
  return response ?? fetched(name);
}

/** A part's bytes, as a response. */
export async function part(name) {
  const response = await early(name);
  // Whatever kind the host says it is of.
  return new Response(await response.arrayBuffer(), { headers: { 'content-type': 'application/wasm' } });
}

/** A language's words. */
export async function words(tag) {
  return (await early(`words-${tag}`)).text();
}

// The storage of a sandboxed frame throws at the mere look.
function kept() {
  try {
    return { something: localStorage.length > 0, locale: JSON.parse(localStorage.getItem('till-morning.locale.1')) };
  } catch {
    return {};
  }
}

/** Begins to fetch what the page will ask for first. */
export function begin() {
  const { something, locale } = kept();
  const tag = locale?.language ?? navigator.language?.split(/[-_]/)[0].toLowerCase();
  const first = new Set([`words-${tag}` in FILES ? `words-${tag}` : 'words-en']);
  // A link's plan, or one kept here, takes what reads plans: it is then on its way beside
  // the first part, and the English that stands beside the cautions of any language.
  if (location.hash.length > 1 || something) {
    first.add('words-en');
    FILES_OF_KEEPING.forEach((name) => first.add(name));
  }
  for (const name of first) {
    const response = fetched(name);
    response.catch(() => {}); // told to whoever asks for it
    begun.set(name, response);
  }
}
