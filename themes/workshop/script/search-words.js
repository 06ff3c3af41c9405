/*
 * Between an owner's words and the search: loose text to clauses, the nearest words of the guide when nothing matches, and
 * which words of an excerpt a result matched.
 */
(function (root) {
  'use strict';

  const guide = root.GuideGen = root.GuideGen || {};
  /** Further off than this, a word is another word. */
  const MOST_EDITS = 2;

  /** Cut and trimmed as the index's own words are. */
  function split(text) {
    return text.toLowerCase().split(/[\s\-]+/)
      .map(function (word) { return word.replace(/^\W+|\W+$/g, '').replace(/\*/g, ''); })
      .filter(function (word) { return word !== ''; });
  }

  /**
   * Clauses for GuideGen.search.find from text that is not in lunr's language: nothing in it is an operator.
   * @param {string} text
   * @param {boolean} [typing] the last word may go on
   * @returns {{term: string, usePipeline?: boolean, boost?: number}[]}
   */
  function plain(text, typing) {
    const words = split(text);
    const clauses = words.map(function (word) { return { term: word }; });
    if (!typing || words.length === 0 || /[\s\-]$/.test(text)) return clauses;
    const last = words[words.length - 1];
    return clauses.slice(0, -1).concat({ term: last, boost: 10 }, { term: last + '*', usePipeline: false });
  }

  /** Edits between two words: a character put in, left out, changed, or two neighbours swapped (optimal string alignment). */
  function edits(a, b) {
    let before = [], row = Array.from({ length: b.length + 1 }, function (_, j) { return j; });
    for (let i = 1; i <= a.length; i++) {
      const next = [i];
      for (let j = 1; j <= b.length; j++) {
        next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) next[j] = Math.min(next[j], before[j - 2] + 1);
      }
      before = row;
      row = next;
    }
    return row[b.length];
  }

  /**
   * Words of the guide that a mistyped word may have meant, nearest first, then in alphabetical order.
   * @param {string} word
   * @param {number} [count] default 5
   * @returns {Promise<string[]>}
   */
  function nearest(word, count) {
    const wanted = word.toLowerCase();
    return guide.search.vocabulary().then(function (words) {
      return words.forms
        .filter(function (form) { return Math.abs(form.length - wanted.length) <= MOST_EDITS; })
        .map(function (form) { return { form: form, edits: edits(wanted, form) }; })
        .filter(function (near) { return near.edits <= MOST_EDITS && near.edits < wanted.length; })
        .sort(function (a, b) { return a.edits - b.edits || (a.form < b.form ? -1 : 1); })
        .slice(0, count === undefined ? 5 : count)
        .map(function (near) { return near.form; });
    });
  }

  /**
   * A text in pieces, of which every second one, from the second on, is a word that matched.
   * @param {string} text
   * @param {string[]} terms the stems of a result
   * @returns {string[]}
   */
  function pieces(text, terms) {
    const result = [''];
    text.split(/([\s\-]+)/).forEach(function (part) {
      const bare = part.replace(/^\W+|\W+$/g, '');
      const at = part.indexOf(bare);
      const matched = bare !== '' && terms.includes(stem(bare));
      result[result.length - 1] += matched ? part.slice(0, at) : part;
      if (matched) result.push(bare, part.slice(at + bare.length));
    });
    return result;
  }

  function stem(word) {
    return lunr.stemmer(new lunr.Token(word.toLowerCase())).toString();
  }

  /** So many candidates are put in order by their names: more would load more cards than a phone needs. */
  const CANDIDATES = 12;

  /**
   * The pages that an owner's loose text means, best first: those that have all words come before those that have some;
   * among them those that have more of the words in their name; then as lunr scores them. Pages of codes come last, because
   * whoever types words has no code to look up. The last word may be unfinished.
   * @param {string} text
   * @param {number} count
   * @returns {Promise<object[]>} as GuideGen.search.find gives them
   */
  function pages(text, count) {
    const whole = plain(text);
    if (whole.length === 0) return Promise.resolve([]);
    const begun = whole.slice(0, -1).concat({ term: whole[whole.length - 1].term + '*', usePipeline: false });
    const found = new Map();
    return [required(whole), required(begun), plain(text, true)].reduce(function (before, clauses) {
      return before.then(function () { return guide.search.find(clauses, Math.max(count, CANDIDATES)); }).then(function (answer) {
        byName(answer.results).forEach(function (page) { if (!found.has(page.address)) found.set(page.address, page); });
      });
    }, Promise.resolve()).then(function () { return [...found.values()].slice(0, count); });
  }

  /** Sorting keeps what is equal in the order it came. */
  function byName(results) {
    const named = function (page) { return page.kind === 'codes' ? -1 : (pieces(page.name, page.terms).length - 1) / 2; };
    return results.slice().sort(function (a, b) { return named(b) - named(a); });
  }

  /** lunr itself is not here before the first search, so its number for 'required' stands here. */
  function required(clauses) {
    return clauses.map(function (clause) { return Object.assign({ presence: 2 }, clause); });
  }

  guide.searchWords = { plain: plain, nearest: nearest, pieces: pieces, pages: pages };
})(globalThis);
