/** Shares and weights in words. Whole numbers of vehicles: the numbers behind them are not good enough for more. */
(function (root) {
  "use strict";

  /** From here on, downwards: the share, the wording, and of how many vehicles it speaks. @type {[number, string, number][]} */
  const SHARES = [[0.95, "nearlyAll", 20], [0.075, "of", 10], [0.015, "of", 100], [0, "few", 100]];

  /** How strongly a finding speaks, by |log10| of its likelihood ratio. Our choice of steps: 10, 3 and 1.3 times. @type {[number, string][]} */
  const STRENGTHS = [[1, "strongly"], [0.477, "clearly"], [0.114, "slightly"], [0, "hardly"]];

  /** @param {number} share 0 to 1 @returns {{ wording: string, count: number, of: number }} */
  function frequency(share) {
    const [, wording, of] = /** @type {[number, string, number]} */ (SHARES.find(([from]) => share >= from));
    return { wording, count: Math.round(share * of), of };
  }

  /** @param {number} log10 @returns {{ strength: string, isFor: boolean, times: string }} */
  function weight(log10) {
    const [, strength] = /** @type {[number, string]} */ (STRENGTHS.find(([from]) => Math.abs(log10) >= from));
    const times = Math.pow(10, Math.abs(log10));
    return { strength, isFor: log10 >= 0, times: times >= 10 ? String(Math.round(times)) : times.toFixed(1) };
  }

  root.GuideGen = root.GuideGen || {};
  root.GuideGen.weighWords = { frequency, weight };
}(globalThis));
