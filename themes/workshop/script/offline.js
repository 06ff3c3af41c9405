/**
 * Keeps the whole guide on the device, where a host serves it: a service worker brings every file once, tells how far it
 * is, and offers a newer guide without forcing it. From a file nothing of this is needed and nothing of it runs.
 */
(function () {
  "use strict";

  const line = document.getElementById("_offline");
  if (!line || !("serviceWorker" in navigator) || !/^https?:$/.test(location.protocol)) return;
  const words = /** @type {Record<string, string>} */ (/** @type {unknown} */ (line.dataset));
  const text = /** @type {HTMLElement} */ (line.querySelector("[role=status]"));
  const take = /** @type {HTMLButtonElement} */ (line.querySelector("button"));
  let isAsked = false;

  /** @param {string} wording @param {string | number} [value] */
  function tell(wording, value) {
    line.hidden = false;
    text.textContent = wording.replace("{0}", String(value));
  }

  /** @param {ServiceWorkerRegistration} registration */
  function offer(registration) {
    if (!registration.waiting || !navigator.serviceWorker.controller) return;
    tell(words.newer);
    take.hidden = false;
  }

  /** The browser may bring the news of a finished saving after the offer it leads to: an offer made stays. @param {MessageEvent<{ kind: string, percent?: number }>} event */
  function hear(event) {
    if (!take.hidden) return;
    if (event.data.kind === "progress") tell(words.saving, event.data.percent);
    if (event.data.kind === "kept") tell(words.kept);
    if (event.data.kind === "full") tell(words.full);
    if (event.data.kind === "failed") tell(words.failed);
  }

  navigator.serviceWorker.addEventListener("message", hear);
  navigator.serviceWorker.addEventListener("controllerchange", () => { if (isAsked) location.reload(); });
  navigator.serviceWorker.register(GuideGen.base + words.root + "keep.js").then(registration => {
    take.addEventListener("click", () => { isAsked = true; registration.waiting?.postMessage({ kind: "take-over" }); });
    registration.addEventListener("updatefound", () => {
      registration.installing?.addEventListener("statechange", () => offer(registration));
    });
    offer(registration);
  }).catch(() => tell(words.failed));
}());
