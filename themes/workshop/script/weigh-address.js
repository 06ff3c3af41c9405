/**
 * What is known of one vehicle, as the fragment of an address: short, and with a version in front, so that it can be sent on.
 * Whatever is not written exactly so is left out: the address may come from anybody.
 */
(function (root) {
  "use strict";

  /**
   * @typedef {object} State
   * @property {string | null} variant
   * @property {Object<string, boolean>} findings codes and symptoms: true there, false looked for and not there
   * @property {boolean} allRead every module was read, so a code that is not named was not there
   * @property {Object<string, string>} outcomes by check
   * @property {string[]} missing tools not at hand, as slugs
   * @property {string[]} prepared preparations already made
   */

  const VERSION = "#w1";
  const LONGEST = 8000;
  const MOST = 200;
  const CODE = /^[PCBU][0-9A-F]{4}$/;
  const SLUG = /^[a-z0-9][a-z0-9-]{0,79}$/;
  const OUTCOME = /^[a-z0-9][a-z0-9-]{0,79}:[a-z0-9][a-z0-9-]{0,79}$/;

  /** @returns {State} */
  const nothing = () => ({ variant: null, findings: {}, allRead: false, outcomes: {}, missing: [], prepared: [] });

  /** How each field is read: what its items look like, and where they go. @type {Object<string, [RegExp, (state: State, item: string) => void]>} */
  const FIELDS = {
    v: [SLUG, (state, item) => { state.variant = item; }],
    c: [CODE, (state, item) => { state.findings[item] = true; }],
    n: [CODE, (state, item) => { state.findings[item] = false; }],
    s: [SLUG, (state, item) => { state.findings[item] = true; }],
    a: [SLUG, (state, item) => { state.findings[item] = false; }],
    r: [/^1$/, state => { state.allRead = true; }],
    o: [OUTCOME, (state, item) => { state.outcomes[item.split(":")[0]] = item.split(":")[1]; }],
    t: [SLUG, (state, item) => { state.missing.push(item); }],
    p: [SLUG, (state, item) => { state.prepared.push(item); }],
  };

  /** @param {string} fragment @returns {State} */
  function read(fragment) {
    const state = nothing();
    if (fragment.length > LONGEST || !fragment.startsWith(VERSION + ";")) return state;
    for (const part of fragment.slice(VERSION.length + 1).split(";")) {
      const [name, items] = [part.slice(0, 1), part.slice(2)];
      if (part[1] !== "=" || !Object.hasOwn(FIELDS, name)) continue;
      const [form, take] = FIELDS[name];
      for (const item of items.split(".").slice(0, MOST)) if (form.test(item)) take(state, item);
    }
    return state;
  }

  /** @param {State} state @returns {string} the same for the same answers, in whatever order they were given */
  function write(state) {
    const ids = Object.keys(state.findings).sort();
    /** @param {boolean} isCode @param {boolean} present */
    const some = (isCode, present) => ids.filter(id => CODE.test(id) === isCode && state.findings[id] === present);
    const lists = {
      v: state.variant ? [state.variant] : [],
      c: some(true, true), n: some(true, false), s: some(false, true), a: some(false, false),
      r: state.allRead ? ["1"] : [],
      o: Object.keys(state.outcomes).sort().map(check => check + ":" + state.outcomes[check]),
      t: state.missing.slice().sort(), p: state.prepared.slice().sort(),
    };
    const fields = Object.entries(lists).filter(([, items]) => items.length > 0).map(([name, items]) => `;${name}=${items.join(".")}`);
    return fields.length === 0 ? "" : VERSION + fields.join("");
  }

  root.GuideGen = root.GuideGen || {};
  root.GuideGen.weighAddress = { read, write, nothing, isCode: (/** @type {string} */ id) => CODE.test(id) };
}(globalThis));
