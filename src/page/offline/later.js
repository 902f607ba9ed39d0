// Brings the later part of the wasm, which shares memory and table with the first:
// once the first answer stands, or as soon as it is asked for. Signs only:
//
//   `data-later` on <html>: `coming`, then gone once the part is there; `missing`
//   when it did not come
//   event `till-morning-later` on window: that has changed
//   event `till-morning-bring` on window, from the page: try now, or again

// A link's plan, or one kept here, takes the part to be read: both are then on
// their way at once. A sandboxed frame throws at the look into the storage.
function somethingToOpen() {
  try {
    return location.hash.length > 1 || localStorage.length > 0;
  } catch {
    return false;
  }
}

/** Fetches from `address`, once `page` has started; `page` gives the first part's exports. */
export function bring(address, page) {
  const root = document.documentElement;
  root.dataset.later = 'coming';

  async function fetched() {
    const response = await fetch(address);
    if (!response.ok) throw new Error(`${response.status} for ${address}`);
    return response.arrayBuffer();
  }

  async function instantiate() {
    const [f, bytes] = await Promise.all([page, fetched()]);
    await WebAssembly.instantiate(bytes, { f });
  }

  function tell(state) {
    if (state) root.dataset.later = state;
    else delete root.dataset.later;
    window.dispatchEvent(new Event('till-morning-later'));
  }

  const again = () => root.dataset.later === 'missing' && go();
  let underWay;
  function go() {
    if (underWay) return;
    underWay = true;
    if (root.dataset.later !== 'coming') tell('coming');
    instantiate().then(() => {
      window.removeEventListener('till-morning-bring', go);
      window.removeEventListener('online', again);
      tell();
    }, () => {
      underWay = false;
      tell('missing');
    });
  }

  window.addEventListener('till-morning-bring', go);
  window.addEventListener('online', again);
  if (somethingToOpen()) go();
  const idle = window.requestIdleCallback ?? ((work) => setTimeout(work, 200));
  page.then(() => idle(go), () => {}); // where the page did not start, outcome.js says so
}
