/*
 * Full-text search from shards. A query names some terms; the files that hold those terms are loaded as scripts (so that it
 * works from a file, too), a small lunr.Index is built from them, and lunr searches it. Results and scores are those of the
 * whole index. What a page must know first, and nothing more, is in the head file.
 */
(function (root) {
  'use strict';

  const guide = root.GuideGen = root.GuideGen || {};
  const index = guide.searchIndex;
  /** lunr's patterns for more than two edits grow beyond what a phone can walk. */
  const MOST_EDITS = 2;

  /**
   * @typedef {object} Place where the search's files lie
   * @property {string} base folder of the files, relative to the page, with a slash at its end
   * @property {string} head name of the head file
   * @property {string} lunr name of lunr's own file
   * @property {number} [most] most term files that one word may load; default 40
   * @property {(address: string) => Promise<void>} [load] runs a script; default adds a script element
   *
   * @typedef {object} Found
   * @property {number} document number of the page in the guide
   * @property {number} score
   * @property {string[]} terms stems that matched
   * @property {string} address
   * @property {string} name
   * @property {string} kind
   * @property {string[]} codes
   * @property {string} excerpt
   *
   * @typedef {object} Answer
   * @property {number} total how many pages match
   * @property {Found[]} results the best of them
   * @property {{term: string, why: 'wide' | 'edits'}[]} limits words that were not searched as asked: 'wide', too many words
   *   begin like this and it was left out; 'edits', it was searched with two edits
   * @property {string} refused why lunr could not read the query; empty when it could
   */

  /** @type {Place} */
  let place;
  /** By key: data as it arrived, and as it was made ready. By name: files on their way or here. */
  let arrived, ready, coming;

  /** @param {Place} where */
  function start(where) {
    place = Object.assign({ most: 40, load: addScript }, where);
    arrived = new Map();
    ready = new Map();
    coming = new Map();
  }

  /** Called by the files themselves. */
  function take(key, data) {
    arrived.set(key, data);
  }

  function addScript(address) {
    return new Promise(function (resolve, reject) {
      const script = document.createElement('script');
      script.src = address;
      script.charset = 'utf-8';
      script.onload = function () { script.remove(); resolve(); };
      script.onerror = function () { script.remove(); reject(new Error('could not load ' + address)); };
      document.head.append(script);
    });
  }

  /** A file that failed is asked for again the next time; one that came is never asked for twice. */
  function loadFile(name) {
    if (!coming.has(name)) {
      const promise = place.load(place.base + name);
      coming.set(name, promise);
      promise.catch(function () { coming.delete(name); });
    }
    return coming.get(name);
  }

  /** What the file of this name handed over, read once. */
  function data(key, name, read) {
    return loadFile(name).then(function () {
      if (!arrived.has(key)) throw new Error(key + ' is not in ' + name);
      if (!ready.has(key)) ready.set(key, read(arrived.get(key)));
      return ready.get(key);
    });
  }

  function shard(key, hash, read) {
    return data(key, key + '-' + hash + '.js', read);
  }

  function open() {
    return Promise.all([loadFile(place.lunr), loadFile(place.head)])
      .then(function () { return data('head', place.head, index.prepare); });
  }

  function words(head) {
    return shard('words', head.words, index.readWords);
  }

  /**
   * Which files a clause needs, and which of their terms. Only a clause that does not say how its word begins needs the
   * list of all words.
   * @returns {Promise<{files: number[], wants: (term: string) => boolean}>}
   */
  function needs(head, clause) {
    const term = clause.usePipeline ? head.pipeline.runString(clause.term, {}).join('') : clause.term;
    const star = term.indexOf('*');
    if ('editDistance' in clause) return words(head).then(function (all) { return listed(head, similar(all.terms, term, clause)); });
    if (star < 0) return Promise.resolve(listed(head, [term]));
    if (star < term.length - 1) {
      const shape = new RegExp('^' + term.replace(/[\\^$.+?()[\]{}|]/g, '\\$&').replace(/\*/g, '[^]*') + '$');
      return words(head).then(function (all) { return listed(head, all.terms.filter(function (t) { return shape.test(t); })); });
    }
    const beginning = term.slice(0, -1);
    const files = [];
    for (let file = index.fileOf(head, beginning); file <= index.fileOf(head, beginning + '\uffff'); file++) files.push(file);
    return Promise.resolve({ files: files, wants: function (t) { return t.startsWith(beginning); } });
  }

  function listed(head, terms) {
    const wanted = new Set(terms);
    const files = new Set(terms.map(function (term) { return index.fileOf(head, term); }));
    return { files: [...files], wants: function (term) { return wanted.has(term); } };
  }

  /** The words that lunr itself finds within the clause's edits, out of those that cheap counting leaves. */
  function similar(terms, term, clause) {
    const near = terms.filter(function (w) { return mayBe(w, term, clause.editDistance); });
    return lunr.TokenSet.fromArray(near).intersect(lunr.TokenSet.fromFuzzyString(term, clause.editDistance)).toArray();
  }

  /** An edit changes a word's length by one at most, and takes one character at most out of it. */
  function mayBe(word, term, edits) {
    if (Math.abs(word.length - term.length) > edits) return false;
    if (term.includes('*')) return true;
    let rest = word, missing = 0;
    for (const character of term.split('')) {
      const at = rest.indexOf(character);
      if (at < 0) missing++; else rest = rest.slice(0, at) + rest.slice(at + 1);
    }
    return missing <= edits;
  }

  /** Whether a clause may load its files; when that would be too many, it is named. */
  function isNarrow(part, limits) {
    if (part.need.files.length <= place.most) return true;
    limits.push({ term: part.clause.term, why: 'wide' });
    return false;
  }

  function loadTerms(head, parts) {
    const files = new Set([].concat(...parts.map(function (part) { return part.need.files; })));
    const loads = [...files].filter(function (file) { return file < head.terms.length; })
      .sort(function (a, b) { return a - b; })
      .map(function (file) { return shard('terms-' + file, head.terms[file], index.readTerms); });
    return Promise.all(loads).then(function (shards) {
      return [].concat(...shards)
        .filter(function (entry) { return parts.some(function (part) { return part.need.wants(entry.term); }); })
        .map(function (entry) { return index.readValues(entry, head); });
    });
  }

  /**
   * A query in lunr's language, or clauses as lunr.Query.clause takes them (see plain).
   * @throws {lunr.QueryParseError}
   */
  function parse(head, request, limits) {
    const query = new lunr.Query(head.fields);
    if (typeof request === 'string') new lunr.QueryParser(request, query).parse();
    else request.forEach(function (clause) { query.clause(Object.assign({}, clause)); });
    query.clauses.filter(function (c) { return c.editDistance > MOST_EDITS; }).forEach(function (clause) {
      clause.editDistance = MOST_EDITS;
      limits.push({ term: clause.term, why: 'edits' });
    });
    return query;
  }

  function withCard(head, result) {
    const number = Math.floor(result.ref / head.cardsPerFile);
    return shard('cards-' + number, head.cards[number], Array.from).then(function (cards) {
      const card = cards[result.ref % head.cardsPerFile];
      return {
        document: +result.ref, score: result.score, terms: Object.keys(result.matchData.metadata),
        address: card[0], name: card[1], kind: card[2], codes: card[3], excerpt: card[4]
      };
    });
  }

  function answer(head, query, limits, count) {
    return Promise.all(query.clauses.map(function (clause) {
      return needs(head, clause).then(function (need) { return { clause: clause, need: need }; });
    })).then(function (all) {
      const parts = all.filter(function (part) { return isNarrow(part, limits); });
      const leftOnlyProhibited = parts.length < all.length && parts.every(isProhibited);
      if (parts.length === 0 || leftOnlyProhibited) return { total: 0, results: [] };
      return loadTerms(head, parts).then(function (terms) { return rank(head, parts, terms, count); });
    }).then(function (ranked) {
      return Promise.all(ranked.results.map(function (result) { return withCard(head, result); }))
        .then(function (results) { return { total: ranked.total, results: results, limits: limits, refused: '' }; });
    });
  }

  function isProhibited(part) {
    return part.clause.presence === lunr.Query.presence.PROHIBITED;
  }

  /** A search that only prohibits finds every other page, all of them equal; there is nothing to narrow down. */
  function rank(head, parts, terms, count) {
    const negated = parts.every(isProhibited);
    const best = negated ? {} : guide.searchBest(head, parts.map(function (part) {
      return { clause: part.clause, terms: terms.filter(function (entry) { return part.need.wants(entry.term); }) };
    }), count);
    const results = index.build(head, terms, best.kept)
      .query(function (query) { parts.forEach(function (part) { query.clause(part.clause); }); });
    return { total: negated ? results.length : best.total, results: results.slice(0, count) };
  }

  /**
   * @param {string | object[]} request a query in lunr's language, or clauses; one that asks for nothing finds nothing
   * @param {number} [count] how many results to give; default 10
   * @returns {Promise<Answer>} rejected only when a file cannot be loaded
   */
  function find(request, count) {
    return open().then(function (head) {
      const limits = [];
      let query;
      try {
        query = parse(head, request, limits);
      } catch (refusal) {
        if (!(refusal instanceof lunr.QueryParseError)) throw refusal;
        return { total: 0, results: [], limits: limits, refused: refusal.message };
      }
      return answer(head, query, limits, count === undefined ? 10 : count);
    });
  }

  /** @returns {Promise<{terms: string[], forms: string[]}>} all stems of the guide, and for each the word to show */
  function vocabulary() {
    return open().then(words);
  }

  guide.search = { start: start, take: take, find: find, vocabulary: vocabulary };
})(globalThis);
