// The service worker. The build writes it to sw.js with the list of the site's
// files and a version made from their content, and every build with the same
// content has the same version.
const VERSION = 'VERSION_OF_THIS_BUILD';
const FILES = ['FILES_OF_THIS_BUILD'];

// Caches belong to the whole origin: the folder in the name keeps two copies of
// the page on one host apart.
const OURS = `till-morning ${self.registration.scope} `;
const CACHE = OURS + VERSION;
const HOME = new URL('./', self.location).href;
const KEPT = new Set(FILES.map((file) => new URL(file, self.location).href));

// Names that carry their content's hash may come from the browser's own cache,
// where the first visit has just put them; the others are asked for anew.
function request(file) {
  const hashed = /-[0-9a-f]{16}\.\w+$/.test(file);
  return new Request(file, { cache: hashed ? 'default' : 'no-cache' });
}

// All or nothing: a file that is missing leaves the present version in place.
self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(FILES.map(request))));
});

async function dropOld() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(OURS) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
}

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOld().then(() => self.clients.claim()));
});

// A new version waits until the page says so, so that nobody's half-typed plan
// meets another version's script.
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
});

// The folder itself and its index.html are one page, whatever the query.
function keptAddress(request) {
  const url = new URL(request.url);
  url.hash = '';
  if (request.mode === 'navigate') {
    url.search = '';
    if (url.href === `${HOME}index.html`) return HOME;
  }
  return KEPT.has(url.href) ? url.href : undefined;
}

async function answer(request, address) {
  const cache = await caches.open(CACHE);
  // Whatever the host varies by, there is one copy of each file.
  return (await cache.match(address, { ignoreVary: true })) ?? fetch(request);
}

self.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  const address = keptAddress(event.request);
  if (address) event.respondWith(answer(event.request, address));
});
