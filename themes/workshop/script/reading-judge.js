/**
 * Judges what an owner measured against a reading of the guide, in whatever unit and on whatever scale the meter shows it.
 * Needs readings.js; draws nothing. Factors come with the page.
 */
(function (root) {
  "use strict";

  /**
   * @typedef {Object<string, [number, number]>} Units by key: factor and offset to the quantity's first unit
   * @typedef {object} Reading
   * @property {string} unit of the limits
   * @property {Units} units
   * @property {number | null} low
   * @property {number | null} high
   * @property {"gauge" | "absolute" | null} scale
   * @property {{ unit: string, units: Units, rows: { key: number, low: number, high: number }[], scale: "linear" | "logOverInverseKelvin" } | null} over
   * @typedef {object} Entered what the owner typed, as text
   * @property {string} value
   * @property {string} unit
   * @property {string} [key]
   * @property {string} [keyUnit]
   * @property {string} [keyDoubt]
   * @property {"gauge" | "absolute"} [shows]
   * @property {string} [altitude] metres
   * @property {string} [ambient] kPa
   * @property {string} percent
   * @property {string} digits
   * @typedef {{ verdict: string, value?: number, key?: number | null, uncertainty?: number, limits?: { low: number | null, high: number | null } }} Judged
   *   in the reading's own unit; verdict is one of pass, tooLow, tooHigh, tooClose, outside, number, needKey
   */

  const readings = root.GuideGen.readings;

  /** How far the air's pressure may lie from the standard atmosphere's, in kPa: weather. Common practice, no source. */
  const WEATHER = 3;

  /**
   * @param {string | undefined} text
   * @returns {number | null} null for what is no number, or could be two: 1,200 is 1200 to some and 1.2 to others
   */
  function number(text) {
    const plain = (text ?? "").trim().replace("−", "-");
    if (!/^[+-]?\d+([.,]\d+)?$/.test(plain) || /^[+-]?\d{1,3},\d{3}$/.test(plain)) return null;
    return Number(plain.replace(",", "."));
  }

  /** What the last digit is worth, from how many stand behind the point. @param {string} text */
  const lastDigit = text => Math.pow(10, -(/[.,](\d+)$/.exec(text.trim())?.[1].length ?? 0));

  /** @param {Units} units @param {string} from @param {string} to @param {number} value */
  const convert = (units, from, to, value) => from === to ? value : (units[from][0] * value + units[from][1] - units[to][1]) / units[to][0];

  /** A width or an uncertainty: no offset moves it. @param {Units} units @param {string} from @param {string} to @param {number} width */
  const convertWidth = (units, from, to, width) => from === to ? width : width * units[from][0] / units[to][0];

  /** To the reading's scale, with what the air's pressure adds to the doubt. @param {Reading} reading @param {Entered} entered @param {number} value @returns {[number, number]} */
  function onScale(reading, entered, value) {
    if (reading.scale === null || entered.shows === undefined || entered.shows === reading.scale) return [value, 0];
    const told = number(entered.ambient);
    const kilopascal = told ?? readings.pressureAt(Math.min(Math.max(number(entered.altitude) ?? 0, -500), 6000));
    const ambient = convert(reading.units, "kPa", reading.unit, kilopascal);
    const doubt = told === null ? convertWidth(reading.units, "kPa", reading.unit, WEATHER) : 0;
    return [reading.scale === "absolute" ? readings.absolute(value, ambient) : readings.gauge(value, ambient), doubt];
  }

  /** @param {Reading} reading @param {Entered} entered @returns {Judged} */
  function judge(reading, entered) {
    const shown = number(entered.value);
    if (shown === null) return { verdict: "number" };
    const meter = readings.meterUncertainty(shown, Math.abs(number(entered.percent) ?? 0), Math.abs(number(entered.digits) ?? 0), lastDigit(entered.value));
    const [value, air] = onScale(reading, entered, convert(reading.units, entered.unit, reading.unit, shown));
    const uncertainty = convertWidth(reading.units, entered.unit, reading.unit, meter) + air;
    if (!reading.over) {
      const limits = { low: reading.low, high: reading.high };
      return { verdict: readings.judge(value, limits, uncertainty), value, key: null, uncertainty, limits };
    }
    const { over } = reading;
    const at = number(entered.key);
    if (at === null) return { verdict: "needKey" };
    const keyUnit = entered.keyUnit ?? over.unit;
    const key = convert(over.units, keyUnit, over.unit, at);
    const doubt = convertWidth(over.units, keyUnit, over.unit, Math.abs(number(entered.keyDoubt) ?? 0));
    const limits = readings.limitsAt(over.rows, over.scale, key, doubt);
    if (limits === null) return { verdict: "outside", value, key };
    return { verdict: readings.judge(value, limits, uncertainty), value, key, uncertainty, limits };
  }

  root.GuideGen.readingJudge = { judge, number };
}(globalThis));
