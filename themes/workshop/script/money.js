/** Own work against a workshop with the owner's own numbers, on the page of a fault. */
(function () {
  "use strict";

  const form = /** @type {HTMLFormElement | null} */ (document.querySelector(".money-form"));
  if (!form) return;
  const said = /** @type {HTMLElement} */ (form.querySelector(".money-said"));
  const costs = JSON.parse(/** @type {string} */ (form.dataset.costs));

  /** @param {string} wording @param {...(string | number)} values */
  const fill = (wording, ...values) => wording.replace(/\{(\d)\}/g, (_, i) => String(values[i]));

  /** A field as a number of 0 or more; null for anything else. @param {string} name */
  function field(name) {
    const text = /** @type {HTMLInputElement} */ (form.elements.namedItem(name)).value.trim().replace(",", ".");
    return /^\d+(\.\d+)?$/.test(text) ? Number(text) : null;
  }

  /** @param {{ low: number, high: number }} range */
  function range({ low, high }) {
    const words = GuideGen.data.site.words.money;
    return Math.round(low) === Math.round(high) ? `${Math.round(low)} ${costs.currency}` : fill(words.range, Math.round(low), Math.round(high), costs.currency);
  }

  /** @param {number | null} value */
  function hourWords(value) {
    const words = GuideGen.data.site.words.money;
    if (value === null) return words.hourNone;
    return value <= 0 ? words.hourNever : fill(words.hour, Math.round(value), costs.currency);
  }

  /** @param {number | null} chance */
  function chanceWords(chance) {
    const words = GuideGen.data.site.words.money;
    if (chance === null || chance > 1) return words.chanceNever;
    return chance <= 0 ? words.chanceAlways : fill(words.chance, Math.ceil(chance * 10));
  }

  async function run() {
    await GuideGen.load("assets/repair-choice.js");
    await GuideGen.load("data/site.js");
    const words = GuideGen.data.site.words.money;
    const names = ["hourValue", "chance", "ownHours", "rate", "diagnosisHours", "transportHours", "markup", "tax", "toolShare"];
    const [hourValue, chance, ownHours, workshopRate, diagnosisHours, transportHours, markup, tax, toolShare] = names.map(field);
    if ([hourValue, chance, ownHours, workshopRate, diagnosisHours, transportHours, markup, tax, toolShare].includes(null) || /** @type {number} */ (chance) > 100) {
      said.textContent = words.number;
      return;
    }
    const found = GuideGen.repairChoice.choose({
      ...costs, toolShare, ownHours, workshopRate, diagnosisHours, transportHours,
      chanceOfCure: /** @type {number} */ (chance) / 100, partsMarkup: /** @type {number} */ (markup) / 100, tax: /** @type {number} */ (tax) / 100,
    }, hourValue);
    const lines = [fill(words.sums, range(found.own), range(found.workshop)), hourWords(found.breakEvenHourValue), chanceWords(found.breakEvenChance)];
    said.replaceChildren(...lines.map(line => {
      const p = document.createElement("p");
      p.textContent = line;
      return p;
    }));
  }

  const judge = () => { run().catch(() => { said.textContent = form.dataset.failed || ""; }); };
  form.addEventListener("input", judge);
  form.addEventListener("submit", event => { event.preventDefault(); judge(); });
  form.hidden = false;
}());
