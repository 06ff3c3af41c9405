/**
 * From what is known of one vehicle to what the page says: causes, the next checks, the gravest answer to "may I drive?" and
 * whether two faults at once explain it much better. Needs ranking.js and weigh-address.js; draws nothing.
 */
(function (root) {
  "use strict";

  /** @typedef {import('./weigh-address.js').State} State */

  const GuideGen = root.GuideGen;
  const DRIVES = ["stop-now", "to-safety", "gently", "no-hurry"];

  /** How many faults of its own a vehicle in trouble has beside the first, on average. From memory, no source. */
  const SECOND_FAULT = 0.3;
  /** Of the signs that come without their fault, the part that no fault at all sets; the rest is a second fault. From memory, no source. */
  const NO_FAULT = 0.1;
  /** Two faults are spoken of from this ratio on. Our choice. */
  const MUCH_BETTER = 2;
  const BEST_FOR_EACH = 4;
  const MOST_FAULTS = 14;
  const RULED_OUT = 0.02;

  /**
   * @param {any} data of data/weigh.js, its model unpacked
   * @param {string | null} variant
   * @returns {import('./ranking.js').Model}
   */
  function modelOf(data, variant) {
    const own = variant !== null && Object.hasOwn(data.variants, variant) ? data.variants[variant] : null;
    if (!own) return data.model;
    return {
      ...data.model,
      hypotheses: data.model.hypotheses.map((/** @type {{ id: string }} */ h, /** @type {number} */ i) => ({ id: h.id, prior: own.priors[i] })),
      checks: data.model.checks.filter((/** @type {{ id: string }} */ c) => own.checks.includes(c.id)),
    };
  }

  /** @param {import('./ranking.js').Model} model @param {State} state @returns {import('./ranking.js').Answers} */
  function answersOf(model, state) {
    const codes = state.allRead ? model.findings.map(f => f.id).filter(GuideGen.weighAddress.isCode) : [];
    const absent = Object.fromEntries(codes.map(code => [code, false]));
    return { findings: { ...absent, ...state.findings }, outcomes: state.outcomes };
  }

  /** The gravest drive word among plausible causes and what was noticed. @param {any} data @param {{ id: string, probability: number }[]} causes @param {State} state */
  function driveOf(data, causes, state) {
    const named = [
      ...Object.keys(state.findings).filter(id => state.findings[id]).map(id => data.symptoms[id]),
      ...causes.filter(c => c.probability >= data.plausible).map(c => data.faults[c.id]),
    ].filter(Boolean);
    return DRIVES.flatMap(drive => named.filter(n => n.drive === drive))[0] ?? null;
  }

  /** The plausible cause with the gravest drive word, likeliest first: what to beware of. @param {any} data @param {{ id: string, probability: number }[]} causes */
  function worstOf(data, causes) {
    const plausible = causes.filter(c => c.probability >= data.plausible && data.faults[c.id]);
    return DRIVES.flatMap(drive => plausible.filter(c => data.faults[c.id].drive === drive))[0]?.id ?? null;
  }

  /** Faults that any finding at hand speaks for, and that no outcome has ruled out, as indexes. @param {import('./ranking.js').Model} model @param {import('./ranking.js').Answers} answers */
  function candidates(model, answers) {
    const ruledOut = model.checks.flatMap(c => c.outcomes.filter(o => o.id === answers.outcomes[c.id]));
    const possible = model.hypotheses.slice(0, -1).map((_, i) => i)
      .filter(i => model.hypotheses[i].prior > 0 && ruledOut.every(o => o.likelihoods[i] > RULED_OUT));
    const present = model.findings.filter(f => answers.findings[f.id] === true);
    /** @param {number} i */
    const pull = i => Math.max(...present.map(f => model.hypotheses[i].prior * f.likelihoods[i]));
    const best = present.flatMap(f => possible.filter(i => f.likelihoods[i] > Math.min(...f.likelihoods))
      .sort((a, b) => model.hypotheses[b].prior * f.likelihoods[b] - model.hypotheses[a].prior * f.likelihoods[a] || a - b).slice(0, BEST_FOR_EACH));
    return [...new Set(best)].sort((a, b) => pull(b) - pull(a) || a - b).slice(0, MOST_FAULTS);
  }

  /**
   * Two faults at once, by the leaky noisy-OR. A sign that no fault sets is rarer than its least likelihood in the model.
   * @param {import('./ranking.js').Model} model @param {import('./ranking.js').Answers} answers
   * @returns {{ faults: string[], times: number | null } | null} null where one fault explains it as well; times null: beyond measure
   */
  function together(model, answers) {
    if (model.findings.filter(f => answers.findings[f.id] === true).length < 2) return null;
    const chosen = candidates(model, answers);
    const total = model.hypotheses.reduce((sum, h) => sum + h.prior, 0);
    const faults = chosen.map(i => ({ id: model.hypotheses[i].id, prior: SECOND_FAULT * model.hypotheses[i].prior / total }));
    const findings = model.findings.filter(f => typeof answers.findings[f.id] === "boolean").map(f => {
      const leak = NO_FAULT * Math.min(...f.likelihoods);
      return { id: f.id, leak, links: chosen.map(i => Math.max(0, 1 - (1 - f.likelihoods[i]) / (1 - leak))) };
    });
    const { likeliest } = GuideGen.ranking.severalFaults(faults, findings, answers.findings);
    /** @param {(size: number) => boolean} fits */
    const best = fits => likeliest.find((/** @type {{ faults: string[] }} */ s) => fits(s.faults.length));
    const [one, more] = [best(size => size === 1), best(size => size > 1)];
    if (!more || (one && more.probability < MUCH_BETTER * one.probability)) return null;
    return { faults: more.faults, times: one ? more.probability / one.probability : null };
  }

  /** @param {any} data @param {State} state @param {string[]} missingTools as the model names them */
  function weigh(data, state, missingTools) {
    const model = modelOf(data, state.variant);
    const answers = answersOf(model, state);
    const causes = GuideGen.ranking.rank(model, answers);
    return {
      causes,
      next: GuideGen.ranking.nextChecks(model, answers, missingTools, state.prepared),
      drive: driveOf(data, causes, state),
      worst: worstOf(data, causes),
      together: together(model, answers),
      isAsked: isAsked(state),
    };
  }

  /** Whether anything is known that causes can be weighed by. @param {any} state */
  function isAsked(state) {
    return Object.keys(state.findings).length + Object.keys(state.outcomes).length > 0;
  }

  GuideGen.weighModel = {
    weigh, isAsked, modelOf,
    /** @param {any} data as it comes, packed */
    open: data => ({ ...data, model: GuideGen.ranking.unpack(data.model) }),
  };
}(globalThis));
