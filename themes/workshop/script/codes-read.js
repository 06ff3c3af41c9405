/**
 * Reads whole texts: prose, reports of a code reader, the bytes of a bus; see codes.js.
 */
(function () {
  "use strict";

  const { LENGTH, STATUS, NOISE, fold, readShape, cutLine, matchLine, findList, statusTrail, readHexLine, assemble, decode } = GuideGen.codes.inner;

  /**
   * @param {string} text
   * @param {'freeText' | 'lookUpBox'} place  the box asks for a code, so what is typed is meant as one
   * @returns {{ finds: Find[], answers: Answer[] }} positions count in UTF-16 units
   */
  function readPage(text, place) {
    const folded = fold(text), isBox = place === "lookUpBox";
    const list = findList(text), trail = statusTrail(list, text);
    /** @type {Answer[]} */
    const answers = [];
    /** @type {HexLine[]} */
    let block = [];
    let start = 0;
    for (const whole of folded.split("\n")) {
      const end = start + whole.length;
      const bytes = readHexLine(folded, start, end);
      if (bytes) block.push(bytes);
      else {
        if (!NOISE.test(whole)) closeBlock();
        readText(start, end);
      }
      start = end + 1;
    }
    closeBlock();
    if (isBox && !list.finds.length && !answers.length) readAsOneCode();
    return { finds: list.finds.map(({ bits, ...find }) => ({ ...find, words: STATUS.filter((_, i) => bits & (1 << i)) })), answers };

    /** @param {number} from @param {number} to */
    function readText(from, to) {
      const line = cutLine(folded, from, to);
      trail(line, matchLine(line, isBox));
    }

    /** Bytes that are no answer may still be words. */
    function closeBlock() {
      const found = assemble(block).map(decode).filter(answer => answer !== null);
      if (!found.length) block.forEach(bytes => readText(bytes.start, bytes.end));
      for (const answer of /** @type {Answer[]} */ (found)) {
        answers.push(answer);
        const bits = 1 << STATUS.indexOf(answer.service);
        for (const code of [...answer.codes, ...answer.other])
          list.add(code, code.start, code.end, answer.certainty, answer.source).bits |= STATUS.includes(answer.service) ? bits : 0;
      }
      block = [];
    }

    /** In a box that asks for a code, only the letters and digits count. */
    function readAsOneCode() {
      const characters = [...folded.matchAll(/[\p{L}\p{Nd}]/gu)];
      const shape = characters.length === LENGTH && readShape(characters.map(c => c[0]).join(""));
      if (shape) list.add({ code: shape.code }, characters[0].index, characters[4].index + 1, "repaired", undefined);
    }
  }

  /**
   * @param {string} text
   * @param {'freeText' | 'lookUpBox'} place
   * @returns {Find[]} in the order of the text, each code of a control unit once
   */
  GuideGen.codes.read = (text, place) => readPage(text, place).finds;
  GuideGen.codes.readPage = readPage;
})();
