// Keeps the built page on the device, so that it opens without a network. What a version consists of
// is fetched once, when it is installed; a newer version waits until the reader asks for it or no tab
// shows the old one any more. Built by itself, to sw.js beside the page; it imports nothing.

/** The version of the page and its files, filled in when the page is built. */
declare const PAGE_VERSION: string;
declare const PAGE_FILES: readonly string[];

/** As much of a service worker's own scope as is used here. */
interface Extendable extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Extendable {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface WorkerScope {
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
  addEventListener(type: 'install' | 'activate', act: (event: Extendable) => void): void;
  addEventListener(type: 'fetch', act: (event: Fetching) => void): void;
  addEventListener(type: 'message', act: (event: MessageEvent) => void): void;
}
/** Servers may say that a file varies with headers of the request; the files of a build do not. */
const SAME = { ignoreVary: true };
const scope = globalThis as unknown as WorkerScope;

const PREFIX = 'dropcurve-page-';
const CURRENT = PREFIX + PAGE_VERSION;
/** What the page says when the reader wants the new version. */
const USE = 'use this version';

scope.addEventListener('install', (event) => event.waitUntil(fetchAll()));
scope.addEventListener('activate', (event) => event.waitUntil(tidyUp()));
scope.addEventListener('message', ({ data }) => {
  if (data === USE) void scope.skipWaiting();
});
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const isOwn = new URL(request.url).origin === location.origin;
  if (request.method === 'GET' && isOwn) event.respondWith(answer(request));
});

/** All or nothing: a version that can't be fetched whole is not installed. */
async function fetchAll(): Promise<void> {
  const cache = await caches.open(CURRENT);
  await cache.addAll(PAGE_FILES.map((file) => new Request(file, { cache: 'reload' })));
}

/** The version before stays, for tabs that still show it and have not loaded all its parts. */
async function tidyUp(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX));
  const older = names.filter((name) => name !== CURRENT).slice(0, -1);
  await Promise.all(older.map((name) => caches.delete(name)));
  await scope.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CURRENT);
  const kept =
    request.mode === 'navigate' && isPage(request)
      ? await cache.match('./', SAME)
      : ((await cache.match(request, SAME)) ?? (await caches.match(request, SAME)));
  return kept ?? fetch(request);
}

/** Only the page itself: other files of the place may be opened too, such as the page in one file. */
function isPage({ url }: Request): boolean {
  const { pathname } = new URL(url);
  return pathname.endsWith('/') || pathname.endsWith('/index.html');
}
