/**
 * Finds the codes of one line of text; see codes.js.
 *
 * @typedef {{ kind: number, status: number }} Word  kinds and status words as bits
 * @typedef {{ start: number, end: number, text: string, word: Word }} Run  a stretch of letters and digits
 * @typedef {{ runs: Run[], at: (i: number) => string, folded: string, start: number, end: number, words: number }} Line
 * @typedef {Reported & { start: number, end: number, first: number, last: number, certainty: Certainty }} Match  first, last: runs
 */
(function () {
  "use strict";

  const { fromBytes, inner: { LENGTH, isHex, digitsIn, startsLikeCode, readShape } } = GuideGen.codes;

  /** The words that tell the state of a code; a set of them is kept as bits in this order. */
  const STATUS = ["current", "pending", "confirmed", "stored", "permanent", "history", "intermittent", "lamp-on"];
  const [CURRENT, PENDING, CONFIRMED, STORED, PERMANENT, HISTORY, INTERMITTENT] = STATUS.map((_, i) => 1 << i);

  const RAISES = 1, CODE = 2, FAULT = 4, LOWERS = 8, SOFTLY = 16, MODULE = 32, FRAME = 64, OTHER_CODE = 128, NEGATES = 256, PART = 512;
  const REPORT = RAISES | FAULT | FRAME;
  /** @type {[string, number, number?][]} words, kind, status */
  const WORD_ROWS = [
    ["CODE CODES DTC DTCS", REPORT | CODE],
    ["FAULT FAULTS ERROR ERRORS TROUBLE MIL CEL", REPORT],
    ["STORED SAVED", REPORT, STORED],
    ["PENDING", REPORT, PENDING],
    ["CONFIRMED", REPORT, CONFIRMED],
    ["PERMANENT", REPORT, PERMANENT],
    ["CURRENT ACTIVE PRESENT", FRAME, CURRENT],
    ["HISTORY HISTORIC HISTORICAL", FRAME, HISTORY],
    ["INTERMITTENT SPORADIC", FRAME, INTERMITTENT],
    ["ECM PCM ECU TCM TCU ABS SRS BCM EPS HVAC BMS VCU", RAISES | MODULE],
    ["7E8 7E9 7EA 7EB 7EC 7ED 7EE 7EF 0X7E8 0X7E9 0X7EA 0X7EB 0X7EC 0X7ED 0X7EE 0X7EF", MODULE],
    ["MODULE MODULES", RAISES | FRAME],
    ["CONTROL UNIT AND OR IN THE STATUS LAMP LIGHT ON", FRAME],
    ["NO NOT NONE NEVER WITHOUT", NEGATES],
    ["BOLT BOLTS SCREW SCREWS CLIP CLIPS BULB BULBS TYRE TYRES TIRE TIRES TORQUE NM PHONE CONNECTOR CONNECTORS PIN PINS PN QTY", LOWERS],
    ["OIL FUSE FUSES RELAY RELAYS", SOFTLY],
    ["PART PARTS", PART | OTHER_CODE],
    ["PAINT COLOUR COLOR POST ZIP BAR AREA RADIO KEY ENGINE TRIM", OTHER_CODE],
  ];
  /** @type {Map<string, { kind: number, status: number }>} */
  const WORDS = new Map();
  for (const [words, kind, status = 0] of WORD_ROWS)
    for (const word of words.split(" ")) WORDS.set(word, { kind, status });
  const NO_WORD = { kind: 0, status: 0 };


  /** @param {string} token */
  const isAddress = token => token.length > 5 && (token.includes("://") || token.includes("@") || token.startsWith("WWW."));

  /** Cuts a line into runs of letters and digits. @param {string} folded @param {number} start @param {number} end */
  function cutLine(folded, start, end) {
    /** @type {Run[]} */
    const runs = [];
    for (const token of folded.slice(start, end).matchAll(/[^ ]+/g)) {
      if (isAddress(token[0])) continue;
      for (const run of token[0].matchAll(/[\p{L}\p{Nd}_]+/gu)) {
        const from = start + token.index + run.index;
        runs.push({ start: from, end: from + run[0].length, text: run[0], word: WORDS.get(run[0]) || NO_WORD });
      }
    }
    const at = (/** @type {number} */ i) => i >= start && i < end ? folded[i] : "\n";
    return { runs, at, folded, start, end, words: runs.reduce((kinds, _, i) => kinds | weigh(runs, at, i), 0) };
  }

  /** A paint code is no trouble code, and part of the time no part number. @param {Run[]} runs @param {(i: number) => string} at @param {number} i */
  function weigh(runs, at, i) {
    const { text, start, word: { kind } } = runs[i];
    if (kind & CODE && i > 0 && runs[i - 1].word.kind & OTHER_CODE) return LOWERS;
    if (kind & PART && i + 1 < runs.length && /^(NO|NR|NUMBER)$|[0-9]/.test(runs[i + 1].text)) return LOWERS;
    if (/^[0-9].*NM$/.test(text)) return LOWERS;
    return text === "N" && i > 0 && at(start - 1) === "/" && runs[i - 1].text === "P" ? LOWERS : kind;
  }

  /** @param {Line} line @param {boolean} isBox @returns {Match[]} */
  function matchLine(line, isBox) {
    const { runs, at, words } = line;
    /** @type {Match[]} */
    let matches = [];
    if (!isBox && isAboutSomethingElse(line)) return matches;
    matchRuns(tryMatch);
    if (!matches.length && (isBox || words & FAULT)) matchRuns(tryGuess);
    return matches;

    /** @param {(i: number) => Match | null} match */
    function matchRuns(match) {
      for (let i = 0; i < runs.length; i++) {
        const found = match(i);
        if (found) {
          matches.push(found);
          i = found.last;
        }
      }
    }

    /** @param {number} i @returns {Match | null} */
    function tryMatch(i) {
      const { text, start } = runs[i];
      if (text.startsWith("0X") && (text.length === 6 || text.length === 8)) return tryRaw(i, text.slice(2), start);
      if (at(start - 1) === "$" && (text.length === 4 || text.length === 6)) return tryRaw(i, text, start - 1);
      if (!startsLikeCode(text[0])) return null;
      if (text.length === 1) return tryApart(i);
      const shape = text.length >= 5 && text.length <= 7 && readShape(text.slice(0, LENGTH));
      return shape && leftIsFree(i) ? finish({ ...shape, start, end: runs[i].end, first: i, last: i }, text.slice(LENGTH)) : null;
    }

    /** The letter, a gap, then the digits. @param {number} i */
    function tryApart(i) {
      const letter = runs[i], digits = runs[i + 1];
      if (!digits || digits.text.length < 4 || digits.text.length > 6 || !isGap(letter.end, digits.start)) return null;
      const shape = readShape(letter.text + digits.text.slice(0, 4));
      return shape && leftIsFree(i) && mayBeApart(i)
        ? finish({ ...shape, start: letter.start, end: digits.end, first: i, last: i + 1 }, digits.text.slice(4)) : null;
    }

    /** @param {number} from @param {number} to */
    function isGap(from, to) {
      return to - from <= 3 && /^( ?-? ?)$/.test(line.folded.slice(from, to));
    }

    /** Without a word about faults, "plan B 2000" is no code. @param {number} i */
    function mayBeApart(i) {
      return isBox || words & RAISES || runs.length === 2 || (runs[i + 1].text[0] === "0" && (runs[i].text === "P" || i === 0));
    }

    /** Two bytes as sent, and perhaps a failure type. @param {number} i @param {string} digits @param {number} start */
    function tryRaw(i, digits, start) {
      // A price is made of decimal digits and does not begin with a zero.
      const mayBe = isBox || words & CODE || (words & FAULT && (digits[0] === "0" || digitsIn(digits) < digits.length));
      if (!mayBe || !isHex(digits)) return null;
      const code = fromBytes(parseInt(digits.slice(0, 2), 16), parseInt(digits.slice(2, 4), 16));
      return finish({ code, failureType: digits.slice(4) || undefined, start, end: runs[i].end, first: i, last: i, certainty: "certain" }, "");
    }

    /** @param {number} i @returns {Match | null} */
    function tryGuess(i) {
      const { text, start, end } = runs[i];
      if (text.length !== 4 || !leftIsFree(i)) return null;
      const shape = startsLikeCode(text[0]) ? digitsIn(text.slice(1)) >= 2 && readShape(text[0] + "0" + text.slice(1))
        : (isBox || followsCodeWord(i)) && digitsIn(text) >= 3 && readShape("P" + text);
      return shape ? finish({ code: shape.code, start, end, first: i, last: i, certainty: "guess" }, "") : null;
    }

    /** "codes 0299 and 0401". @param {number} i */
    function followsCodeWord(i) {
      let before = i - 1;
      if (before > 0 && /^(AND|OR)$/.test(runs[before].text)) before--;
      return before >= 0 && (runs[before].word.kind & CODE || (matches.length && matches[matches.length - 1].last === before));
    }

    /** Part numbers, prices and addresses stick to what stands before them. @param {number} i */
    function leftIsFree(i) {
      const start = runs[i].start, left = at(start - 1);
      if (isBox || !"$#/.-=\\%".includes(left)) return true;
      if ((left === "/" || left === "-") && matches.length && matches[matches.length - 1].end === start - 1) return true;
      if (left === "-") return i === 0;
      return left === "." && (at(start - 2) === "." || (i === 1 && runs[0].text.length <= 2 && digitsIn(runs[0].text) > 0));
    }

    /** Takes what hangs on behind a code. @param {Match} match @param {string} glued @returns {Match | null} */
    function finish(match, glued) {
      if (glued.length === 2 && isHex(glued)) match.failureType = glued;
      else if (glued !== "" && glued !== "S") return null;
      if (!match.failureType && !glued) takeSuffix(match, "failureType");
      if (match.failureType) takeSuffix(match, "status");
      if (rightIsFree(match)) return match;
      return isBox && match.certainty !== "guess" ? { ...match, certainty: "repaired" } : null;
    }

    /** @param {number} position @param {number} from */
    function runAt(position, from) {
      while (from < runs.length && runs[from].start < position) from++;
      return from < runs.length && runs[from].start === position ? from : -1;
    }

    /** Two digits behind a hyphen or colon, or a blank if a bracket follows. @param {Match} match @param {'failureType' | 'status'} what */
    function takeSuffix(match, what) {
      const i = runAt(match.end + 1, match.last);
      if (i < 0 || runs[i].text.length !== 2 || !isHex(runs[i].text)) return;
      const gap = at(match.end), end = runs[i].end;
      const bracket = at(end) === " " ? at(end + 1) : at(end);
      if (gap !== "-" && gap !== ":" && !(what === "failureType" && gap === " " && (bracket === "[" || bracket === "("))) return;
      match[what] = runs[i].text;
      match.end = end;
      match.last = i;
    }

    /** @param {Match} match */
    function rightIsFree(match) {
      const i = runAt(match.end + 1, match.last);
      if (i < 0) return true;
      const next = runs[i].text;
      switch (at(match.end)) {
        case "-": return /^[^0-9]{3,}$/.test(next) || ((next.length === 5 || next.length === 7) && readShape(next.slice(0, LENGTH)) !== null);
        case "/": return !/^[0-9]/.test(next) || (next.length === 4 && isHex(next));
        case ".": return !/^[0-9]/.test(next);
        default: return true;
      }
    }
  }

  /** "P0522 oil pressure" is a line of a report; "oil P0522" is not. @param {Line} line */
  function isAboutSomethingElse({ words, runs }) {
    if (words & RAISES || !(words & (LOWERS | SOFTLY))) return false;
    return (words & LOWERS) !== 0 || !(runs[0].text.length >= LENGTH && runs[0].text[0] === "P");
  }

  Object.assign(GuideGen.codes.inner, { STATUS, CODE, MODULE, FRAME, NEGATES, cutLine, matchLine });
})();
