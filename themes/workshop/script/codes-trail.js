/**
 * Gives each find the status words and the control unit that stand beside it; see codes.js.
 *
 * @typedef {Reported & { start: number, length: number, written: string, certainty: Certainty, words: string[],
 *   module?: string }} Find  words: current, pending, confirmed, stored, permanent, history, intermittent, lamp-on
 * @typedef {Find & { bits: number }} OpenFind  its words still as bits
 * @typedef {{ lead: number, tail: number, broken: boolean, negated: boolean, followsCode: boolean }} Clause
 */
(function () {
  "use strict";

  const { STATUS, CODE, MODULE, FRAME, NEGATES } = GuideGen.codes.inner;
  const CURRENT = 1 << STATUS.indexOf("current"), LAMP_ON = 1 << STATUS.indexOf("lamp-on");

  /** Keeps each code of a control unit once. @param {string} text */
  function findList(text) {
    const finds = /** @type {OpenFind[]} */ ([]);
    /** @type {Map<string, OpenFind>} */
    const seen = new Map();
    const rank = { certain: 0, repaired: 1, guess: 2 };
    return {
      finds,
      /** @param {Reported} reported @param {number} start @param {number} end @param {Certainty} certainty @param {string | undefined} module */
      add({ code, failureType, status }, start, end, certainty, module) {
        const key = [code, failureType, status].join();
        const before = seen.get(key + "," + (module || "")) || (module ? undefined : seen.get(key));
        if (before) {
          if (rank[certainty] < rank[before.certainty]) before.certainty = certainty;
          return before;
        }
        const find = { code, failureType, status, start, length: end - start, written: text.slice(start, end), certainty, words: [], module, bits: 0 };
        finds.push(find);
        seen.set(key + "," + (module || ""), find);
        if (!seen.has(key)) seen.set(key, find);
        return find;
      },
    };
  }

  /** The status words of one clause: before its first foreign word (lead) and since its last (tail). @param {boolean} followsCode */
  function newClause(followsCode) {
    return { lead: 0, tail: 0, broken: false, negated: false, followsCode };
  }
  // "Current" is also what flows in a wire, so it counts only in a clause without foreign words.
  const forPrevious = (/** @type {Clause} */ c) => c.broken && c.followsCode ? c.lead & ~CURRENT : 0;
  const forNext = (/** @type {Clause} */ c) => c.broken ? c.tail & ~CURRENT : 0;
  const alone = (/** @type {Clause} */ c) => c.broken ? 0 : c.lead;

  /** Gives each code the status words and the control unit that stand by it, or in a heading. @param {ReturnType<typeof findList>} list @param {string} text */
  function statusTrail(list, text) {
    let pageStatus = 0;
    /** @type {string | undefined} */
    let pageModule;
    return (/** @type {Line} */ line, /** @type {Match[]} */ matches) => {
      const { runs, folded } = line;
      /** @type {OpenFind | null} */
      let last = null;
      let statusFirst = false, onlyFrame = true, lineStatus = 0, anyStatus = 0;
      /** @type {string | undefined} */
      let lineModule;
      let clause = newClause(false), toPrevious = 0, either = 0, heading = 0, hasCodeWord = false;
      /** @type {string | undefined} */
      let module;

      const punctuate = (/** @type {number} */ from, /** @type {number} */ to) => {
        for (let i = from; i < to; i++) {
          if (' \'"'.includes(folded[i])) continue;
          toPrevious |= forPrevious(clause);
          if (folded[i] === ":") heading |= alone(clause) | forNext(clause);
          else either |= alone(clause);
          clause = newClause(false);
        }
      };
      const takeWord = (/** @type {number} */ i) => {
        const { word, start, end, text: written } = runs[i];
        const status = written === "ON" && i > 0 && /^(MIL|CEL|LAMP|LIGHT)$/.test(runs[i - 1].text) ? LAMP_ON : word.status;
        if (!clause.negated) {
          if (!clause.broken) clause.lead |= status;
          clause.tail |= status;
        }
        anyStatus |= status;
        hasCodeWord = hasCodeWord || (word.kind & CODE) !== 0;
        if (word.kind & MODULE) module = text.slice(start, end);
        else if (!(word.kind & FRAME) && !/^[0-9]{1,3}$/.test(written)) {
          clause.broken = true;
          clause.negated = clause.negated || (word.kind & NEGATES) !== 0;
          clause.tail = 0;
          module = undefined;
          onlyFrame = false;
        }
      };
      const takeCode = (/** @type {Match} */ match) => {
        lineModule = module || lineModule;
        const find = list.add(match, match.start, match.end, match.certainty, lineModule || pageModule);
        let own = forNext(clause) | heading;
        either |= alone(clause);
        toPrevious |= forPrevious(clause);
        if (!last) {
          own |= either;
          statusFirst = own !== 0;
        } else if (statusFirst && !heading && !lineStatus) own |= either;
        else toPrevious |= either;
        if (last) last.bits |= toPrevious;
        if (heading || (!last && hasCodeWord)) lineStatus = own;
        find.bits |= own | lineStatus | pageStatus;
        last = find;
        clause = newClause(true);
        toPrevious = either = heading = 0;
        module = undefined;
        hasCodeWord = false;
      };

      let position = line.start, next = 0;
      for (let i = 0; i < runs.length; i++) {
        const match = next < matches.length && matches[next].first === i ? matches[next++] : null;
        punctuate(position, match ? match.start : runs[i].start);
        if (match) {
          takeCode(match);
          i = match.last;
        } else takeWord(i);
        position = runs[i].end;
      }
      punctuate(position, line.end);
      const rest = toPrevious | forPrevious(clause) | alone(clause) | either;
      if (last) /** @type {OpenFind} */ (last).bits |= rest;
      else if (onlyFrame && (anyStatus || module)) {
        pageStatus = anyStatus;
        pageModule = module || pageModule;
      }
    };
  }

  Object.assign(GuideGen.codes.inner, { findList, statusTrail });
})();
