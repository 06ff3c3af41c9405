/**
 * Walks a tree one step at a time. The steps are those of the page; this hides all but one. The answers stand in the address, so
 * that a link carries them, and are kept on the device until the walk is begun again.
 */
(function () {
  "use strict";

  /** @typedef {import('./walk-path.js').Tree} Tree */
  /** @typedef {{ answers: number[], filter: import('./walk-path.js').Filter, seen: number, sure: string[], taken: Record<string, string>, vehicle: string, odometer: string }} State seen: how many of the answers are gone through */

  const path = GuideGen.walkPath;
  const box = /** @type {HTMLElement} */ (document.getElementById("_walk"));
  const list = /** @type {HTMLElement} */ (document.querySelector(".steps"));
  const items = /** @type {HTMLElement[]} */ ([...list.querySelectorAll(":scope > .step")]);
  const byId = (/** @type {string} */ id) => /** @type {HTMLElement} */ (document.getElementById(id));
  const links = (/** @type {HTMLElement} */ item) => /** @type {HTMLAnchorElement[]} */ ([...item.querySelectorAll(".ways a")]);
  const toolBoxes = /** @type {HTMLInputElement[]} */ ([...box.querySelectorAll("[data-tool]")]);
  const tools = toolBoxes.map(b => b.dataset.tool || "");
  const choice = /** @type {HTMLSelectElement | null} */ (document.getElementById("_walk-variant"));
  const variants = choice ? [...choice.options].map(o => o.value).filter(v => v) : [];
  const tree = /** @type {Tree} */ ({ start: items[0].id, steps: Object.fromEntries(items.map(item => [item.id, stepOf(item)])) });
  tree.mark = path.mark(tree);
  const place = "walk:" + location.pathname;
  /** @type {State} */
  let state = { answers: [], filter: { variant: "", missing: [] }, seen: 0, sure: [], taken: {}, vehicle: "", odometer: "" };
  let addressing = 0;
  let words = GuideGen.data && GuideGen.data.site ? GuideGen.data.site.words.walk : null;

  /** @param {HTMLElement} item */
  function stepOf(item) {
    return {
      kind: item.dataset.kind || "",
      tools: item.dataset.tools ? item.dataset.tools.split("|") : [],
      ways: links(item).map(a => ({ to: (a.getAttribute("href") || "#").slice(1), unsure: a.hasAttribute("data-unsure"), variants: a.dataset.variants ? a.dataset.variants.split(" ") : null })),
    };
  }

  const fill = (/** @type {string} */ wording, /** @type {(string | number)[]} */ ...values) => wording.replace(/\{(\d)\}/g, (_, i) => String(values[i]));
  const titleOf = (/** @type {string} */ id) => (/** @type {HTMLElement} */ (byId(id).querySelector("h2")).textContent || "").trim();
  const answerOf = (/** @type {string} */ id, /** @type {number} */ way) => (/** @type {HTMLElement} */ (links(byId(id))[way].querySelector("span")).textContent || "").trim();

  /** @param {string} tag @param {...(string | Node)} content */
  function element(tag, ...content) {
    const made = document.createElement(tag);
    made.append(...content);
    return made;
  }

  const addressed = () => path.write(tree, state.answers.slice(0, state.seen), state.filter, tools);

  function keep() {
    try {
      localStorage.setItem(place, JSON.stringify({ hash: path.write(tree, state.answers, state.filter, tools), seen: state.seen, taken: state.taken, vehicle: state.vehicle, odometer: state.odometer }));
    } catch { /* Without storage the walk goes on; only a closed browser forgets it. */ }
    clearTimeout(addressing);
    // The step comes first: a new address has every link of the page looked at again.
    addressing = setTimeout(() => history.replaceState(null, "", "#" + addressed()), 0);
  }

  /** Text that an owner typed, whoever put it into the storage since. @param {unknown} value */
  const short = value => typeof value === "string" ? value.slice(0, 100) : "";

  function restore() {
    try {
      const kept = JSON.parse(localStorage.getItem(place) || "null");
      if (!kept || typeof kept !== "object") return;
      state.vehicle = short(kept.vehicle);
      state.odometer = short(kept.odometer);
      if (location.hash.startsWith("#walk=")) return;
      const read = path.read(tree, short(kept.hash), tools, variants);
      if (!read || read.stale) return;
      state = { ...state, answers: read.answers, filter: read.filter, seen: Number.isInteger(kept.seen) ? Math.max(0, Math.min(kept.seen, read.answers.length)) : read.answers.length };
      for (const [key, value] of Object.entries(kept.taken || {})) state.taken[short(key)] = short(value);
    } catch { /* What cannot be read is begun anew. */ }
  }

  function fromAddress() {
    const read = path.read(tree, location.hash, tools, variants);
    if (!read) return false;
    state = { ...state, answers: read.answers, filter: read.filter, seen: read.answers.length, sure: [] };
    if (read.stale) say(words.stale);
    return true;
  }

  function say(/** @type {string} */ text) {
    byId("_walk-more").textContent = text;
  }

  const now = () => path.follow(tree, state.answers.slice(0, state.seen), state.filter);

  /** Draws the step at hand. @param {boolean} move whether to bring it into view */
  function show(move) {
    const at = now();
    // A step that is hidden with the focus in it is laid out once more on the spot.
    const focused = /** @type {HTMLElement | null} */ (document.activeElement);
    if (move && focused && list.contains(focused)) focused.blur();
    for (const item of items) if (item.hidden !== (item.id !== at.at)) item.hidden = !item.hidden;
    byId("_walk-trail").replaceChildren(...at.taken.map(taken => trailRow(taken)));
    say(at.more === 0 ? words.end : fill(GuideGen.formOf(words.more, at.more), at.more));
    /** @type {HTMLButtonElement} */ (byId("_walk-back")).disabled = state.seen === 0;
    box.classList.toggle("walk-fresh", state.answers.length === 0);
    byId("_walk-ahead").hidden = state.seen >= state.answers.length;
    if (choice) choice.value = state.filter.variant;
    for (const b of toolBoxes) b.checked = !state.filter.missing.includes(b.dataset.tool || "");
    dress(byId(at.at));
    if (move) byId(at.at).focus({ preventScroll: true }), byId(at.at).scrollIntoView({ block: "start" });
  }

  /** @param {{ step: string, way: number, by: string }} taken */
  function trailRow(taken) {
    const why = taken.by === "tool" ? " (" + words.skipped + ")" : taken.by === "variant" ? " (" + words.known + ")" : "";
    return element("li", element("span", titleOf(taken.step)), " ", element("strong", answerOf(taken.step, taken.way)), why);
  }

  /** Fields and the promise about grave hazards belong to the step at hand only. @param {HTMLElement} item */
  function dress(item) {
    const sure = /** @type {HTMLInputElement | null} */ (item.querySelector(".walk-sure input"));
    if (sure) {
      sure.checked = state.sure.includes(item.id);
      /** @type {HTMLElement} */ (item.querySelector(".walk-sure")).hidden = false;
    }
    hold(item, sure !== null && !sure.checked);
    for (const field of /** @type {NodeListOf<HTMLInputElement>} */ (item.querySelectorAll(".walk-taken input"))) {
      field.value = state.taken[item.id + "|" + field.dataset.reading] || "";
      /** @type {HTMLElement} */ (field.closest(".walk-taken")).hidden = false;
    }
  }

  /** Somebody who cannot tell has not done anything, and may go on. @param {HTMLElement} item @param {boolean} held */
  function hold(item, held) {
    for (const a of links(item)) {
      if (held && !a.hasAttribute("data-unsure")) a.setAttribute("aria-disabled", "true");
      else a.removeAttribute("aria-disabled");
    }
  }

  /** @param {number} way */
  function answer(way) {
    const same = state.answers[state.seen] === way;
    state.answers = same ? state.answers : [...state.answers.slice(0, state.seen), way];
    state.seen++;
    keep();
    show(true);
  }

  list.addEventListener("click", event => {
    const a = /** @type {HTMLElement} */ (event.target).closest(".ways a");
    if (!a || !document.body.classList.contains("walking")) return;
    event.preventDefault();
    const item = /** @type {HTMLElement} */ (a.closest(".step"));
    if (a.getAttribute("aria-disabled") === "true") /** @type {HTMLElement} */ (item.querySelector(".walk-sure input")).focus();
    else answer(links(item).indexOf(/** @type {HTMLAnchorElement} */ (a)));
  });

  list.addEventListener("input", event => {
    const field = /** @type {HTMLInputElement} */ (event.target);
    const item = /** @type {HTMLElement} */ (field.closest(".step"));
    if (field.type === "checkbox") {
      state.sure = field.checked ? [...state.sure, item.id] : state.sure.filter(id => id !== item.id);
      hold(item, !field.checked);
    } else if (field.dataset.reading) {
      state.taken[item.id + "|" + field.dataset.reading] = short(field.value);
      keep();
    }
  });

  function filtered() {
    state.filter = { variant: choice ? choice.value : "", missing: toolBoxes.filter(b => !b.checked).map(b => b.dataset.tool || "") };
    const used = path.follow(tree, state.answers, state.filter).used;
    state.answers = state.answers.slice(0, used);
    state.seen = Math.min(state.seen, used);
    keep();
    show(false);
  }

  /** The record, as it is printed. */
  function paper() {
    const rows = now().taken.map(taken => {
      const row = trailRow(taken);
      for (const field of /** @type {NodeListOf<HTMLInputElement>} */ (byId(taken.step).querySelectorAll("[data-reading]"))) {
        const value = state.taken[taken.step + "|" + field.dataset.reading];
        if (value) row.append(element("br"), fill(words.measured, field.dataset.reading || "", value, field.dataset.unit || ""));
      }
      return row;
    });
    const end = element("p", element("strong", titleOf(now().at)));
    const facts = [[words.date, new Date().toISOString().slice(0, 10)], [words.vehicle, state.vehicle], [words.odometer, state.odometer]];
    byId("_walk-paper").replaceChildren(element("h2", fill(words.record, (document.querySelector("h1") || document.body).textContent || "")), ...facts.map(([name, value]) => element("p", name + ": ", element("strong", value))), element("ol", ...rows), end);
  }

  function begin() {
    box.hidden = false;
    document.body.classList.add("walking");
    restore();
    const came = fromAddress();
    const note = byId("_walk-more").textContent;
    show(came || (location.hash === "" && state.seen > 0));
    if (came && note) say(note);
    const plain = location.hash.slice(1);
    if (!came && tree.steps[plain]) unfold();
  }

  /** A link to a step, from the drawing or another page, shows all steps as they stand without script. */
  function unfold() {
    document.body.classList.remove("walking");
    for (const item of items) item.hidden = false;
    const to = document.getElementById(location.hash.slice(1));
    if (to) to.scrollIntoView();
  }

  const press = (/** @type {string} */ id, /** @type {() => void} */ act) => byId(id).addEventListener("click", act);
  press("_walk-back", () => { state.seen = Math.max(0, state.seen - 1); keep(); document.body.classList.add("walking"); show(true); });
  press("_walk-ahead", () => { state.seen++; keep(); show(true); });
  press("_walk-again", () => { state = { ...state, answers: [], seen: 0, sure: [], taken: {} }; keep(); document.body.classList.add("walking"); show(true); });
  press("_walk-link", () => {
    const address = location.href.split("#")[0] + "#" + addressed();
    const told = () => say(fill(words.copy, address));
    if (navigator.clipboard) navigator.clipboard.writeText(address).then(() => say(words.copied), told);
    else told();
  });
  press("_walk-print", () => { paper(); byId("_walk-paper").hidden = false; document.body.classList.add("printing-record"); window.print(); });
  window.addEventListener("afterprint", () => { document.body.classList.remove("printing-record"); byId("_walk-paper").hidden = true; });
  window.addEventListener("hashchange", () => { if (fromAddress()) { document.body.classList.add("walking"); show(true); } else if (tree.steps[location.hash.slice(1)]) unfold(); });
  box.addEventListener("change", event => {
    const field = /** @type {HTMLInputElement} */ (event.target);
    if (field.id === "_walk-variant" || field.dataset.tool !== undefined) filtered();
    else if (field.id === "_walk-vehicle" || field.id === "_walk-odometer") { state.vehicle = short(/** @type {HTMLInputElement} */ (byId("_walk-vehicle")).value); state.odometer = short(/** @type {HTMLInputElement} */ (byId("_walk-odometer")).value); keep(); }
  });

  GuideGen.load("data/site.js").then(() => {
    words = GuideGen.data.site.words.walk;
    begin();
    /** @type {HTMLInputElement} */ (byId("_walk-vehicle")).value = state.vehicle;
    /** @type {HTMLInputElement} */ (byId("_walk-odometer")).value = state.odometer;
  });
}());
