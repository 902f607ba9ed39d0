// Brings the later parts of the wasm, which share memory and table with the first: the
// one that reads and writes plans, then the one with the folded questions. Both come once
// the first answer stands, or as soon as they are asked for. Signs only:
//
//   `data-keeping` and `data-later` on <html>, one for each part: `coming`, then gone
//   once it is there; `missing` when it did not come
//   event `till-morning-later` on window: one of them has changed
//   event `till-morning-bring` on window, from the page: try now, or again

const SIGNS = ['keeping', 'later'];

// A link's plan, or one kept here, takes the first of them to be read: it is then on its
// way at once. A sandboxed frame throws at the look into the storage.
function somethingToOpen() {
  try {
    return location.hash.length > 1 || localStorage.length > 0;
  } catch {
    return false;
  }
}

/** Fetches from `addresses`, once `page` has started; `page` gives the first part's exports. */
export function bring(addresses, page) {
  const { dataset } = document.documentElement;
  for (const sign of SIGNS) dataset[sign] = 'coming';

  function tell(sign, state) {
    if (dataset[sign] === state) return;
    if (state) dataset[sign] = state;
    else delete dataset[sign];
    window.dispatchEvent(new Event('till-morning-later'));
  }

  async function fetched(address) {
    const response = await fetch(address);
    if (!response.ok) throw new Error(`${response.status} for ${address}`);
    return response.arrayBuffer();
  }

  // What all parts that are there give, together: each takes from it what it needs.
  const f = {};
  const first = page.then((exports) => { Object.assign(f, exports); });
  first.catch(() => {}); // told to whoever waits for it
  async function instantiate(address) {
    const [bytes] = await Promise.all([fetched(address), first]);
    const { instance } = await WebAssembly.instantiate(bytes, { f });
    Object.assign(f, instance.exports);
  }

  // One after the other: each takes from the one before, and on a slow line two at a
  // time would keep the one that is waited for.
  let [there, wanted, underWay] = [0, 0, false];
  async function go() {
    underWay = true;
    try {
      while (there < wanted) {
        SIGNS.slice(there).forEach((sign) => tell(sign, 'coming'));
        await instantiate(addresses[there]);
        there += 1;
        tell(SIGNS[there - 1]);
      }
    } catch {
      wanted = 0;
      SIGNS.slice(there).forEach((sign) => tell(sign, 'missing'));
    }
    underWay = false;
  }
  const want = (parts) => {
    wanted = Math.max(wanted, parts);
    if (!underWay) go();
  };

  window.addEventListener('till-morning-bring', () => want(2));
  window.addEventListener('online', () => SIGNS.some((sign) => dataset[sign] === 'missing') && want(2));
  if (somethingToOpen()) want(1);
  const idle = window.requestIdleCallback ?? ((work) => setTimeout(work, 200));
  page.then(() => idle(() => want(2)), () => {}); // where the page did not start, outcome.js says so
}
