// The page's own code has broken down: a trap in the wasm, after which nothing typed is
// understood any more. The page has drawn a bar for that and hidden it (`#broken`, and
// in the shell until the page stands); its buttons work without the wasm.
const DRAFT = 'till-morning.draft.1';
const BROKEN = 'till-morning.broken.1';
let typed = '';

function storages() {
  // A sandboxed frame without an origin of its own throws at the mere look.
  try { return [window.localStorage, window.sessionStorage]; } catch { return []; }
}

/** The plan that does not open goes where nothing opens it, and is not lost. */
function setAside() {
  for (const storage of storages()) {
    const draft = storage.getItem(DRAFT);
    if (draft !== null) storage.setItem(BROKEN, draft);
    storage.removeItem(DRAFT);
  }
  location.replace(location.pathname + location.search);
}

function show() {
  const bar = document.getElementById('broken');
  if (!bar?.hidden) return;
  bar.hidden = false;
  // The address has the plan a moment after each change; what was typed last may not be in it.
  const link = bar.querySelector('.broken-link');
  link.value = location.href;
  link.parentElement.hidden = location.hash.length < 2;
  bar.querySelector('.broken-typed').textContent = typed;
  bar.scrollIntoView({ block: 'nearest' });
}

const isTrap = (error) => error instanceof WebAssembly.RuntimeError;
window.addEventListener('error', (event) => { if (isTrap(event.error)) show(); });
window.addEventListener('unhandledrejection', (event) => { if (isTrap(event.reason)) show(); });
document.addEventListener('input', ({ target }) => {
  const name = target.labels?.[0]?.textContent ?? '';
  typed = `${name} ${target.value ?? ''}`.trim();
}, true);
document.addEventListener('click', ({ target }) => {
  if (target.matches?.('.broken-reload')) location.reload();
  if (target.matches?.('.broken-empty')) setAside();
});
