/**
 * Looks codes up: the guide's own and every standard one, exact or mistyped. Needs codes*.js, data/codes.js and
 * data/standard-codes.js; what a standard code means comes from a small file per group, loaded when it is asked for.
 */
(function (root) {
  "use strict";

  /**
   * @typedef {{ name: string, href: string, likelihood: string }} FaultLink
   * @typedef {{ code: string, meaning: string, href: string, cases: number, faults: FaultLink[] }} GuideCode
   * @typedef {{ code: string, certainty: 'certain' | 'repaired' | 'guess', own: GuideCode | undefined, assigned: boolean }} Looked
   */

  const GuideGen = root.GuideGen = root.GuideGen || {};
  /** @type {Map<string, GuideCode>} */
  const own = new Map(GuideGen.data.codes.map((/** @type {GuideCode} */ c) => [c.code, c]));
  const bits = Uint8Array.from(atob(GuideGen.data.standardCodes), c => c.charCodeAt(0));
  /** @type {Map<string, Record<string, string>>} */
  const groups = new Map();

  /** The 16 bits of a code: two of letter in the order P, C, B, U, then the rest. @param {string} code */
  const valueOf = code => "PCBU".indexOf(code[0]) << 14 | parseInt(code.slice(1), 16);

  /** @param {string} code */
  const isAssigned = code => (bits[valueOf(code) >> 3] >> (valueOf(code) & 7) & 1) === 1;

  /** @param {string} code */
  const standing = code => ({ assigned: isAssigned(code), covered: own.has(code), cases: own.get(code)?.cases ?? 0 });

  /** @param {string} code @param {Looked['certainty']} certainty @returns {Looked} */
  const looked = (code, certainty) => ({ code, certainty, own: own.get(code), assigned: isAssigned(code) });

  /**
   * The codes a short text may mean, surest first: what it says as it stands, then what a slip may have made of it.
   * @param {string} text
   * @param {number} [limit]
   * @returns {Looked[]}
   */
  function find(text, limit = 5) {
    const read = GuideGen.codes.read(text, "lookUpBox")
      .map((/** @type {{ code: string, certainty: Looked['certainty'] }} */ f) => looked(f.code, f.certainty));
    const isSure = read.some((/** @type {Looked} */ f) => f.own || f.assigned);
    const meant = isSure || !looksLikeCode(text) ? [] : GuideGen.codes.suggest(text, standing, limit)
      .map((/** @type {{ code: string, slip: string }} */ s) => looked(s.code, s.slip === "none" ? "certain" : "guess"));
    const seen = new Set();
    return [...read, ...meant].filter(f => !seen.has(f.code) && seen.add(f.code)).slice(0, limit);
  }

  /** One word with digits in it, about as long as a code. @param {string} text */
  const looksLikeCode = text => /^\s*[A-Za-z$]?[\s-]?[0-9A-Za-z]{3,6}\s*$/.test(text) && /[0-9].*[0-9]/.test(text);

  /**
   * Where a code is explained, relative to the site's root.
   * @param {string} code
   * @returns {string | null} null for a code that neither the guide nor the standard knows
   */
  const hrefOf = code => own.get(code)?.href
    ?? (isAssigned(code) ? "codes/" + code.slice(0, 3).toLowerCase() + ".html#" + code.toLowerCase() : null);

  /**
   * @param {string} code
   * @returns {Promise<string | null>}
   */
  function meaningOf(code) {
    const entry = own.get(code);
    if (entry) return Promise.resolve(entry.meaning);
    if (!isAssigned(code)) return Promise.resolve(null);
    const group = code.slice(0, 3);
    return GuideGen.load("data/codes/" + group.toLowerCase() + ".js").then(() => groups.get(group)?.[code.slice(3)] ?? null);
  }

  /** @param {string} code */
  const isMakers = code => /^(P1|P3[0-3]|[CBU][12])/.test(code);

  GuideGen.look = {
    find, isMakers, hrefOf, meaningOf, isAssigned,
    /** @param {string} group @param {Record<string, string>} meanings */
    take: (group, meanings) => groups.set(group, meanings),
    /** @param {string} code */
    own: code => own.get(code),
  };
}(globalThis));
