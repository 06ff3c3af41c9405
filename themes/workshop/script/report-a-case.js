/**
 * An owner's case, written down: the form becomes the text of a file, which is shown as it grows and saved on the device. Nothing
 * is sent. While the text has something in it that could tell who wrote it, there is no file to save.
 */
(function () {
  "use strict";

  const { byId, element, fill } = GuideGen.parts;
  const form = /** @type {HTMLFormElement} */ (byId("_case"));
  const status = byId("_case-status");
  const save = /** @type {HTMLAnchorElement} */ (byId("_case-save"));
  const states = ["unknown", "pending", "confirmed", "permanent", "history"];
  const words = () => GuideGen.data.site.words.caseForm;

  /** @param {string} name */
  const value = name => String(new FormData(form).get(name) ?? "");
  /** @param {string} name */
  const lines = name => value(name).split("\n").map(line => line.trim()).filter(line => line !== "");

  /** The codes of the pasted text, each with a choice of how it stood. @returns {string[]} */
  function drawCodes() {
    const finds = GuideGen.codes.readPage(value("codes"), "freeText").finds;
    const found = /** @type {string[]} */ ([...new Set(finds.map((/** @type {{ code: string }} */ f) => f.code))]);
    const kept = Object.fromEntries(found.map(code => [code, value("state-" + code)]));
    byId("_case-codes").replaceChildren(...found.map(code => {
      const said = finds.filter((/** @type {{ code: string }} */ f) => f.code === code).flatMap((/** @type {{ words: string[] }} */ f) => f.words);
      const chosen = kept[code] || states.find(state => said.includes(state)) || "unknown";
      const select = /** @type {HTMLSelectElement} */ (document.createElement("select"));
      select.name = "state-" + code;
      select.append(...states.map(state => new Option(words().states[state], state, state === chosen, state === chosen)));
      return element("label", element("code", code), " ", select);
    }));
    return found;
  }

  /** @param {string[]} codes */
  function read(codes) {
    const answers = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll('input[data-ask="finding"]:checked')]);
    /** @param {string} answer */
    const answered = answer => answers.filter(input => input.value === answer).map(input => input.name);
    /** @param {string} name */
    const ticked = name => new FormData(form).has(name);
    return {
      date: value("date"), variant: value("variant"), distance: value("distance"),
      codes: Object.fromEntries(codes.map(code => [code, value("state-" + code) || "unknown"])),
      symptoms: { present: answered("present"), absent: answered("absent") },
      found: value("found"), changed: lines("changed"), tried: lines("tried"), minutes: value("minutes"), spend: value("spend"),
      proof: {
        "shown-before": ticked("shown-before"), "one-change": ticked("one-change"), cleared: ticked("cleared"),
        "monitor-passes": /^\d{1,3}$/.test(value("monitor-passes")) ? String(Number(value("monitor-passes"))) : "",
        "codes-after": value("codes-after"), "symptom-gone": value("symptom-gone"), evidence: value("evidence") === "none" ? "" : value("evidence"),
      },
      days: value("days"), driven: value("driven"), note: value("note"),
    };
  }

  function draw() {
    const given = read(drawCodes());
    const { write, identifying, missing, nameOf } = GuideGen.caseFile;
    const [lacks, tells] = [missing(given), identifying(given)];
    const isReady = lacks.length === 0 && tells.length === 0;
    status.textContent = [
      ...(lacks.length > 0 ? [fill(words().missing, lacks.map((/** @type {string} */ key) => words().fields[key]).join(", "))] : []),
      ...tells.map((/** @type {{ kind: string, text: string }} */ t) => fill(words().identifying[t.kind], t.text)),
      ...(isReady ? [words().ready] : []),
    ].join(" ");
    const text = write(given);
    byId("_case-file").textContent = text;
    URL.revokeObjectURL(save.href);
    save.hidden = !isReady;
    save.href = isReady ? URL.createObjectURL(new Blob([text], { type: "text/yaml" })) : "";
    save.download = nameOf(given);
  }

  async function start() {
    await GuideGen.loadCodes();
    await GuideGen.load("assets/case-file.js");
    const found = /^#f=([a-z0-9-]{1,80})$/.exec(location.hash)?.[1] ?? "";
    const select = /** @type {HTMLSelectElement} */ (form.elements.namedItem("found"));
    if ([...select.options].some(option => option.value === found)) select.value = found;
    form.addEventListener("input", draw);
    form.addEventListener("submit", event => event.preventDefault());
    draw();
    form.hidden = false;
  }

  start().catch(() => { form.before(form.dataset.failed || ""); });
}());
