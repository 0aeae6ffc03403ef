/// <reference lib="webworker" />
// Keeps the app itself on the phone, so that it opens with no signal. It never touches the API: what the
// API said is kept by the page, in a database that knows whose it is.

declare const self: ServiceWorkerGlobalScope;

// Filled in by the build.
const VERSION = '__PRECACHE_VERSION__';
const FILES: string[] = JSON.parse('__PRECACHE_FILES__');

const PREFIX = 'app-';
const CACHE = PREFIX + VERSION;

async function install(): Promise<void> {
  const cache = await caches.open(CACHE);
  const earlier = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(
    FILES.map(async (file) => {
      // A hashed name never changes its contents: take the copy an older version left behind.
      if (file.startsWith('/assets/')) {
        for (const name of earlier) {
          const kept = await (await caches.open(name)).match(file);
          if (kept) return cache.put(file, kept);
        }
      }
      const response = await fetch(new Request(file, { cache: 'reload' }));
      if (!response.ok) throw new Error(`${file}: ${response.status}`);
      return cache.put(file, response);
    }),
  );
  await self.skipWaiting();
}

async function activate(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  // The newest old cache stays for pages that are still open on it.
  await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const url = new URL(request.url);
  const name = request.mode === 'navigate' ? '/' : url.pathname;
  const kept = (await (await caches.open(CACHE)).match(name)) ?? (await caches.match(name));
  return kept ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
  if (url.pathname.startsWith('/api/')) return;
  event.respondWith(answer(event.request));
});

export {};
