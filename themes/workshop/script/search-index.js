/*
 * From the lines of term files to a small lunr.Index: pure computation, no loading. The builder of these texts is the
 * guide's compiler; what both compute is tested with the same vectors.
 */
(function (root) {
  'use strict';

  const guide = root.GuideGen = root.GuideGen || {};
  /** No metadata is kept, so every posting can share one empty object. */
  const NOTHING = {};

  /** What a character stands for, 0 to 89. */
  function digit(text, at) {
    const code = text.charCodeAt(at);
    return code - (code > 92 ? 36 : 35);
  }

  /**
   * Numbers from 0 to base 45, highest digit first, all but the last digit 45 higher; see NumberText in the builder.
   * A common word has tens of thousands of them: arrays of plain numbers keep a phone's search short.
   * @param {string} text
   * @returns {Int32Array}
   */
  function numbers(text) {
    const list = new Int32Array(text.length);
    let length = 0, value = 0;
    for (let i = 0; i < text.length; i++) {
      const d = digit(text, i);
      if (d >= 45) {
        value = value * 45 + d - 45;
      } else {
        list[length++] = value * 45 + d;
        value = 0;
      }
    }
    return list.subarray(0, length);
  }

  /** Words of which each is written against the one before: a digit says how much of that one it begins with. */
  function unshorten(shortened) {
    let word = '';
    return shortened.map(function (text) {
      word = word.slice(0, digit(text, 0)) + text.slice(1);
      return word;
    });
  }

  /** The words of the guide: stems, and for each the word to show in its place. */
  function readWords(words) {
    const forms = words.forms.split(' ');
    const terms = unshorten(split(words.terms));
    return {
      terms: terms,
      forms: terms.map(function (term, i) {
        return forms[i] ? term.slice(0, term.length - digit(forms[i], 0)) + forms[i].slice(1) : term;
      })
    };
  }

  /** A term file's lines: the term, and the text of its values. */
  function readTerms(lines) {
    const ends = lines.map(function (line) { return line.indexOf(' '); });
    return unshorten(lines.map(function (line, i) { return line.slice(0, ends[i]); }))
      .map(function (term, i) { return { term: term, values: lines[i].slice(ends[i] + 1) }; });
  }

  function split(text) {
    return text === '' ? [] : text.split(' ');
  }

  /** What the builder wrote into the head file, made ready once. */
  function prepare(head) {
    return Object.assign({}, head, {
      starts: head.starts.split(' '),
      terms: split(head.terms),
      cards: split(head.cards),
      norms: head.lengths.map(function (text) { return lengthNorms(numbers(text), head); }),
      pipeline: lunr.Pipeline.load(['stemmer'])
    });
  }

  /** BM25's part for the length of a field. */
  function lengthNorms(lengths, head) {
    const average = lengths.reduce(function (sum, n) { return sum + n; }, 0) / head.documents;
    return new Float64Array(lengths).map(function (n) { return head.k1 * (1 - head.b + head.b * (n / average)); });
  }

  /** Number of the term file whose range a text lies in. */
  function fileOf(head, text) {
    return lastUpTo(head.starts, head.terms.length, text);
  }

  /** One term's values: its index, and per field its documents and its scores in them. */
  function readValues(entry, head) {
    const parts = entry.values.split(' ');
    const postings = head.fields.map(function (_, f) { return readPostings(parts[1 + f] || ''); });
    const matches = postings.reduce(function (sum, p) { return sum + p.documents.length; }, 0);
    const idf = Math.log(1 + Math.abs((head.documents - matches + 0.5) / (matches + 0.5)));
    return {
      term: entry.term,
      index: numbers(parts[0])[0],
      fields: postings.map(function (p, f) { return { documents: p.documents, scores: scoresOf(p, idf, head, f) }; })
    };
  }

  function readPostings(text) {
    const list = numbers(text);
    const documents = new Int32Array(list.length), counts = new Int32Array(list.length);
    let length = 0;
    for (let i = 0, next = 0; i < list.length; i++, length++) {
      const number = list[i];
      documents[length] = next + (number >> 1);
      next = documents[length] + 1;
      counts[length] = number % 2 === 1 ? list[++i] + 2 : 1;
    }
    return { documents: documents.subarray(0, length), counts: counts.subarray(0, length) };
  }

  /** BM25 in the builder's order of operations, so that both round alike. */
  function scoresOf(postings, idf, head, f) {
    const documents = postings.documents, counts = postings.counts, norms = head.norms[f];
    const k = head.k1 + 1, boost = head.boosts[f];
    const scores = new Float64Array(documents.length);
    for (let i = 0; i < scores.length; i++) {
      const score = idf * (k * counts[i]) / (norms[documents[i]] + counts[i]) * boost;
      scores[i] = Math.round(score * 1000) / 1000;
    }
    return scores;
  }

  /**
   * The part of the whole index that these terms and documents are, with the same term indexes, so that lunr's sums add up
   * in the same order.
   * @param {object} head
   * @param {object[]} terms as readValues gives them, in the order of their texts
   * @param {ArrayLike<number> | undefined} kept numbers of the documents, rising; without it all, also those that have none of the terms
   */
  function build(head, terms, kept) {
    const vectors = new Map();
    for (let d = 0; !kept && d < head.documents; d++) vectors.set(head.fields[0] + '/' + d, []);
    const postings = new Map(terms.map(function (entry) { return [entry, emptyPosting(entry, head)]; }));
    terms.slice().sort(function (a, b) { return a.index - b.index; }).forEach(function (entry) {
      entry.fields.forEach(function (values, f) {
        const posting = postings.get(entry)[head.fields[f]];
        places(values.documents, kept).forEach(function (at) {
          const d = values.documents[at];
          posting[d] = NOTHING;
          const key = head.fields[f] + '/' + d;
          if (!vectors.has(key)) vectors.set(key, []);
          vectors.get(key).push(entry.index, values.scores[at]);
        });
      });
    });
    return lunr.Index.load({
      version: lunr.version,
      fields: head.fields,
      fieldVectors: [...vectors],
      invertedIndex: terms.map(function (entry) { return [entry.term, postings.get(entry)]; }),
      pipeline: ['stemmer']
    });
  }

  /** Where the kept documents stand among a posting's; few of many are looked up, not all gone through. */
  function places(documents, kept) {
    if (!kept) return documents.map(function (_, at) { return at; });
    const found = [];
    for (let i = 0; i < kept.length; i++) {
      const at = lastUpTo(documents, documents.length, kept[i]);
      if (documents[at] === kept[i]) found.push(at);
    }
    return found;
  }

  /** The last place, of so many in a rising list, whose value is not above the one sought; 0 if none is. */
  function lastUpTo(list, length, sought) {
    let low = 0, high = length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (list[middle] <= sought) low = middle; else high = middle;
    }
    return low;
  }

  function emptyPosting(entry, head) {
    const posting = { _index: entry.index };
    head.fields.forEach(function (field) { posting[field] = {}; });
    return posting;
  }

  guide.searchIndex = {
    numbers: numbers, prepare: prepare, fileOf: fileOf, readTerms: readTerms, readWords: readWords,
    readValues: readValues, build: build
  };
})(globalThis);
