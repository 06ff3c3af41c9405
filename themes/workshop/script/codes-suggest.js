/**
 * Says which codes a mistyped one may have meant; see codes.js.
 *
 * @typedef {{ assigned: boolean, covered: boolean, cases: number }} Standing  by the standard, by the guide, by its cases
 * @typedef {{ code: string, slip: string, standing: Standing }} Suggestion
 */
(function () {
  "use strict";

  const { parse, inner: { LENGTH, fold, isHex, startsLikeCode, isStandard } } = GuideGen.codes;

  /** How far each slip is from what was typed. @type {Record<string, number>} */
  const COSTS = {
    "none": 0, "look-alike": 1, "doubled": 2, "dropped-zero": 3, "missing-letter": 3, "swapped": 3, "strange-letter": 3,
    "wrong-letter": 5, "extra-character": 5, "dropped-character": 6, "wrong-digit": 7,
  };
  const LETTERS = "PUCB", DIGITS = "0123456789ABCDEF";

  /** Undoes one slip in every place. @param {string} typed @returns {Generator<[string, string]>} */
  function* undoSlips(typed) {
    const put = (/** @type {number} */ i, /** @type {string} */ c, drop = 0) => typed.slice(0, i) + c + typed.slice(i + drop);
    if (typed.length === 4) {
      for (const letter of LETTERS) yield ["missing-letter", letter + typed];
      for (let i = 1; i <= 4; i++)
        for (const digit of DIGITS) yield [digit === "0" ? "dropped-zero" : "dropped-character", put(i, digit)];
    } else if (typed.length === 5) {
      yield ["none", typed];
      for (let i = 0; i < 4; i++) yield ["swapped", put(i, typed[i + 1] + typed[i], 2)];
      for (const letter of LETTERS) yield [startsLikeCode(typed[0]) ? "wrong-letter" : "strange-letter", put(0, letter, 1)];
      for (let i = 1; i < 5; i++)
        for (const digit of DIGITS) yield ["wrong-digit", put(i, digit, 1)];
    } else if (typed.length === 6)
      for (let i = 0; i < 6; i++) yield [i > 0 && typed[i] === typed[i - 1] ? "doubled" : "extra-character", put(i, "", 1)];
  }

  /** Letters and digits without a failure type and status behind them. @param {string} typed */
  function coreOf(typed) {
    const count = (/** @type {string} */ text) => (text.match(/[\p{L}\p{Nd}]/gu) || []).length;
    let head = fold(typed).trim();
    for (let i = 0; i < 2; i++)
      if (/[-:][0-9A-F]{2}$/.test(head) && count(head.slice(0, -3)) >= LENGTH - 1) head = head.slice(0, -3);
    const core = (head.match(/[\p{L}\p{Nd}]/gu) || []).slice(0, 10).join("");
    return (core.length === 7 || core.length === 9) && isHex(core.slice(LENGTH)) ? core.slice(0, LENGTH) : core;
  }

  /** @param {string} text */
  const mend = text => text[0] + text.slice(1).replace(/[OQILZSGB]/g, (c, i) => i > 0 && isHex(c) ? c : "00112568"["OQILZSGB".indexOf(c)]);

  /**
   * The codes that may have been meant, best first: the nearest slip, then what the guide covers, then its cases.
   * @param {string} typed
   * @param {(code: string) => Standing} standing
   * @returns {Suggestion[]}
   */
  function suggest(typed, standing, limit = 5) {
    /** @type {Map<string, Suggestion & { cost: number }>} */
    const best = new Map();
    for (const [slip, text] of undoSlips(coreOf(typed))) {
      const code = parse(text) || parse(mend(text));
      if (!code) continue;
      const read = slip === "none" && code !== text ? "look-alike" : slip;
      const known = best.get(code);
      if (known && known.cost <= COSTS[read]) continue;
      const stands = standing(code), isKnown = stands.assigned || stands.covered;
      // The standard's codes are listed, so one that is not is likelier a slip than meant; a maker's are not listed.
      const cost = COSTS[read] + (isKnown ? 0 : isStandard(code) ? 8 : 4);
      if (isKnown || read === "none" || read === "look-alike") best.set(code, { code, slip: read, standing: stands, cost });
    }
    const ranked = [...best.values()].sort((a, b) => a.cost - b.cost
      || Number(b.standing.covered) - Number(a.standing.covered)
      || b.standing.cases - a.standing.cases
      || LETTERS.indexOf(a.code[0]) - LETTERS.indexOf(b.code[0])
      || (a.code < b.code ? -1 : 1));
    // What was typed keeps a place, however far down it ranks.
    const itself = ranked.findIndex(s => s.slip === "none");
    const few = itself < limit ? ranked.slice(0, limit) : [...ranked.slice(0, limit - 1), ranked[itself]];
    return few.map(({ code, slip, standing: stands }) => ({ code, slip, standing: stands }));
  }

  GuideGen.codes.suggest = suggest;
})();
