/**
 * The report view: a whole report of a code reader, pasted, becomes a list of codes with their status in words, what they
 * mean here and which faults set them. What was pasted stays in the address of the page and goes nowhere else.
 */
(function () {
  "use strict";

  /** @typedef {import('./codes-trail.js').Find} Find */

  const form = /** @type {HTMLFormElement} */ (document.getElementById("_report"));
  const box = /** @type {HTMLTextAreaElement} */ (document.getElementById("_report-text"));
  const result = /** @type {HTMLElement} */ (document.getElementById("_report-result"));
  const found = /** @type {HTMLElement} */ (document.getElementById("_report-found"));
  const status = /** @type {HTMLElement} */ (document.getElementById("_report-status"));

  const words = () => GuideGen.data.site.words;
  /** @param {string} wording @param {...(string | number)} values */
  const fill = (wording, ...values) => wording.replace(/\{(\d)\}/g, (_, i) => String(values[i]));

  /** @param {string} tag @param {...(string | Node)} content */
  function element(tag, ...content) {
    const made = document.createElement(tag);
    made.append(...content);
    return made;
  }

  /** @param {string | null} href @param {...(string | Node)} content */
  function link(href, ...content) {
    if (href === null) return element("span", ...content);
    const a = /** @type {HTMLAnchorElement} */ (element("a", ...content));
    a.href = GuideGen.base + href;
    return a;
  }

  /** What the reader said of the code, in words an owner understands. @param {Find} find @returns {string} */
  function statusOf(find) {
    const byte = find.status === undefined ? 0 : parseInt(find.status, 16);
    const bits = words().statusBits;
    const first = [0, 3, 2, 4, 5, 6].find(bit => byte & (1 << bit));
    return [...(first === undefined ? [] : [bits[first]]), ...find.words.map(word => words().status[word])].join("; ");
  }

  /** @param {{ name: string, href: string, likelihood: string }[]} faults */
  function causes(faults) {
    if (faults.length === 0) return [element("p", words().noFaults)];
    return [element("p", words().causes), element("ul", ...faults.map(f => element("li", link(f.href, f.name), ", " + f.likelihood)))];
  }

  /** @param {Find} find @param {string | null} meaning */
  function item(find, meaning) {
    const code = element("code", find.code + (find.failureType ? "-" + find.failureType : ""));
    const certainty = words().certainty[find.certainty];
    const stands = statusOf(find);
    return element("li",
      element("h3", link(GuideGen.look.hrefOf(find.code), code), " " + (meaning ?? words().noMeaning)),
      ...(certainty ? [element("p", fill(certainty, find.code) + " “" + find.written + "”")] : []),
      ...(find.module ? [element("p", fill(words().module, find.module))] : []),
      ...(stands ? [element("p", fill(words().stands, stands))] : []),
      ...causes(GuideGen.look.own(find.code)?.faults ?? []));
  }

  /** The way to weighing the causes takes every code of the report along. @param {string[]} codes */
  function offerWeighing(codes) {
    const offer = /** @type {HTMLElement} */ (document.getElementById("_report-weigh"));
    offer.hidden = codes.length === 0;
    /** @type {HTMLAnchorElement} */ (offer.firstElementChild).href = "weigh.html#w1;c=" + codes.join(".");
  }

  async function read() {
    const text = box.value;
    history.replaceState(null, "", text.trim() === "" ? location.pathname : "#text=" + encodeURIComponent(text));
    await GuideGen.loadCodes();
    const { finds, answers } = GuideGen.codes.readPage(text, "freeText");
    const meanings = await Promise.all(finds.map((/** @type {Find} */ f) => GuideGen.look.meaningOf(f.code)));
    result.replaceChildren(...finds.map((/** @type {Find} */ f, /** @type {number} */ i) => item(f, meanings[i])));
    found.hidden = finds.length === 0;
    offerWeighing([...new Set(finds.map((/** @type {Find} */ f) => f.code))]);
    const nothing = answers.length > 0 ? words().emptyAnswer : words().noCodes;
    status.textContent = text.trim() === "" ? "" : finds.length > 0 ? fill(words().codesFound, finds.length) : nothing;
  }

  const run = () => { read().catch(() => { status.textContent = form.dataset.failed || ""; }); };

  form.addEventListener("submit", event => { event.preventDefault(); run(); });
  form.hidden = false;
  const given = /^#text=(.*)$/.exec(location.hash);
  if (given) {
    try {
      box.value = decodeURIComponent(given[1]);
    } catch {
      box.value = "";
    }
    run();
  }
}());
