/*
 * Which pages can be among the best of a search. lunr makes objects for every page that matches, and a common word of a
 * large guide matches them all; so the scores are first added up here, over arrays, and lunr ranks only the pages that can
 * still be among the first ones. It keeps some too many rather than one too few, and ties stay together.
 */
(function (root) {
  'use strict';

  const guide = root.GuideGen = root.GuideGen || {};

  /**
   * @typedef {object} Term one term with its values
   * @property {string} term
   * @property {{documents: number[], scores: number[]}[]} fields in the head's order
   *
   * @typedef {object} Part a clause and the terms it matches
   * @property {object} clause as lunr.Query completed it
   * @property {Term[]} terms
   */

  /**
   * @param {object} head
   * @param {Part[]} parts at least one of them not prohibited
   * @param {number} count how many of the best are asked for
   * @returns {{total: number, keeps: (document: number) => boolean}} how many pages match, and which to rank
   */
  function best(head, parts, count) {
    const scores = scoresOf(head, parts);
    const refused = refusedBy(head, parts);
    const found = [];
    scores.forEach(function (score, d) { if (score >= 0 && !refused[d]) found.push(score); });
    const ranked = Float64Array.from(found).sort();
    // Sums added up in another order differ in their last digits.
    const least = count < ranked.length ? ranked[ranked.length - count] * (1 - 1e-9) : 0;
    return { total: found.length, keeps: function (d) { return scores[d] >= least && !refused[d]; } };
  }

  /** Score by document as lunr adds it up; -1 where nothing matches. */
  function scoresOf(head, parts) {
    const scores = new Float64Array(head.documents).fill(-1);
    head.fields.forEach(function (field, f) {
      const boosts = boostsIn(field, parts);
      let squares = 0;
      boosts.forEach(function (boost) { squares += boost * boost; });
      const length = Math.sqrt(squares) || 1;
      boosts.forEach(function (boost, term) {
        const values = term.fields[f];
        values.documents.forEach(function (d, i) { scores[d] = Math.max(scores[d], 0) + boost * values.scores[i] / length; });
      });
    });
    return scores;
  }

  /** lunr's query vector of a field: the boost of each term, added up over the clauses that ask for it there. */
  function boostsIn(field, parts) {
    const boosts = new Map();
    parts.filter(function (part) { return part.clause.presence !== lunr.Query.presence.PROHIBITED && part.clause.fields.includes(field); })
      .forEach(function (part) {
        part.terms.forEach(function (term) { boosts.set(term, (boosts.get(term) || 0) + part.clause.boost); });
      });
    return boosts;
  }

  /** 1 for each document that has a prohibited term, or lacks every term of a required clause. */
  function refusedBy(head, parts) {
    const refused = new Uint8Array(head.documents);
    parts.forEach(function (part) {
      const presence = part.clause.presence;
      if (presence === lunr.Query.presence.OPTIONAL) return;
      const has = documentsOf(head, part);
      const bad = presence === lunr.Query.presence.PROHIBITED ? 1 : 0;
      has.forEach(function (flag, d) { if (flag === bad) refused[d] = 1; });
    });
    return refused;
  }

  function documentsOf(head, part) {
    const has = new Uint8Array(head.documents);
    head.fields.forEach(function (field, f) {
      if (!part.clause.fields.includes(field)) return;
      part.terms.forEach(function (term) { term.fields[f].documents.forEach(function (d) { has[d] = 1; }); });
    });
    return has;
  }

  guide.searchBest = best;
})(globalThis);
