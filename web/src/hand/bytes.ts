// Small pieces of binary writing and reading that the hand-over format is made of. Knows nothing of what
// the bytes mean.

/** Why something handed over can't be used. The screen finds the sentence by this name. */
export type Refusal = 'not_ours' | 'newer' | 'damaged' | 'too_big' | 'not_carried';

export class HandError extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal, detail: string) {
    super(detail);
    this.refusal = refusal;
  }
}

export function concat(...parts: Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** Seven bits a byte, lowest first; the top bit says that more follow. */
export function varint(value: number): Uint8Array {
  const bytes: number[] = [];
  let rest = value;
  while (rest >= 0x80) {
    bytes.push((rest % 0x80) | 0x80);
    rest = Math.floor(rest / 0x80);
  }
  bytes.push(rest);
  return Uint8Array.from(bytes);
}

/** Reads bytes from the front and refuses to read past the end. */
export class Reader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  take(count: number): Uint8Array {
    if (this.#at + count > this.#bytes.length) throw new HandError('damaged', 'it ends too early');
    this.#at += count;
    return this.#bytes.slice(this.#at - count, this.#at);
  }

  varint(): number {
    let value = 0;
    // Four bytes hold every length and number that the format allows.
    for (let i = 0; i < 4; i += 1) {
      const byte = this.take(1)[0] ?? 0;
      value += (byte & 0x7f) * 0x80 ** i;
      if (byte < 0x80) return value;
    }
    throw new HandError('damaged', 'a number in it is too long');
  }

  rest(): Uint8Array {
    return this.take(this.#bytes.length - this.#at);
  }
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit += 1) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  return c;
});

/** CRC-32 as in ISO-HDLC, four bytes, highest first. */
export function crc32(bytes: Uint8Array): Uint8Array {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (CRC_TABLE[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
  return fourBytes((crc ^ 0xffffffff) >>> 0);
}

export function fourBytes(value: number): Uint8Array {
  return Uint8Array.of(value >>> 24, value >>> 16, value >>> 8, value);
}

export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}

const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** Base45 (RFC 9285): what a QR code holds most tightly as text. */
export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const pair = i + 1 < bytes.length;
    let value = pair ? (bytes[i] ?? 0) * 256 + (bytes[i + 1] ?? 0) : (bytes[i] ?? 0);
    for (let digit = 0; digit < (pair ? 3 : 2); digit += 1) {
      text += ALPHABET[value % 45];
      value = Math.floor(value / 45);
    }
  }
  return text;
}

export function fromBase45(text: string): Uint8Array {
  const bad = () => new HandError('damaged', 'it is not base45');
  if (text.length % 3 === 1) throw bad();
  const bytes = new Uint8Array(Math.floor((text.length * 2) / 3));
  let at = 0;
  for (let i = 0; i < text.length; i += 3) {
    const group = text.slice(i, i + 3);
    let value = 0;
    for (const char of [...group].reverse()) {
      const digit = ALPHABET.indexOf(char);
      if (digit < 0) throw bad();
      value = value * 45 + digit;
    }
    if (value >= 256 ** (group.length - 1)) throw bad();
    if (group.length === 3) bytes[at++] = value >>> 8;
    bytes[at++] = value & 0xff;
  }
  return bytes;
}

export function toHex(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export function fromHex(text: string): Uint8Array {
  return Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

export function uuidBytes(id: string): Uint8Array {
  if (!UUID.test(id)) throw new HandError('not_carried', `"${id}" is not a UUID in lower case`);
  return fromHex(id.replaceAll('-', ''));
}

export function uuidText(bytes: Uint8Array): string {
  return toHex(bytes).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
