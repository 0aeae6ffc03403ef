// A message as a run of frames, each the text of one QR code, and the way back. The first frames are the
// message cut in equal parts. Any after them are mixtures: each is some of the parts laid over each other
// (XOR), chosen by a seed that both sides know, so that whichever frames a camera catches, about as many as
// there are parts are enough. Order, repeats and gaps do not matter.
//
//   "GW1:" base45( message id 4 · number, varint · parts, varint · message length, varint · part · CRC-32 4 )

import {
  concat,
  crc32,
  fourBytes,
  fromBase45,
  HandError,
  Reader,
  sameBytes,
  toBase45,
  varint,
} from './bytes.ts';

/** Names the format and its version; every character is one a QR code packs tightly. */
const MARK = 'GW1:';
/** What one still code may hold: at this length it is QR version 25 with error level L. */
export const STILL = 1200;
/** What a part of a longer message holds: version 16, error level M, which a camera catches in passing. */
const PART = 410;
/** What a part holds for a camera that can't make out a dense code: version 9. */
const SMALL_PART = 130;
const MOST_PARTS = 1024;
const MOST_BYTES = 1024 * 1024;
/** How many unfinished messages are remembered at once. */
const AT_ONCE = 4;

export interface Frame {
  id: number;
  index: number;
  parts: number;
  length: number;
  bytes: Uint8Array;
}

/** In how many parts a message is shown: one if it fits a still code and smaller ones were not asked for. */
export function partsOf(message: Uint8Array, smaller = false): number {
  if (smaller) return Math.ceil(message.length / Math.max(SMALL_PART, message.length / MOST_PARTS));
  return message.length <= STILL ? 1 : Math.ceil(message.length / PART);
}

/** Begins each of its frames: the first four bytes of the SHA-256 inside. */
function idOf(message: Uint8Array): number {
  return message.subarray(2, 6).reduce((id, byte) => id * 256 + byte, 0);
}

/** Which parts a frame lays over each other, one bit a part. */
function mixture(id: number, index: number, parts: number): bigint {
  if (index < parts) return 1n << BigInt(index);
  // The small generator named mulberry32: the same choice on every phone, from the frame's own numbers.
  let state = (id ^ Math.imul(index, 0x9e3779b1)) >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = Math.imul(state ^ (state >>> 15), state | 1);
    x ^= x + Math.imul(x ^ (x >>> 7), x | 61);
    return (x ^ (x >>> 14)) >>> 0;
  };
  let bits = 0n;
  while (bits === 0n) {
    for (let i = 0; i < parts; i += 32) bits = (bits << 32n) | BigInt(next());
    bits &= (1n << BigInt(parts)) - 1n;
  }
  return bits;
}

function layOver(onto: Uint8Array, other: Uint8Array): void {
  for (let i = 0; i < onto.length; i += 1) onto[i] = (onto[i] ?? 0) ^ (other[i] ?? 0);
}

/** The text of frame `index`, from 0 and without end. A file has room for a message in one part. */
export function frameText(message: Uint8Array, index: number, parts: number): string {
  if (message.length > MOST_BYTES || parts > MOST_PARTS)
    throw new HandError('too_big', `it is ${message.length} bytes`);
  const size = Math.ceil(message.length / parts);
  const id = idOf(message);
  const bytes = new Uint8Array(size);
  const mixed = mixture(id, index, parts);
  for (let part = 0; part < parts; part += 1) {
    if ((mixed >> BigInt(part)) & 1n) layOver(bytes, message.subarray(part * size, (part + 1) * size));
  }
  const frame = concat(fourBytes(id), varint(index), varint(parts), varint(message.length), bytes);
  return MARK + toBase45(concat(frame, crc32(frame)));
}

export function readFrame(text: string): Frame {
  if (!/^GW\d+:/.test(text)) throw new HandError('not_ours', 'it does not begin as ours do');
  if (!text.startsWith(MARK)) throw new HandError('newer', `it begins ${text.slice(0, 8)}`);
  const whole = fromBase45(text.slice(MARK.length));
  const reader = new Reader(whole.subarray(0, -4));
  if (whole.length < 4 || !sameBytes(crc32(whole.subarray(0, -4)), whole.subarray(-4)))
    throw new HandError('damaged', 'its checksum does not match');
  const id = reader.take(4).reduce((sum, byte) => sum * 256 + byte, 0);
  const frame = {
    id,
    index: reader.varint(),
    parts: reader.varint(),
    length: reader.varint(),
    bytes: reader.rest(),
  };
  if (frame.parts > MOST_PARTS || frame.length > MOST_BYTES)
    throw new HandError('too_big', `it is ${frame.length} bytes in ${frame.parts} parts`);
  if (frame.parts === 0 || frame.bytes.length !== Math.ceil(frame.length / frame.parts))
    throw new HandError('damaged', 'its part is not of the length it says');
  return frame;
}

/** Parts known so far, each row solved for its lowest part. */
interface Row {
  mixed: bigint;
  bytes: Uint8Array;
}

const lowest = (bits: bigint) => (bits & -bits).toString(2).length - 1;

class Gathering {
  readonly #rows = new Map<number, Row>();
  readonly #frame: Frame;

  constructor(first: Frame) {
    this.#frame = first;
  }

  get have(): number {
    return this.#rows.size;
  }

  add(frame: Frame): void {
    let mixed = mixture(frame.id, frame.index, frame.parts);
    const bytes = frame.bytes.slice();
    while (mixed !== 0n) {
      const part = lowest(mixed);
      const known = this.#rows.get(part);
      if (!known) {
        this.#rows.set(part, { mixed, bytes });
        return;
      }
      mixed ^= known.mixed;
      layOver(bytes, known.bytes);
    }
  }

  /** The message, once as many rows are known as there are parts. */
  message(): Uint8Array | undefined {
    const { parts, length } = this.#frame;
    if (this.#rows.size < parts) return undefined;
    for (let part = parts - 1; part >= 0; part -= 1) {
      const row = this.#rows.get(part);
      if (!row) return undefined;
      for (let other = part + 1; other < parts; other += 1) {
        const solved = this.#rows.get(other);
        if (solved && (row.mixed >> BigInt(other)) & 1n) layOver(row.bytes, solved.bytes);
      }
      row.mixed = 1n << BigInt(part);
    }
    const all = Array.from({ length: parts }, (_, part) => this.#rows.get(part)?.bytes ?? new Uint8Array());
    return concat(...all).subarray(0, length);
  }
}

export interface Progress {
  have: number;
  parts: number;
  message?: Uint8Array;
}

/** Takes frames as they come, of one message or several at once. */
export class Collector {
  readonly #gathering = new Map<string, Gathering>();

  /** Throws a `HandError` for a text that is no frame of ours; what was gathered before stays. */
  take(text: string): Progress {
    const frame = readFrame(text);
    const name = `${frame.id} ${frame.parts} ${frame.length}`;
    const gathering = this.#gathering.get(name) ?? new Gathering(frame);
    // The one touched last goes to the end, so that the one left behind longest makes room.
    this.#gathering.delete(name);
    this.#gathering.set(name, gathering);
    const [oldest] = this.#gathering.keys();
    if (this.#gathering.size > AT_ONCE && oldest) this.#gathering.delete(oldest);
    gathering.add(frame);
    const message = gathering.message();
    if (message) this.#gathering.delete(name);
    return { have: message ? frame.parts : gathering.have, parts: frame.parts, message };
  }
}
