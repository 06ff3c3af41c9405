/** An owner's case as the text of a file of the guide, and what in it could tell who wrote it. Draws nothing. */
(function (root) {
  "use strict";

  /**
   * @typedef {object} Case
   * @property {string} date year-month-day
   * @property {string} variant
   * @property {string} distance
   * @property {Object<string, string>} codes status by code
   * @property {{ present: string[], absent: string[] }} symptoms
   * @property {string} found
   * @property {string[]} changed
   * @property {string[]} tried
   * @property {string} minutes
   * @property {string} spend
   * @property {Object<string, string | boolean>} proof facts by their key in the file
   * @property {string} days
   * @property {string} driven
   * @property {string} note
   */

  /** @param {string} text @param {RegExp} form */
  const count = (text, form) => (text.match(form) ?? []).length;
  /** @param {string} text */
  const digits = text => count(text, /\d/g);

  /** Short forms of the trade that stand where a plate has its district. */
  const TRADE_WORDS = /^(OBD|CAN|LIN|ABS|EGR|DPF|GPS|LED|USB|PIN|HP|NOX|SAE|ISO|DOT|API)[- ]/;

  /** What may follow "my wife" and is no name. */
  const CALENDAR = / (Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday|January|February|March|April|May|June|July|August|September|October|November|December|Christmas|Easter)$/;

  /**
   * What a text looks like that leads to a person, by the same patterns as the tool's inspection of cases; VINs have the form of
   * ISO 3779. Patterns only: they miss some, so the page asks as well.
   * @type {[string, RegExp, (text: string) => boolean][]}
   */
  const IDENTIFYING = [
    ["mail", /[A-Za-z0-9._%+-]{1,64}@[A-Za-z0-9-]{1,63}(\.[A-Za-z0-9-]{2,63}){1,4}/g, () => true],
    ["vin", /(?<![A-Za-z0-9-])[A-HJ-NPR-Za-hj-npr-z0-9]{17}(?![A-Za-z0-9-])/g, text => digits(text) >= 3 && count(text, /[a-z]/gi) >= 2],
    ["phone", /(?<![A-Za-z0-9+])(\+|00)[1-9][0-9]{0,2}([ /().-]{0,2}[0-9]{1,12}){1,6}/g, text => digits(text) >= 8 && digits(text) <= 15],
    ["phone", /(?<![A-Za-z0-9.,/-])0[1-9][0-9]{1,4}[ /-][0-9]{3,8}([ -][0-9]{2,6})?(?![A-Za-z0-9-])/g, text => digits(text) >= 9 && digits(text) <= 12],
    ["phone", /(?<![\p{L}\p{N}_])(tel|telephone|phone|mobile|call|ring|text)( me| us)?( on| at| under)?[:. ]{1,3}\+?[0-9][0-9 /()-]{4,18}[0-9]/giu, text => digits(text) >= 6],
    ["plate", /(?<![\p{L}\p{N}_])([Pp]late|[Rr]egistration)( number)?( is| was|:)? [A-Z0-9]{1,4}([ -]?[A-Z0-9]{1,4}){1,2}(?![\p{L}\p{N}_])/gu, text => digits(text) > 0 && count(text, /[A-Z]/g) >= 2],
    ["plate", /(?<![A-Za-z0-9-])([A-Z]{2}[0-9]{2} [A-Z]{3}|[A-Z]{2}-[0-9]{3}-[A-Z]{2}|[A-Z]{1,3}-[A-Z]{1,2}[ -]?[0-9]{2,4})(?![A-Za-z0-9-])/g, text => !TRADE_WORDS.test(text)],
    ["name", /(?<![\p{L}\p{N}_])(Mr|Mrs|Ms|Miss|Herr|Frau)\.? \p{Lu}\p{Ll}{1,30}/gu, () => true],
    ["name", /(?<![\p{L}\p{N}_])([Mm]y|[Oo]ur) (mechanic|friend|neighbour|brother|sister|son|daughter|wife|husband|colleague|mate|boss|uncle|aunt|father|mother|cousin) \p{Lu}\p{Ll}{2,30}/gu, text => !CALENDAR.test(text)],
  ];

  /** A text in double quotes, as YAML reads it: its escapes are those of JSON. @param {string} text */
  const quoted = text => JSON.stringify(text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, " ").trim());

  /** @param {string} text @returns {string | null} a number as the file writes it; null for anything else */
  function number(text) {
    const plain = text.trim().replace(/(?<=\d)[ \u00a0](?=\d{3}\b)/g, "").replace(/^(\d+),(\d{1,2})$/, "$1.$2").replace(/^(\d{1,3}),(\d{3})$/, "$1$2");
    return /^\d+(\.\d+)?$/.test(plain) ? plain : null;
  }

  /** @param {string} key @param {string[]} lines */
  const list = (key, lines) => lines.length === 0 ? [] : [`${key}:`, ...lines.map(line => "  - " + line)];

  /** @param {string} key @param {string} text */
  const figure = (key, text) => number(text) === null ? [] : [`${key}: ${number(text)}`];

  /** @param {Case} c @returns {string[]} */
  function proof(c) {
    const facts = Object.entries(c.proof).filter(([, fact]) => fact !== "" && fact !== false && fact !== "0").map(([key, fact]) => `  ${key}: ${fact}`);
    const watched = [...figure("days", c.days), ...figure("distance", c.driven)].filter(line => !line.endsWith(": 0"));
    if (watched.length > 0) facts.push(`  follow-up: { ${watched.join(", ")} }`);
    return facts.length === 0 ? ["proof: { codes-after: unread }"] : ["proof:", ...facts];
  }

  /** @param {Case} c @returns {string} */
  function write(c) {
    const codes = Object.entries(c.codes).map(([code, status]) => `${code}: ${status}`);
    const noticed = Object.entries(c.symptoms).filter(([, slugs]) => slugs.length > 0).map(([key, slugs]) => `${key}: [${slugs.join(", ")}]`);
    return [
      `date: ${c.date}`,
      `variant: ${c.variant}`,
      ...figure("distance", c.distance),
      ...(codes.length > 0 ? [`codes: { ${codes.join(", ")} }`] : []),
      ...(noticed.length > 0 ? [`symptoms: { ${noticed.join(", ")} }`] : []),
      `found: ${c.found}`,
      ...list("changed", c.changed.map(quoted)),
      ...list("tried", c.tried.map(what => `{ what: ${quoted(what)} }`)),
      ...figure("minutes", c.minutes),
      ...figure("spend", c.spend),
      ...proof(c),
      ...(c.note.trim() === "" ? [] : [`note: ${quoted(c.note)}`]),
      "",
    ].join("\n");
  }

  /** From left to right; of two that overlap the first kind of the table. @param {string} text @returns {{ kind: string, text: string }[]} */
  function telling(text) {
    /** @type {{ kind: string, text: string, start: number, end: number }[]} */
    const found = [];
    for (const [kind, form, holds] of IDENTIFYING) {
      for (const match of text.matchAll(form)) {
        const [start, end] = [match.index, match.index + match[0].length];
        if (holds(match[0]) && found.every(f => start >= f.end || end <= f.start)) found.push({ kind, text: match[0], start, end });
      }
    }
    return found.sort((a, b) => a.start - b.start).map(({ kind, text: written }) => ({ kind, text: written }));
  }

  /** @param {Case} c */
  const identifying = c => [...c.changed, ...c.tried, c.note].flatMap(telling);

  /** @param {Case} c @returns {string[]} keys of what has to be filled in before there is a file */
  const missing = c => [
    ...(/^\d{4}-\d\d-\d\d$/.test(c.date) ? [] : ["date"]),
    ...(number(c.distance) === null ? ["distance"] : []),
    ...(c.variant === "" ? ["variant"] : []),
    ...(c.found === "" ? ["found"] : []),
  ];

  /** @param {Case} c */
  const nameOf = c => `${c.date.slice(0, 7)}-${c.variant}-${c.found}.yml`;

  root.GuideGen = root.GuideGen || {};
  root.GuideGen.caseFile = { write, identifying, missing, nameOf };
}(globalThis));
