// Judges a reading: tables over temperature, gauge and absolute pressure, three outcomes near a limit. The same
// numbers as the build.
(function (root) {
  "use strict";

  /**
   * @typedef {"linear"|"logOverInverseKelvin"} Scale the second: ln of the value straight over 1/T, T in kelvin
   * @typedef {{key: number, value: number}} TableRow
   * @typedef {{key: number, low: number, high: number}} LimitRow
   * @typedef {{low: number|null, high: number|null}} Limits null is open
   * @typedef {"pass"|"tooClose"|"tooLow"|"tooHigh"} Verdict
   */

  const ZERO_CELSIUS = 273.15;

  /** @param {Scale} scale */
  const curved = (scale) => scale === "logOverInverseKelvin";

  /** @param {Scale} scale @param {number} key */
  const scaledKey = (scale, key) => (curved(scale) ? 1 / (key + ZERO_CELSIUS) : key);

  /** @param {Scale} scale @param {number} value */
  const scaledValue = (scale, value) => (curved(scale) ? Math.log(value) : value);

  /** @param {number} x @param {number[]} from @param {number[]} to each x and y */
  const between = (x, from, to) => from[1] + (to[1] - from[1]) * (x - from[0]) / (to[0] - from[0]);

  /** @param {TableRow[]} rows */
  const upwards = (rows) => rows.slice().sort((a, b) => a.key - b.key);

  /**
   * @param {TableRow[]} rows @param {Scale} scale @param {number} key
   * @returns {number|null} null outside the table: nothing is extrapolated
   */
  function valueAt(rows, scale, key) {
    const table = upwards(rows);
    const point = (/** @type {TableRow} */ row) => [scaledKey(scale, row.key), scaledValue(scale, row.value)];
    for (let i = 0; i < table.length; i++) {
      if (table[i].key === key) return table[i].value;
      if (i + 1 < table.length && key > table[i].key && key < table[i + 1].key) {
        const found = between(scaledKey(scale, key), point(table[i]), point(table[i + 1]));
        return curved(scale) ? Math.exp(found) : found;
      }
    }
    return null;
  }

  /**
   * @param {LimitRow[]} rows @param {Scale} scale @param {number} key @param {number} keyUncertainty
   * @returns {Limits|null} the widest that any key within the uncertainty allows; null outside the table
   */
  function limitsAt(rows, scale, key, keyUncertainty) {
    const low = rows.map((row) => ({ key: row.key, value: row.low }));
    const high = rows.map((row) => ({ key: row.key, value: row.high }));
    const from = key - keyUncertainty;
    const to = key + keyUncertainty;
    const keys = [from, to, ...rows.map((row) => row.key).filter((k) => k > from && k < to)];
    const lows = keys.map((k) => valueAt(low, scale, k));
    const highs = keys.map((k) => valueAt(high, scale, k));
    if (lows.includes(null)) return null;
    return { low: Math.min(...lows), high: Math.max(...highs) };
  }

  /**
   * @param {number} value @param {Limits} limits @param {number} uncertainty of the reading, in its unit
   * @returns {Verdict}
   */
  function judge(value, limits, uncertainty) {
    const low = limits.low === null ? -Infinity : limits.low;
    const high = limits.high === null ? Infinity : limits.high;
    if (value < low - uncertainty) return "tooLow";
    if (value > high + uncertainty) return "tooHigh";
    return value < low + uncertainty || value > high - uncertainty ? "tooClose" : "pass";
  }

  /** @param {number} reading @param {number} percent of it @param {number} digits @param {number} digit worth of the last */
  const meterUncertainty = (reading, percent, digits, digit) => Math.abs(reading) * percent / 100 + digits * digit;

  /** @param {number} metres @returns {number} kPa in the standard atmosphere (ISO 2533:1975) */
  const pressureAt = (metres) => 101.325 * Math.pow(1 - 2.25577e-5 * metres, 5.25588);

  /** @param {number} gauge @param {number} ambient in the same unit */
  const absolute = (gauge, ambient) => gauge + ambient;

  /** @param {number} pressure absolute @param {number} ambient in the same unit */
  const gauge = (pressure, ambient) => pressure - ambient;

  root.GuideGen = root.GuideGen || {};
  root.GuideGen.readings = { valueAt, limitsAt, judge, meterUncertainty, pressureAt, absolute, gauge };
})(typeof self === "object" ? self : globalThis);
