/** Own work against a workshop, with the points where the choice turns over: the same numbers as the build. Draws nothing. */
(function (root) {
  "use strict";

  /**
   * @typedef {{ low: number, high: number }} Range in the guide's currency
   * @typedef {object} Costs shares 0 to 1
   * @property {Range} parts
   * @property {Range} consumables
   * @property {number} toolShare
   * @property {number} ownHours
   * @property {number} chanceOfCure
   * @property {number} workshopHours
   * @property {number} diagnosisHours
   * @property {number} workshopRate
   * @property {number} partsMarkup
   * @property {number} tax
   * @property {number} transportHours
   */

  /** @param {number} factor @param {Range} range */
  const times = (factor, range) => ({ low: factor * range.low, high: factor * range.high });
  /** @param {...(Range | number)} terms @returns {Range} */
  const plus = (...terms) => terms.reduce((/** @type {Range} */ sum, term) =>
    typeof term === "number" ? { low: sum.low + term, high: sum.high + term } : { low: sum.low + term.low, high: sum.high + term.high }, { low: 0, high: 0 });
  /** @param {Range} range */
  const middle = range => (range.low + range.high) / 2;

  /** @param {Costs} c @param {number} hourValue what an hour of one's own is worth */
  function choose(c, hourValue) {
    const bill = times(1 + c.tax, plus((c.diagnosisHours + c.workshopHours) * c.workshopRate, times(1 + c.partsMarkup, c.parts)));
    const cash = plus(c.parts, c.consumables, c.toolShare);
    const expected = plus(cash, times(1 - c.chanceOfCure, bill));
    const workshop = plus(bill, c.transportHours * hourValue);
    return {
      own: plus(expected, c.ownHours * hourValue),
      workshop,
      breakEvenHourValue: c.ownHours > c.transportHours ? (middle(bill) - middle(expected)) / (c.ownHours - c.transportHours) : null,
      breakEvenChance: middle(bill) === 0 ? null : 1 - (middle(workshop) - middle(cash) - c.ownHours * hourValue) / middle(bill),
    };
  }

  root.GuideGen = root.GuideGen || {};
  root.GuideGen.repairChoice = { choose };
}(globalThis));
