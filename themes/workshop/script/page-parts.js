/** What scripts that draw on a page share: elements, links to anywhere in the site, and the theme's words. */
(function (root) {
  "use strict";

  const GuideGen = root.GuideGen = root.GuideGen || {};

  /** @param {string} tag @param {...(string | Node)} content @returns {HTMLElement} */
  function element(tag, ...content) {
    const made = document.createElement(tag);
    made.append(...content);
    return made;
  }

  /** @param {string} tag @param {string} name of a class @param {...(string | Node)} content @returns {HTMLElement} */
  function classed(tag, name, ...content) {
    const made = element(tag, ...content);
    made.className = name;
    return made;
  }

  /** @param {string | null} href relative to the site's root; null for no page @param {...(string | Node)} content */
  function link(href, ...content) {
    if (href === null) return element("span", ...content);
    const a = /** @type {HTMLAnchorElement} */ (element("a", ...content));
    a.href = GuideGen.base + href;
    return a;
  }

  /** @param {string} label @param {() => void} press @returns {HTMLButtonElement} */
  function button(label, press) {
    const made = /** @type {HTMLButtonElement} */ (classed("button", "button", label));
    made.type = "button";
    made.addEventListener("click", press);
    return made;
  }

  /** @param {string} wording with numbered places @param {...(string | number)} values */
  const fill = (wording, ...values) => wording.replace(/\{(\d)\}/g, (_, i) => String(values[i]));

  /** @param {string} id @returns {HTMLElement} */
  const byId = id => /** @type {HTMLElement} */ (document.getElementById(id));

  GuideGen.parts = { element, classed, link, button, fill, byId };
}(globalThis));
