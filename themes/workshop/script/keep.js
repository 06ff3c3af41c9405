/**
 * The service worker: keeps every file of one version of the guide and serves it from there. GUIDE is written in front of
 * this file by the compile: its version, a hash over all files, and each file with its own hash.
 *
 * @typedef {{ version: string, essentials: string[], files: Record<string, string> }} Guide
 */
(function (self) {
  "use strict";

  const PREFIX = "guide-";
  const NAME = PREFIX + GUIDE.version;
  const base = new URL("./", self.location.href).href;

  /** A path may have signs that mean something else in an address. @param {string} path */
  const addressOf = path => base + path.split("/").map(encodeURIComponent).join("/");

  /** @param {object} message */
  async function tell(message) {
    for (const client of await self.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
  }

  /** An unchanged file is taken from the version before; its hash travels with it. @param {string} path @param {Cache[]} before */
  async function bring(path, before) {
    for (const cache of before) {
      const kept = await cache.match(addressOf(path));
      if (kept?.headers.get("x-hash") === GUIDE.files[path]) return kept;
    }
    const answer = await fetch(addressOf(path), { cache: "no-cache" });
    if (!answer.ok) throw new Error(path + ": " + answer.status);
    const headers = new Headers(answer.headers);
    headers.set("x-hash", GUIDE.files[path]);
    return new Response(await answer.blob(), { headers, status: 200 });
  }

  /** Essentials first: if the device has no room for the rest, they stay. */
  async function keepAll() {
    const names = (await caches.keys()).filter(name => name.startsWith(PREFIX) && name !== NAME);
    const before = await Promise.all(names.map(name => caches.open(name)));
    const cache = await caches.open(NAME);
    const rest = Object.keys(GUIDE.files).filter(path => !GUIDE.essentials.includes(path));
    const all = [...GUIDE.essentials, ...rest];
    for (let i = 0; i < all.length; i++) {
      try {
        await cache.put(addressOf(all[i]), await bring(all[i], before));
      } catch (fault) {
        if (i < GUIDE.essentials.length || /** @type {Error} */ (fault).name !== "QuotaExceededError") {
          await tell({ kind: "failed" });
          throw fault;
        }
        return tell({ kind: "full" });
      }
      if (i % 20 === 19) await tell({ kind: "progress", percent: Math.floor(100 * (i + 1) / all.length) });
    }
    return tell({ kind: "kept" });
  }

  async function forgetOld() {
    const names = await caches.keys();
    await Promise.all(names.filter(name => name.startsWith(PREFIX) && name !== NAME).map(name => caches.delete(name)));
  }

  /** @param {Request} request */
  async function answer(request) {
    const url = new URL(request.url);
    const path = decodeURIComponent(url.href.slice(base.length).replace(/[?#].*/, ""));
    const page = path === "" || path.endsWith("/") ? path + "index.html" : path;
    const cache = await caches.open(NAME);
    return await cache.match(addressOf(page)) ?? fetch(request).catch(async () => await cache.match(addressOf("404.html")) ?? Response.error());
  }

  self.addEventListener("install", event => event.waitUntil(keepAll()));
  self.addEventListener("activate", event => event.waitUntil(forgetOld().then(() => self.clients.claim())));
  self.addEventListener("message", event => { if (event.data.kind === "take-over") self.skipWaiting(); });
  self.addEventListener("fetch", event => {
    if (event.request.method === "GET" && event.request.url.startsWith(base)) event.respondWith(answer(event.request));
  });
}(self));
