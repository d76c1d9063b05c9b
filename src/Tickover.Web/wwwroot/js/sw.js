// @ts-check
/**
 * Service worker: the app's files and the pages last seen, for when the server is away. Served at /sw.js with the version of the
 * files and their list put in below. Entries are none of its business: they are kept and sent by the pages.
 */

/** @typedef {{ waitUntil(work: Promise<unknown>): void }} LateEvent */
/** @typedef {LateEvent & { request: Request, respondWith(answer: Promise<Response>): void }} FetchEvent */

const version = "{version}";
const files = "{files}".split(" ");
const filesCache = `tickover-files-${version}`;
const pagesCache = "tickover-pages";
const answerWithinMs = 3_000;
const mostPages = 60;
/** When a page was put by, kept with it. */
const asOf = "X-Tickover-As-Of";
/** Nothing under these is kept: answers for programs, letting devices in, and what signs or leads in. */
const neverKept = /^\/(api|pair|tablets|sw\.js|manifest\.webmanifest)(\/|$)/;

const worker = /** @type {{ skipWaiting(): Promise<void>, clients: { claim(): Promise<void> } }} */ (/** @type {unknown} */ (self));
const on = (/** @type {string} */ name, /** @type {(event: any) => void} */ work) => self.addEventListener(name, work);

on("install", (/** @type {LateEvent} */ event) => {
  event.waitUntil(caches.open(filesCache).then((cache) => cache.addAll(files)).then(() => worker.skipWaiting()));
});

on("activate", (/** @type {LateEvent} */ event) => {
  event.waitUntil(dropOldFiles().then(() => worker.clients.claim()));
});

on("message", (/** @type {MessageEvent & LateEvent} */ event) => {
  if (event.data === "forget") {
    event.waitUntil(caches.delete(pagesCache));
  }
});

on("fetch", (/** @type {FetchEvent} */ event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== location.origin) {
    return;
  }
  if (address.pathname.startsWith("/assets/")) {
    event.respondWith(file(request, address));
  } else if (isPage(request) && !neverKept.test(address.pathname)) {
    event.respondWith(page(request, event));
  }
});

async function dropOldFiles() {
  for (const name of await caches.keys()) {
    if (name.startsWith("tickover-files-") && name !== filesCache) {
      await caches.delete(name);
    }
  }
}

/** @param {Request} request */
function isPage(request) {
  const wants = request.headers.get("Accept") ?? "";
  return !request.headers.has("X-Tickover-Fragment") && (request.mode === "navigate" || wants.startsWith("text/html"));
}

/**
 * A page put by under an older version still finds its files: those of today stand in.
 * @param {Request} request
 * @param {URL} address
 */
async function file(request, address) {
  const cache = await caches.open(filesCache);
  const today = address.pathname.replace(/^\/assets\/[^/]+\//, `/assets/${version}/`);
  return (await cache.match(address.pathname === today ? request : today)) ?? fetch(request);
}

/**
 * The server first; after three seconds without an answer, or without any, the page as it was last seen.
 * @param {Request} request
 * @param {LateEvent} event
 * @returns {Promise<Response>}
 */
async function page(request, event) {
  const fresh = fetch(request).then((answer) => {
    event.waitUntil(putBy(request, answer.clone()));
    return answer;
  });
  const late = new Promise((resolve) => setTimeout(() => resolve(null), answerWithinMs));
  try {
    const answer = /** @type {Response | null} */ (await Promise.race([fresh, late]));
    return answer ?? (await lastSeen(request)) ?? (await fresh);
  } catch (fault) {
    const seen = await lastSeen(request);
    if (seen) {
      return seen;
    }
    throw fault;
  }
}

/** @param {Request} request @param {Response} answer */
async function putBy(request, answer) {
  if (answer.status === 401) {
    await caches.delete(pagesCache);
    return;
  }
  if (!answer.ok || answer.redirected || !(answer.headers.get("Content-Type") ?? "").startsWith("text/html")) {
    return;
  }
  const headers = new Headers({ "Content-Type": "text/html; charset=utf-8", [asOf]: new Date().toISOString() });
  // The policy of the page belongs to it wherever it comes from.
  for (const name of ["Content-Security-Policy", "X-Content-Type-Options", "Referrer-Policy", "Cross-Origin-Opener-Policy"]) {
    const value = answer.headers.get(name);
    if (value !== null) {
      headers.set(name, value);
    }
  }
  const cache = await caches.open(pagesCache);
  const html = await answer.text();
  await cache.delete(request.url);
  await cache.put(request.url, new Response(html, { headers }));
  const kept = await cache.keys();
  await Promise.all(kept.slice(0, Math.max(0, kept.length - mostPages)).map((old) => cache.delete(old)));
}

/** @param {Request} request */
async function lastSeen(request) {
  const cache = await caches.open(pagesCache);
  // The pedal of a linkage may have been moved since, a sketch drawn on; those pages can follow their address themselves.
  const path = new URL(request.url).pathname;
  const moved = path.startsWith("/linkages/") || path.endsWith("/outline");
  const seen = (await cache.match(request.url, { ignoreVary: true })) ?? (moved ? await cache.match(request.url, { ignoreVary: true, ignoreSearch: true }) : undefined);
  if (!seen) {
    return null;
  }
  const html = (await seen.text()).replace("<html", `<html data-as-of="${seen.headers.get(asOf)}"`);
  return new Response(html, { headers: seen.headers });
}
