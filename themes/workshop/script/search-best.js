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
   * @property {{documents: Int32Array, scores: Float64Array}[]} fields in the head's order
   *
   * @typedef {object} Part a clause and the terms it matches
   * @property {object} clause as lunr.Query completed it
   * @property {Term[]} terms
   */

  /**
   * @param {object} head
   * @param {Part[]} parts at least one of them not prohibited
   * @param {number} count how many of the best are asked for
   * @returns {{total: number, kept: number[]}} how many pages match, and the numbers of those to rank, rising
   */
  function best(head, parts, count) {
    const scores = scoresOf(head, parts);
    const refused = refusedBy(head, parts);
    const found = new Float64Array(scores.length);
    let total = 0;
    for (let d = 0; d < scores.length; d++) if (scores[d] >= 0 && !refused[d]) found[total++] = scores[d];
    // Sums added up in another order differ in their last digits.
    const least = count < total ? largest(found.subarray(0, total), count) * (1 - 1e-9) : 0;
    const kept = [];
    for (let d = 0; d < scores.length; d++) if (scores[d] >= least && !refused[d]) kept.push(d);
    return { total: total, kept: kept };
  }

  /** The value that is so many-th from above (Hoare's selection: sorting all would take most of a search). Reorders the values. */
  function largest(values, count) {
    const wanted = values.length - count;
    for (let low = 0, high = values.length - 1; low < high;) {
      const middle = values[(low + high) >> 1];
      let i = low, j = high;
      while (i <= j) {
        while (values[i] < middle) i++;
        while (values[j] > middle) j--;
        if (i > j) break;
        const value = values[i];
        values[i++] = values[j];
        values[j--] = value;
      }
      if (wanted > j && wanted < i) break;
      if (wanted <= j) high = j; else low = i;
    }
    return values[wanted];
  }

  /** Score by document as lunr adds it up; -1 where nothing matches. */
  function scoresOf(head, parts) {
    const scores = new Float64Array(head.documents).fill(-1);
    head.fields.forEach(function (field, f) {
      const boosts = boostsIn(field, parts);
      let squares = 0;
      boosts.forEach(function (boost) { squares += boost * boost; });
      const length = Math.sqrt(squares) || 1;
      boosts.forEach(function (boost, term) { add(scores, term.fields[f], boost, length); });
    });
    return scores;
  }

  function add(scores, values, boost, length) {
    const documents = values.documents, more = values.scores;
    for (let i = 0; i < documents.length; i++) {
      const d = documents[i];
      scores[d] = Math.max(scores[d], 0) + boost * more[i] / length;
    }
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
