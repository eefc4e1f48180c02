// worker.js keeps one whole version of the site on the device and serves it from
// there. A version is taken in completely or not at all, and it takes over only
// when the reader says so or when no page of the old one is open.
"use strict";
const VERSION = {{.Version}};
const BASE = {{.Base}};
// Address and SHA-256 of every file. Names that carry a fingerprint never
// change their content.
const FILES = {{.Files}};
const NOT_FOUND = {{.NotFound}};

// The prefix holds the folder, so that neighbours on the same origin, even
// another copy of this site, keep their own caches.
const PREFIX = `film-furrow ${BASE}/ `;
const CURRENT = PREFIX + VERSION;

const fingerprinted = (path) => path.startsWith(BASE + "/assets/");

const ownCaches = async () => (await caches.keys()).filter((name) => name.startsWith(PREFIX));

// take fetches one file and lets it pass only if its bytes are those that were
// published: an error page, a cut reply or a file of another version is refused.
async function take(path) {
  const order = fingerprinted(path) ? ["default", "reload"] : ["reload"];
  for (const cache of order) {
    try {
      const reply = await fetch(new Request(path, { cache, integrity: FILES[path], credentials: "same-origin" }));
      if (reply.ok) return reply.redirected ? new Response(reply.body, { headers: reply.headers }) : reply;
    } catch {
      // tried again past the browser's own cache, then given up below
    }
  }
  throw new Error(`film-furrow: could not take in ${path}`);
}

async function takeIn() {
  const cache = await caches.open(CURRENT);
  const older = await Promise.all((await ownCaches()).filter((name) => name !== CURRENT).map((name) => caches.open(name)));
  const fill = async (path) => {
    if (await cache.match(path)) return; // left by an earlier try, checked then
    if (fingerprinted(path)) {
      for (const old of older) {
        const kept = await old.match(path);
        if (kept) return cache.put(path, kept);
      }
    }
    await cache.put(path, await take(path));
  };
  const results = await Promise.allSettled(Object.keys(FILES).map(fill));
  const broken = results.find((result) => result.status === "rejected");
  if (broken) {
    await caches.delete(CURRENT);
    throw broken.reason;
  }
}

self.addEventListener("install", (event) => event.waitUntil(takeIn()));

self.addEventListener("activate", (event) => event.waitUntil((async () => {
  for (const name of await ownCaches()) if (name !== CURRENT) await caches.delete(name);
  await self.clients.claim();
})()));

// answer gives the kept file, mends a gap from the network, and without a
// network says so in a page rather than leave the browser's error.
async function answer(request) {
  const url = new URL(request.url);
  const page = request.mode === "navigate";
  let path = url.pathname;
  if (page) path = path.replace(/\/index\.html$/, "/").replace(/\.html$/, "");
  if (path === BASE) path = BASE + "/";
  const cache = await caches.open(CURRENT);
  if (path in FILES) {
    const kept = await cache.match(path);
    if (kept) return kept;
    try {
      const reply = await take(path);
      await cache.put(path, reply.clone());
      return reply;
    } catch {
      return fetch(request);
    }
  }
  try {
    return await fetch(request);
  } catch (err) {
    if (!page) throw err;
    const kept = await cache.match(NOT_FOUND);
    if (!kept) throw err;
    return new Response(kept.body, { status: 404, headers: kept.headers });
  }
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (url.pathname !== BASE && !url.pathname.startsWith(BASE + "/")) return;
  event.respondWith(answer(request));
});

async function missing() {
  const cache = await caches.open(CURRENT);
  const gaps = [];
  for (const path of Object.keys(FILES)) {
    if (await cache.match(path)) continue;
    try {
      await cache.put(path, await take(path));
    } catch {
      gaps.push(path);
    }
  }
  return gaps;
}

self.addEventListener("message", (event) => {
  switch (event.data?.ask) {
    case "take over":
      self.skipWaiting();
      break;
    case "complete":
      event.waitUntil(missing().then((gaps) => event.ports[0].postMessage({ version: VERSION, missing: gaps })));
      break;
  }
});
