/// <reference lib="webworker" />
// Keeps the app itself on the phone, so that it opens with no signal, and sends what waits when the browser finds
// signal. Reads of the API it never touches: what the API said is kept by the page, in a database that knows whose
// it is.

import { getSetting, setSetting } from '../storage/database.ts';
import { OUTBOX } from '../storage/sending.ts';
import { sendInBackground } from './background.ts';

declare const self: ServiceWorkerGlobalScope;

/** Background Sync, which the library of types does not know yet. */
interface SyncEvent extends ExtendableEvent {
  readonly tag: string;
}

// Filled in by the build.
const VERSION = '__PRECACHE_VERSION__';
const FILES: string[] = JSON.parse('__PRECACHE_FILES__');

const PREFIX = 'app-';
const CACHE = PREFIX + VERSION;
/** Pages that were open when this version took over: they still ask for files of the one before. */
const OLD_PAGES = 'old_pages';

/** Fetches this version beside the one in use. It waits for a person's word before it takes over. */
async function install(): Promise<void> {
  const cache = await caches.open(CACHE);
  const earlier = await earlierCaches();
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
}

/** The caches of other versions: those before this one, and perhaps one to come. */
async function earlierCaches(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
}

async function pages(): Promise<string[]> {
  const open = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  return open.map((one) => one.id);
}

async function activate(): Promise<void> {
  await setSetting(OLD_PAGES, await pages());
  await dropOldCaches();
  await self.clients.claim();
}

/** Lets go of earlier versions once every page that was open on one is closed or loaded anew. */
async function dropOldCaches(): Promise<void> {
  const earlier = await earlierCaches();
  // A version that is on its way or waits for its tap has its files in one of these already.
  const { installing, waiting } = self.registration;
  if (earlier.length === 0 || installing || waiting) return;
  const [old, open] = [(await getSetting<string[]>(OLD_PAGES)) ?? [], await pages()];
  if (old.some((id) => open.includes(id))) return;
  await Promise.all(earlier.map((name) => caches.delete(name)));
}

async function answer(request: Request): Promise<Response> {
  const url = new URL(request.url);
  const name = request.mode === 'navigate' ? '/' : url.pathname;
  const kept = (await (await caches.open(CACHE)).match(name)) ?? (await caches.match(name));
  return kept ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
self.addEventListener('message', (event) => {
  if (event.data === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
  // A page that has just started: the one it replaced may have been the last of an earlier version.
  if (event.data === 'STARTED') event.waitUntil(dropOldCaches());
});
self.addEventListener('sync', (event) => {
  const sync = event as unknown as SyncEvent;
  if (sync.tag === OUTBOX) sync.waitUntil(sendInBackground());
});
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
  if (url.pathname.startsWith('/api/')) return;
  event.respondWith(answer(event.request));
});
