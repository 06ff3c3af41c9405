/**
 * The code box on the home page: finds a code of this guide, however loosely it is typed.
 * Needs codes.js (reads codes) and data/codes.js (the codes of this guide); without script the list of all codes serves.
 */
(function () {
  "use strict";

  /** @typedef {{ code: string, meaning: string, href: string }} GuideCode */

  const form = /** @type {HTMLFormElement} */ (document.getElementById("code-form"));
  const box = /** @type {HTMLInputElement} */ (document.getElementById("code-box"));
  const answer = /** @type {HTMLElement} */ (document.getElementById("code-answer"));
  /** @type {Map<string, GuideCode>} */
  const known = new Map(GuideGen.data.codes.map((/** @type {GuideCode} */ c) => [c.code, c]));

  /**
   * The codes of this guide that a text may mean, surest first.
   * @param {string} text
   * @returns {{ entry: GuideCode, isExact: boolean }[]}
   */
  function find(text) {
    const isKnown = (/** @type {string} */ code) => known.has(code);
    const read = GuideGen.codes.read(text, "lookUpBox").map((/** @type {{ code: string }} */ f) => f.code);
    const meant = read.some(isKnown) ? read : GuideGen.codes.suggest(text, isKnown);
    return [...new Set(meant)].filter(isKnown).slice(0, 5).map((code) => ({
      entry: /** @type {GuideCode} */ (known.get(code)),
      isExact: text.trim().toUpperCase() === code,
    }));
  }

  /**
   * @param {{ entry: GuideCode, isExact: boolean }} found
   * @returns {HTMLAnchorElement}
   */
  function link({ entry, isExact }) {
    const a = document.createElement("a");
    a.className = "answer";
    a.href = entry.href;
    const name = document.createElement("strong");
    name.textContent = entry.code;
    a.append(name, " " + entry.meaning);
    if (!isExact) a.append(" (" + form.dataset.readAs + " " + entry.code + ")");
    return a;
  }

  function show() {
    const text = box.value;
    const found = text.trim().length < 4 ? [] : find(text);
    answer.replaceChildren(...found.map(link));
    if (found.length === 0 && text.trim().length >= 5) {
      answer.textContent = (form.dataset.none || "").replace("{0}", text.trim());
    }
  }

  box.addEventListener("input", show);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    show();
    const first = answer.querySelector("a");
    if (first) location.href = first.href;
  });
  form.hidden = false;
}());
