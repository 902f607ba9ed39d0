// Keeps the page for use without a signal: registers the service worker, and
// tells the page when a newer version waits. Nothing global; three signs only:
//
//   event `till-morning-update` on window, and `data-update` on <html> for a page
//   that starts to listen later: a newer version is here and waits
//   event `till-morning-reload` on window, from the page: take it now

// A sandboxed frame without an origin of its own throws at the mere look.
function workers() {
  try {
    const hosted = window.isSecureContext && /^https?:$/.test(location.protocol);
    return hosted ? navigator.serviceWorker : undefined;
  } catch {
    return undefined;
  }
}

function announce() {
  const root = document.documentElement;
  if ('failed' in root.dataset) return reload(); // nobody could press the button
  root.dataset.update = '';
  window.dispatchEvent(new Event('till-morning-update'));
}

function reload() {
  window.dispatchEvent(new Event('till-morning-reload'));
}

// Reloads once the waiting worker has taken over; other tabs keep what they have
// loaded, which is all of it.
function take(container, registration) {
  const worker = registration.waiting;
  if (!worker) return location.reload();
  container.addEventListener('controllerchange', () => location.reload(), { once: true });
  worker.postMessage('take-over');
}

function watch(container, registration) {
  // A first installation has nothing to replace: no news.
  const arrived = () => registration.waiting && registration.active && announce();
  const follow = () => registration.installing?.addEventListener('statechange', arrived);
  window.addEventListener('till-morning-reload', () => take(container, registration));
  registration.addEventListener('updatefound', follow);
  follow();
  arrived();
}

async function register(container) {
  try {
    watch(container, await container.register('./sw.js', { updateViaCache: 'none' }));
  } catch {
    // Refused (a private window, a full disk, a host without sw.js): the page
    // works as it is, only not without a signal.
  }
}

// After everything else: the first answer comes before the copy for later.
const container = workers();
if (container) {
  const go = () => register(container);
  if (document.readyState === 'complete') go();
  else window.addEventListener('load', go, { once: true });
}
