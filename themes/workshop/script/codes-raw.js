/**
 * Reads the bytes that control units and adapters send; see codes.js.
 *
 * @typedef {{ service: string, source?: string, codes: RawCode[], other: RawCode[], certainty: Certainty, complete: boolean,
 *   refusal?: [number, number] }} Answer  service: stored, pending, permanent, by-status, refused
 * @typedef {Reported & { start: number, end: number }} RawCode
 */
(function () {
  "use strict";

  const { fromBytes, inner: { isHex, isStandard, hex } } = GuideGen.codes;

  /** @typedef {{ value: number, start: number }} Byte */
  /** @typedef {{ header: string, index: number, announced: number, bytes: Byte[], start: number, end: number, isBareNumber: boolean }} HexLine */
  /** @typedef {{ source?: string, framing: '' | 'can' | 'pairs', expected: number, bytes: Byte[], next: number, doubtful: boolean }} Message */
  /** @type {Record<number, string>} */
  const SERVICES = { 0x43: "stored", 0x47: "pending", 0x4A: "permanent", 0x59: "by-status", 0x7F: "refused" };
  const NOISE = /^ *($|[>?]|SEARCHING|BUS INIT|NO DATA|STOPPED|OK|BUFFER FULL|CAN ERROR|BUS ERROR|DATA ERROR|UNABLE TO CONNECT)/;
  const PADDING = new Set([0x00, 0x55, 0xAA, 0xCC, 0xFF]);
  const isPadding = (/** @type {Byte[]} */ bytes) => bytes.every(b => PADDING.has(b.value));

  /** A line of nothing but bytes and what stands before them; null otherwise. @param {string} folded @param {number} start @param {number} end @returns {HexLine | null} */
  function readHexLine(folded, start, end) {
    const whole = folded.slice(start, end);
    const skip = (/^(SEARCHING[ .>]*|[ >]*)/.exec(whole) || [""])[0].length;
    const text = whole.slice(skip).replace(/[ >]+$/, "");
    if (!/^[0-9A-FX: ]+$/.test(text)) return null;
    /** @type {HexLine} */
    const line = { header: "", index: -1, announced: -1, bytes: [], start, end, isBareNumber: false };
    let hasRow = false, isFirst = true;
    for (const { 0: token, index } of text.matchAll(/[^ ]+/g)) {
      const from = start + skip + index;
      if (!(isFirst && takeFirst(token, from)) && !takeBytes(token, from)) return null;
      isFirst = false;
    }
    const [a, b] = line.bytes;
    if (!line.header && line.index < 0 && line.bytes.length >= 5 && a.value === 0x18 && (b.value === 0xDA || b.value === 0xDB))
      line.header = line.bytes.splice(0, 4).map(x => hex(x.value)).join("");
    line.isBareNumber = hasRow && !line.header && !/[A-X]/.test(text);
    return line;

    /** A header, a frame number or a length. @param {string} token @param {number} from */
    function takeFirst(token, from) {
      if (/^[0-9A-F]:$/.test(token)) {
        line.index = parseInt(token, 16);
        return true;
      }
      if (!/^[0-9A-F]{3}$|^7([0-9A-F]{2})+$/.test(token)) return false;
      if (text.length === 3) line.announced = parseInt(token, 16);
      else line.header = token.slice(0, 3);
      return token.length === 3 || takeBytes(token.slice(3), from + 3);
    }

    /** @param {string} token @param {number} from @returns {boolean} */
    function takeBytes(token, from) {
      if (token.length === 4 && token.startsWith("0X")) return takeBytes(token.slice(2), from + 2);
      if (token.length % 2 || !isHex(token)) return false;
      hasRow = hasRow || token.length > 2;
      for (let i = 0; i < token.length; i += 2) line.bytes.push({ value: parseInt(token.slice(i, i + 2), 16), start: from + i });
      return true;
    }
  }

  /** Puts messages together, one reassembly per header. @param {HexLine[]} block @returns {Message[]} */
  function assemble(block) {
    /** @type {Message[]} */
    const messages = [];
    /** @type {Map<string, Message>} */
    const open = new Map();
    /** @type {number[]} */
    const announced = [];
    /** @type {Message[][]} */
    const waiting = Array.from({ length: 16 }, () => []);
    const taken = new Array(16).fill(0);
    let announcedTaken = 0;
    block.forEach(take);
    return messages;

    /** @param {HexLine} line */
    function take({ header, index, announced: length, bytes, isBareNumber }) {
      if (length >= 0) announced.push(length);
      else if (index >= 0) takeNumbered(index, bytes);
      else if (header) {
        if (/^7E[89A-F]$|^18DAF1/.test(header)) takeFrame(header, bytes);
      } else if (!takeOldBus(bytes) && !takeFrameWithoutHeader(bytes))
        begin("", "", bytes.length, bytes, isBareNumber);
    }

    /** @param {string} source @param {Message['framing']} framing @param {number} expected @param {Byte[]} bytes */
    function begin(source, framing, expected, bytes, doubtful = false) {
      /** @type {Message} */
      const message = { source: source || undefined, framing, expected, bytes: bytes.slice(0, expected), next: 1, doubtful };
      messages.push(message);
      return message;
    }

    /** @param {Message} message @param {Byte[]} bytes */
    function append(message, bytes) {
      for (let i = 0; i < bytes.length && message.bytes.length < message.expected; i++) message.bytes.push(bytes[i]);
    }

    /** ISO 15765-2. @param {string} source @param {Byte[]} bytes */
    function takeFrame(source, bytes) {
      const low = bytes[0].value & 15, message = open.get(source);
      switch (bytes[0].value >> 4) {
        case 0:
          begin(source, "can", low, bytes.slice(1));
          break;
        case 1:
          if (bytes.length > 1) open.set(source, begin(source, "can", (low << 8) | bytes[1].value, bytes.slice(2)));
          break;
        case 2:
          if (message && message.next === low) {
            append(message, bytes.slice(1));
            message.next = (low + 1) & 15;
          } else open.delete(source); // A frame is missing: what follows cannot be placed.
      }
    }

    /** J1850, ISO 9141-2 and ISO 14230-4: three header bytes, a checksum last. @param {Byte[]} bytes */
    function takeOldBus(bytes) {
      if (bytes.length < 5) return false;
      const [first, second, address, fourth] = bytes.map(b => b.value);
      let length = -1;
      if ((first === 0x48 || first === 0x41) && second === 0x6B) length = (bytes.length - 4) | 1;
      else if (first >= 0x80 && first < 0xC0 && second === 0xF1) length = first & 0x3F;
      if (length < 0) return false;
      begin(hex(address), "pairs", length || fourth, bytes.slice(length ? 3 : 4));
      return true;
    }

    /** @param {Byte[]} bytes */
    function takeFrameWithoutHeader(bytes) {
      if (bytes.length < 2 || bytes.length > 8) return false;
      const first = bytes[0].value, kind = first >> 4;
      const isFrame = kind === 0 ? first >= 2 && first <= 7 && first < bytes.length && isPadding(bytes.slice(first + 1)) && bytes[1].value in SERVICES
        : kind === 1 ? bytes.length > 2 && bytes[2].value in SERVICES
          : kind === 2 && open.has("");
      if (isFrame) takeFrame("", bytes);
      return isFrame;
    }

    /** Frames of an adapter; one goes to the message that has waited longest for its number. @param {number} index @param {Byte[]} bytes */
    function takeNumbered(index, bytes) {
      let message = waiting[index][taken[index]];
      if (message) {
        taken[index]++;
        append(message, bytes);
      } else if (index === 0)
        message = begin("", "can", announcedTaken < announced.length ? announced[announcedTaken++] : 4095, bytes);
      if (message && message.bytes.length < message.expected) waiting[(index + 1) & 15].push(message);
    }
  }

  /** @param {Byte[]} bytes @returns {RawCode[]} */
  function pairs(bytes) {
    const codes = [];
    for (let i = 0; i + 2 <= bytes.length; i += 2)
      if (bytes[i].value || bytes[i + 1].value)
        codes.push({ code: fromBytes(bytes[i].value, bytes[i + 1].value), start: bytes[i].start, end: bytes[i + 1].start + 2 });
    return codes;
  }

  /** @param {RawCode[]} codes @returns {Answer} */
  const newAnswer = (codes, complete = true) => ({ service: "", codes, other: [], certainty: "certain", complete });

  /** Services 03, 07 and 0A behind the service byte: a count makes the number of bytes odd. @param {Byte[]} bytes @param {Message['framing']} framing */
  function readPairs(bytes, framing) {
    const count = bytes[0].value;
    const counted = () => newAnswer(pairs(bytes.slice(1, 1 + 2 * count)), 2 * count <= bytes.length - 1);
    if (framing === "can") return counted();
    if (framing === "pairs") return newAnswer(pairs(bytes), bytes.length % 2 === 0);
    const fits = 2 * count <= bytes.length - 1 && isPadding(bytes.slice(1 + 2 * count));
    if (bytes.length % 2) {
      if (fits) return counted();
      return bytes.length === 7 ? { ...newAnswer(pairs(bytes.slice(0, 6))), certainty: /** @type {Certainty} */ ("guess") } : null;
    }
    const answer = newAnswer(pairs(bytes)), other = fits ? pairs(bytes.slice(1, 1 + 2 * count)) : [];
    // Padding can spoil the count of bytes. A count over empty slots is none, and a maker's code that ends in an empty slot is too unlikely.
    const last = other[other.length - 1];
    if (last && other.length === count && (!last.code.endsWith("00") || isStandard(last.code))) {
      answer.other = other;
      answer.certainty = "guess";
    }
    return answer;
  }

  /** Service 19 02: records of high, middle, failure type, status. @param {Byte[]} bytes @param {Message['framing']} framing */
  function readByStatus(bytes, framing) {
    if (bytes.length < 3 || bytes[1].value !== 0x02) return null;
    const codes = [];
    let i = 3;
    for (; i + 4 <= bytes.length; i += 4) {
      const [high, low, type, status] = bytes.slice(i, i + 4);
      if (high.value || low.value)
        codes.push({ code: fromBytes(high.value, low.value), failureType: hex(type.value), status: hex(status.value), start: high.start, end: status.start + 2 });
    }
    return newAnswer(codes, i === bytes.length || (!framing && isPadding(bytes.slice(i))));
  }

  /** @param {Message} message @returns {Answer | null} */
  function decode({ bytes, framing, source, expected, doubtful }) {
    const service = bytes.length >= 2 ? SERVICES[bytes[0].value] : "";
    /** @type {Answer | null} */
    let answer = null;
    if (service === "refused") {
      if (bytes.length >= 3 && [0x03, 0x07, 0x0A, 0x19].includes(bytes[1].value) && bytes[2].value !== 0x78)
        answer = { ...newAnswer([]), refusal: [bytes[1].value, bytes[2].value] };
    } else if (service === "by-status") answer = readByStatus(bytes, framing);
    else if (service) answer = readPairs(bytes.slice(1), framing);
    if (!answer) return null;
    const complete = answer.complete && bytes.length >= expected;
    return { ...answer, service, source, complete, certainty: doubtful ? "guess" : answer.certainty };
  }

  Object.assign(GuideGen.codes.inner, { NOISE, readHexLine, assemble, decode });
})();
