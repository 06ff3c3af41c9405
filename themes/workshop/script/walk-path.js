/**
 * Where a walk through a tree stands: from the answers given to the step at hand, without any page. An answer is the place
 * of its way in the step's list. What is known of the vehicle and what is missing of tools answers some steps by itself.
 *
 * @typedef {{ to: string, unsure: boolean, variants: string[] | null }} Way
 * @typedef {{ kind: string, ways: Way[], tools: string[] }} Step
 * @typedef {{ start: string, steps: Record<string, Step>, mark?: string }} Tree mark: of a tree that stays as it is, so that it is worked out once
 * @typedef {{ variant: string, missing: string[] }} Filter what is known of the vehicle ("" for nothing), and tools not at hand
 * @typedef {{ step: string, way: number, by: "answer" | "variant" | "tool" }} Taken
 * @typedef {{ at: string, taken: Taken[], used: number, more: number }} Place used: how many of the answers were good
 */
(function (root) {
  "use strict";

  const GuideGen = root.GuideGen = root.GuideGen || {};
  const MOST = 40;

  /** The way that a step takes without being asked. @param {Step} step @param {Filter} filter @returns {{ way: number, by: "variant" | "tool" } | null} */
  function known(step, filter) {
    const mine = filter.variant ? step.ways.findIndex(way => way.variants !== null && way.variants.includes(filter.variant)) : -1;
    if (mine >= 0) return { way: mine, by: "variant" };
    const onward = step.ways.findIndex(way => way.unsure);
    return onward >= 0 && step.tools.some(tool => filter.missing.includes(tool)) ? { way: onward, by: "tool" } : null;
  }

  /** The most steps that still have to be answered from here, this one included. @param {Tree} tree @param {string} from @param {Filter} filter */
  function most(tree, from, filter) {
    /** @type {Map<string, number>} */
    const done = new Map();
    /** @param {string} name @returns {number} */
    const count = name => {
      const before = done.get(name);
      if (before !== undefined) return before;
      const step = tree.steps[name];
      if (!step || step.ways.length === 0) return 0;
      const by = known(step, filter);
      const steps = by ? count(step.ways[by.way].to) : 1 + Math.max(...step.ways.map(way => count(way.to)));
      done.set(name, steps);
      return steps;
    };
    return count(from);
  }

  /** Follows the answers as far as they fit the tree. @param {Tree} tree @param {number[]} answers @param {Filter} filter @returns {Place} */
  function follow(tree, answers, filter) {
    let at = tree.start, used = 0;
    /** @type {Taken[]} */
    const taken = [];
    while (taken.length < MOST * 2) {
      const step = tree.steps[at];
      if (!step || step.ways.length === 0) break;
      const by = known(step, filter);
      const way = by ? by.way : answers[used];
      if (way === undefined || !step.ways[way]) break;
      if (!by) used++;
      taken.push({ step: at, way, by: by ? by.by : "answer" });
      at = step.ways[way].to;
    }
    return { at, taken, used, more: most(tree, at, filter) };
  }

  /** Tells one tree from another, so that an old link is not taken for a new one. @param {Tree} tree @returns {string} six characters */
  function mark(tree) {
    let hash = 2166136261;
    for (const [name, step] of Object.entries(tree.steps)) {
      for (const letter of name + step.ways.map(way => way.to).join()) hash = Math.imul(hash ^ letter.charCodeAt(0), 16777619) >>> 0;
    }
    return (hash % 2176782336).toString(36).padStart(6, "0");
  }

  /** How every walk through a tree begins. @param {Tree} tree @returns {string} */
  function head(tree) {
    return "walk=" + (tree.mark ?? mark(tree));
  }

  /** What stands behind # in an address. @param {Tree} tree @param {number[]} answers @param {Filter} filter @param {string[]} tools all tools of the tree, in order */
  function write(tree, answers, filter, tools) {
    const missing = filter.missing.map(tool => tools.indexOf(tool)).filter(i => i >= 0).sort((a, b) => a - b);
    return [head(tree), answers.join("."), filter.variant, missing.join(".")].join("/");
  }

  const NUMBERS = /^(?:\d{1,3}(?:\.\d{1,3})*)?$/;

  /**
   * Reads what stands behind #, whoever wrote it: null if it is no walk, otherwise only what fits this tree.
   * @param {Tree} tree @param {string} text @param {string[]} tools @param {string[]} variants
   * @returns {{ answers: number[], filter: Filter, stale: boolean } | null}
   */
  function read(tree, text, tools, variants) {
    const parts = text.replace(/^#/, "").split("/");
    if (text.length > 500 || parts.length !== 4 || !/^walk=[0-9a-z]{6}$/.test(parts[0]) || !NUMBERS.test(parts[1]) || !NUMBERS.test(parts[3])) return null;
    const numbers = (/** @type {string} */ list) => list === "" ? [] : list.split(".").map(Number);
    const filter = { variant: variants.includes(parts[2]) ? parts[2] : "", missing: numbers(parts[3]).filter(i => i < tools.length).map(i => tools[i]) };
    const stale = parts[0] !== head(tree);
    const answers = stale ? [] : numbers(parts[1]).slice(0, MOST);
    return { answers: answers.slice(0, follow(tree, answers, filter).used), filter, stale };
  }

  GuideGen.walkPath = { follow, most, read, write, mark };
}(globalThis));
