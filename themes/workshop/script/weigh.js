/**
 * Weighs the causes as soon as something is answered. What is known stands in the address of the page, so that the link can be
 * kept or sent on; nothing else leaves the device. The date, vehicle and distance of the printed sheet stay out of the address.
 */
(function () {
  "use strict";

  const SCRIPTS = ["assets/ranking.js", "assets/weigh-address.js", "assets/weigh-model.js", "assets/weigh-words.js"];
  const { byId, fill } = GuideGen.parts;
  const status = byId("_weigh-status");

  /** @type {Object<string, string>} outcomes by check, of this guide only */
  let outcomes = {};

  /** @param {Object<string, string>} given */
  const knownOutcomes = given => Object.fromEntries(Object.entries(given).filter(([check, outcome]) =>
    Object.hasOwn(GuideGen.weighData.checks, check) && Object.hasOwn(GuideGen.weighData.checks[check].outcomes, outcome)));

  /** @param {string} id @param {Node[]} content */
  const put = (id, content) => byId(id).replaceChildren(...content);

  function draw() {
    const state = GuideGen.weighForm.read(outcomes);
    history.replaceState(null, "", location.pathname + location.search + GuideGen.weighAddress.write(state));
    const words = GuideGen.data.site.words.weigh;
    const isAsked = GuideGen.weighModel.isAsked(state);
    byId("_weigh-result").hidden = !isAsked;
    if (!isAsked) {
      status.textContent = words.ask;
      return;
    }

    const found = GuideGen.weighModel.weigh(GuideGen.weighData, state, GuideGen.weighForm.missingTools());
    const show = GuideGen.weighResult;
    status.textContent = fill(words.first, show.nameOf(found.causes[0].id), show.often(found.causes[0].probability));
    put("_weigh-drive", [...show.plate(found.drive), ...show.beware(found.worst)]);
    put("_weigh-causes", [...show.causeList(found.causes), ...show.pair(found.together)]);
    put("_weigh-next", show.checks(found.next, seen));
    put("_weigh-done", show.doneChecks(outcomes, undo));
    put("_weigh-known", show.known(state));
    put("_weigh-to-do", show.toDo(found.next));
  }

  /** @param {string} check @param {string} outcome */
  function seen(check, outcome) {
    outcomes = { ...outcomes, [check]: outcome };
    draw();
    byId("causes").focus();
  }

  /** @param {string} check */
  function undo(check) {
    outcomes = Object.fromEntries(Object.entries(outcomes).filter(([done]) => done !== check));
    draw();
    byId("next").focus();
  }

  async function open() {
    const state = GuideGen.weighAddress.read(location.hash);
    outcomes = knownOutcomes(state.outcomes);
    await GuideGen.weighForm.write(state);
    draw();
  }

  /** @param {Event} event */
  async function addCodes(event) {
    event.preventDefault();
    const { box, add, take } = GuideGen.weighForm;
    const found = take();
    await add(found);
    const words = GuideGen.data.site.words.weigh;
    draw();
    if (found.length === 0) status.textContent = words.noCode;
    else box.value = "";
    box.focus();
  }

  async function copyLink() {
    try {
      await navigator.clipboard.writeText(location.href);
      byId("_weigh-copied").textContent = GuideGen.data.site.words.weigh.copied;
    } catch {
      byId("_weigh-copied").textContent = GuideGen.data.site.words.weigh.copyByHand;
    }
  }

  async function start() {
    await GuideGen.loadCodes();
    for (const script of [...SCRIPTS, "data/weigh.js"]) await GuideGen.load(script);
    GuideGen.weighData = GuideGen.weighModel.open(GuideGen.data.weigh);
    for (const script of ["assets/weigh-form.js", "assets/weigh-result.js"]) await GuideGen.load(script);
    const { form } = GuideGen.weighForm;
    form.addEventListener("submit", addCodes);
    form.addEventListener("change", draw);
    byId("_weigh-copy").addEventListener("click", copyLink);
    byId("_weigh-print").addEventListener("click", () => window.print());
    byId("_weigh-clear").addEventListener("click", () => { location.hash = ""; open(); });
    window.addEventListener("hashchange", () => { open(); });
    await open();
    form.hidden = false;
    byId("_weigh-share").hidden = false;
  }

  // The room that was kept for the questions is given back.
  start().catch(() => {
    status.textContent = byId("_weigh").dataset.failed || "";
    byId("_weigh").remove();
  });
}());
