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

  /**
   * What a text looks like that leads to a person: form of a VIN by ISO 3779 (17 places, no I, O, Q, with a digit in it), an
   * address for mail, a telephone number, a registration plate. Plates: common practice, no source.
   * @type {[string, RegExp][]}
   */
  const IDENTIFYING = [
    ["vin", /\b(?=[A-HJ-NPR-Z0-9]*\d)(?=[A-HJ-NPR-Z0-9]*[A-HJ-NPR-Z])[A-HJ-NPR-Z0-9]{17}\b/gi],
    ["mail", /[^\s@]+@[^\s@]+\.[a-z]{2,}/gi],
    ["phone", /(?<![\w.])(?:\+|00?)[1-9](?:[\s()/.-]?\d){6,13}(?!\w)/g],
    ["plate", /\b(?:[A-Z]{1,3}-[A-Z]{1,2}\s?\d{1,4}|[A-Z]{2}\d{2}\s?[A-Z]{3}|[A-Z]{2}-\d{3}-[A-Z]{2})\b/g],
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

  /** @param {Case} c @returns {{ kind: string, text: string }[]} */
  const identifying = c => [...c.changed, ...c.tried, c.note].flatMap(text =>
    IDENTIFYING.flatMap(([kind, form]) => [...text.matchAll(form)].map(match => ({ kind, text: match[0] }))));

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
