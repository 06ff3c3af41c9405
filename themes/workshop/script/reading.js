/** The entry field of every reading on a page: judges as it is typed, and marks the value on the curve if there is one. */
(function () {
  "use strict";

  const forms = /** @type {HTMLFormElement[]} */ ([...document.querySelectorAll("form.judge")]);
  /** @type {Promise<void> | null} */
  let tools = null;

  async function bring() {
    for (const script of ["assets/readings.js", "assets/reading-judge.js", "data/site.js"]) await GuideGen.load(script);
  }

  const ready = () => tools ??= bring().catch(fault => { tools = null; throw fault; });

  /** @param {number} value three digits, or all before the point */
  const rounded = value => Number(Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3)).toLocaleString(document.documentElement.lang, { useGrouping: false, maximumFractionDigits: 12 });

  /** @param {string} wording @param {...string} values */
  const fill = (wording, ...values) => wording.replace(/\{(\d)\}/g, (_, i) => values[i]);

  /** @param {{ low: number | null, high: number | null }} limits @param {string} symbol */
  function limitsInWords({ low, high }, symbol) {
    const words = GuideGen.data.site.words.reading;
    if (low === null) return fill(words.to, rounded(/** @type {number} */ (high)), symbol);
    return high === null ? fill(words.from, rounded(low), symbol) : fill(words.range, rounded(low), rounded(high), symbol);
  }

  /** Shows where the value lies on the curve; outside the picture there is no mark. @param {HTMLFormElement} form @param {any} reading @param {any} found */
  function mark(form, reading, found) {
    const circle = form.parentElement?.querySelector(".curve-mark");
    if (!circle) return;
    const { keys, values, logarithmic } = reading.over;
    /** @param {{ from: number, to: number, start: number, end: number }} axis @param {number} number */
    const place = (axis, number) => axis.start + (number - axis.from) / (axis.to - axis.from) * (axis.end - axis.start);
    const height = found.value === undefined ? NaN : logarithmic ? Math.log(found.value) : found.value;
    const [x, y] = [place(keys, found.key), Math.min(Math.max(place(values, height), values.end), values.start)];
    const isThere = Number.isFinite(x) && Number.isFinite(y) && x >= keys.start && x <= keys.end;
    circle.setAttribute("visibility", isThere ? "visible" : "hidden");
    if (isThere) {
      circle.setAttribute("cx", x.toFixed(1));
      circle.setAttribute("cy", y.toFixed(1));
    }
  }

  /** @param {HTMLFormElement} form */
  async function judge(form) {
    await ready();
    const reading = JSON.parse(/** @type {string} */ (form.dataset.reading));
    const entered = Object.fromEntries([...new FormData(form)]);
    const verdict = /** @type {HTMLElement} */ (form.querySelector(".verdict"));
    const air = /** @type {HTMLElement | null} */ (form.querySelector(".judge-air"));
    if (air) air.hidden = entered.shows === reading.scale;
    const found = GuideGen.readingJudge.judge(reading, entered);
    const words = GuideGen.data.site.words.reading;
    const unit = /** @type {HTMLSelectElement} */ (form.elements.namedItem("unit"));
    const symbol = [...unit.options].find(o => o.value === reading.unit)?.text ?? "";
    const isEmpty = String(entered.value).trim() === "";
    const limits = found.limits ? " " + fill(words.limits, limitsInWords(found.limits, symbol), rounded(found.uncertainty) + " " + symbol) : "";
    verdict.className = "verdict verdict-" + (isEmpty ? "none" : found.verdict);
    verdict.textContent = isEmpty ? "" : words[found.verdict] + limits;
    mark(form, reading, isEmpty ? {} : found);
  }

  for (const form of forms) {
    const run = () => { judge(form).catch(() => { /** @type {HTMLElement} */ (form.querySelector(".verdict")).textContent = form.dataset.failed || ""; }); };
    form.addEventListener("input", run);
    form.addEventListener("submit", event => { event.preventDefault(); run(); });
    form.hidden = false;
  }
}());
