/** The questions of the page that weighs causes: what is ticked, chosen and typed, to and from the state. */
(function (root) {
  "use strict";

  /** @typedef {import('./weigh-address.js').State} State */

  const GuideGen = root.GuideGen;
  const { element, classed, link, byId } = GuideGen.parts;
  const ANSWERS = /** @type {Object<string, boolean | undefined>} */ ({ present: true, absent: false });

  const form = /** @type {HTMLFormElement} */ (byId("_weigh"));
  const codes = byId("_weigh-codes");
  const box = /** @type {HTMLInputElement} */ (byId("_weigh-code"));
  /** @param {string} name */
  const all = name => /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll(`input[data-ask="${name}"]`)]);
  const words = () => GuideGen.data.site.words.weigh;

  /** @returns {State["findings"]} what the rows of three answers say */
  function findings() {
    const chosen = all("finding").filter(input => input.checked && input.value in ANSWERS);
    return Object.fromEntries(chosen.map(input => [input.name, /** @type {boolean} */ (ANSWERS[input.value])]));
  }

  /** @param {string} name @returns {string[]} slugs of the ticked boxes */
  const ticked = name => all(name).filter(input => input.checked).map(input => input.value);

  /** @param {State["outcomes"]} outcomes these are not asked in the form @returns {State} */
  const read = outcomes => ({
    variant: ticked("variant")[0] || null,
    findings: findings(),
    allRead: ticked("all-read").length > 0,
    outcomes,
    missing: all("tool").filter(input => !input.checked).map(input => input.value),
    prepared: ticked("setup"),
  });

  /** One code with its three answers, the first chosen. @param {string} code @param {boolean} present */
  async function codeRow(code, present) {
    const row = classed("fieldset", "triple");
    const legend = element("legend", link(GuideGen.look.hrefOf(code), element("code", code)));
    const choices = [["present", words().there], ["absent", words().notThere], ["unknown", words().forget]].map(([value, label]) => {
      const input = /** @type {HTMLInputElement} */ (document.createElement("input"));
      Object.assign(input, { type: "radio", name: code, value, checked: value === (present ? "present" : "absent") });
      input.dataset.ask = "finding";
      if (value === "unknown") input.addEventListener("change", () => { row.remove(); box.focus(); });
      return element("label", input, element("span", label));
    });
    row.append(legend, ...choices);
    codes.append(row);
    const meaning = await GuideGen.look.meaningOf(code);
    legend.append(" " + (meaning ?? GuideGen.data.site.words.noMeaning));
    if (!GuideGen.weighData.model.findings.some((/** @type {{ id: string }} */ f) => f.id === code)) legend.append(" ", classed("span", "quiet", words().notWeighed));
  }

  /** Puts codes on the list that are not on it yet. @param {string[]} found @param {boolean} [present] */
  const add = (found, present = true) => Promise.all(found
    .filter(code => !all("finding").some(input => input.name === code))
    .map(code => codeRow(code, present)));

  /** Reads what was typed or pasted, by the same reader as everywhere. @returns {string[]} the codes it has */
  function take() {
    const text = box.value;
    const read = GuideGen.codes.readPage(text, "freeText").finds.map((/** @type {{ code: string }} */ f) => f.code);
    const found = read.length > 0 ? read : GuideGen.look.find(text, 1).map((/** @type {{ code: string }} */ f) => f.code);
    return [...new Set(/** @type {string[]} */ (found))];
  }

  /** @param {State} state */
  async function write(state) {
    codes.replaceChildren();
    for (const input of all("variant")) input.checked = input.value === (state.variant ?? "");
    for (const input of all("all-read")) input.checked = state.allRead;
    for (const input of all("tool")) input.checked = !state.missing.includes(input.value);
    for (const input of all("setup")) input.checked = state.prepared.includes(input.value);
    for (const input of all("finding")) {
      const known = Object.hasOwn(state.findings, input.name) ? (state.findings[input.name] ? "present" : "absent") : "unknown";
      input.checked = input.value === known;
    }
    const listed = Object.keys(state.findings).filter(GuideGen.weighAddress.isCode);
    await add(listed.filter(code => state.findings[code]));
    await add(listed.filter(code => !state.findings[code]), false);
    for (const group of form.querySelectorAll("details")) if (group.querySelector('input:is([value="present"], [value="absent"]):checked')) group.open = true;
  }

  GuideGen.weighForm = {
    form, box, read, write, add, take,
    /** @returns {string[]} tools not at hand, as the model names them */
    missingTools: () => all("tool").filter(input => !input.checked).map(input => input.dataset.tool),
  };
}(globalThis));
