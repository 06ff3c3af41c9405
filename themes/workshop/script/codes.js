/**
 * Trouble codes: their text, their bytes and their slips. The files codes-*.js build on it and are loaded behind it, in the
 * order line, trail, raw, read, suggest. Together they read what an owner types or pastes exactly as the build does: one set
 * of rows tests both. They never throw on a text, take linear time, know no meanings and touch no page.
 *
 * @typedef {{ code: string, failureType?: string, status?: string }} Reported  hexadecimal, upper case
 * @typedef {'certain' | 'repaired' | 'guess'} Certainty
 */
(function (root) {
  "use strict";

  const GuideGen = root.GuideGen = root.GuideGen || {};
  const LENGTH = 5;

  /** @type {Record<string, string>} */
  const LOOK_ALIKES = {};
  /** @param {string} from @param {(i: number) => string} to */
  const alike = (from, to) => [...from].forEach((c, i) => { LOOK_ALIKES[c] = to(i); });
  alike("АВСЕОРІавсеоріΑΒΕΟΡΙαβεορι", i => "ABCEOPIABCEOPIABEOPIABEOPI"[i]);
  alike("\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFE63", () => "-");
  alike("\t\v\f\u0085\u00A0\u2007\u2009\u202F\u205F\u3000", () => " ");
  LOOK_ALIKES["\r"] = "\n";

  /** @param {string} text */
  const fold = text => text.replace(/[^ -`{-~\n]/g, c => {
    if (c >= "a" && c <= "z") return c.toUpperCase();
    if (c >= "\uFF01" && c <= "\uFF5E") return String.fromCharCode(c.charCodeAt(0) - 0xFEE0).toUpperCase();
    if (c >= "\uD800" && c <= "\uDFFF") return "\uFFFD"; // Half of a character beyond the basic plane.
    return LOOK_ALIKES[c] || c;
  });
  const isHex = (/** @type {string} */ text) => /^[0-9A-F]+$/.test(text);
  const digitsIn = (/** @type {string} */ text) => text.length - text.replace(/[0-9]/g, "").length;
  const startsLikeCode = (/** @type {string} */ c) => c === "P" || c === "C" || c === "B" || c === "U";
  const hex = (/** @type {number} */ value, digits = 2) => value.toString(16).toUpperCase().padStart(digits, "0");

  /** Bytes to text: two bits of letter in the order P, C, B, U, two of the first digit. @param {number} high @param {number} low */
  const fromBytes = (high, low) => "PCBU"[high >> 6] + ((high >> 4) & 3) + hex(high & 15, 1) + hex(low);

  /** The five characters and nothing else; null otherwise. @param {string} text @returns {string | null} */
  const parse = text => /^[PCBU][0-3][0-9A-F]{3}$/i.test(text) ? text.toUpperCase() : null;

  /** The standard's own codes: P0, P2, P34 to P3F, B0, C0, U0 and U3. @param {string} code */
  const isStandard = code => code[1] === "0" || code.startsWith("P2") || code.startsWith("U3") || (code.startsWith("P3") && code[2] >= "4");

  /** @param {string} text five folded characters @returns {{ code: string, certainty: Certainty } | null} */
  function readShape(text) {
    if (parse(text)) return { code: text, certainty: "certain" };
    const mended = text[0] + text.slice(1).replace(/O/g, "0").replace(/[IL]/g, "1");
    return digitsIn(text.slice(1)) >= 2 && parse(mended) ? { code: mended, certainty: "repaired" } : null;
  }

  GuideGen.codes = { parse, fromBytes, inner: { LENGTH, fold, isHex, digitsIn, startsLikeCode, hex, isStandard, readShape } };
})(/** @type {any} */ (typeof globalThis === "undefined" ? self : globalThis));
