// One entry as compact bytes, for a code or a file. A signed entry is text three times wrapped; here each
// wrapping is taken off, and unpacking gives back the very same JWS.
//
//   version 1 · kind 1 · SHA-256 of all but itself 32 · [key 16, sign-offs only] · signature 64
//   · length, varint · ids and hashes · deflate-raw( header · line feed · payload [· line feed · openings] )
//
// The openings are the texts that a sign-off commits to, as a JSON array; a sign-off that has none ends with its
// payload.
//
// Ids and hashes are half of a sign-off and do not deflate: each stands as 16 or 32 plain bytes in front, and
// a control character, which JSON never holds unescaped, keeps its place in the text.

import { base64url, fromBase64url } from '../sign/jws.ts';
import type { Opening } from '../sign/openings.ts';
import {
  concat,
  fromHex,
  HandError,
  Reader,
  sameBytes,
  toHex,
  uuidBytes,
  uuidText,
  varint,
} from './bytes.ts';

/** What travels: a sign-off as its own JWS with the key it is sent under, or a request that holds its key. */
export type Handed =
  | { kind: 'sign_off'; jws: string; key: string; openings?: Opening[] }
  | { kind: 'request'; jws: string };

const VERSION = 1;
const SIGN_OFF = 1;
const REQUEST = 2;
/** The longest header and payload that are unpacked: a few bytes must not fill the phone. */
const LONGEST = 512 * 1024;

async function through(bytes: Uint8Array, by: GenericTransformStream, most: number): Promise<Uint8Array> {
  const source = new Blob([new Uint8Array(bytes)]).stream().pipeThrough(by);
  const reader = (source as ReadableStream<Uint8Array>).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return concat(...parts);
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new HandError('too_big', `it unpacks to more than ${most} bytes`);
    }
    parts.push(value);
  }
}

async function sha256(bytes: Uint8Array): Promise<Uint8Array> {
  return new Uint8Array(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes)));
}

function partBytes(text: string | undefined): Uint8Array {
  let bytes: Uint8Array;
  try {
    bytes = fromBase64url(text ?? '');
  } catch {
    throw new HandError('not_carried', 'a part of the JWS is not base64url');
  }
  // A second spelling of the same bytes would come out as the first, and its signature would not hold.
  if (base64url(bytes) !== text) throw new HandError('not_carried', 'a part of the JWS is not base64url');
  return bytes;
}

const ID = '\u0001';
const HASH = '\u0002';

/** The text with its ids and hashes taken out, and these as bytes in their order. */
function takeOut(text: string): { text: string; taken: Uint8Array } {
  const taken: Uint8Array[] = [];
  const left = text.replace(/[0-9a-f]{64}|[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g, (found) => {
    taken.push(fromHex(found.replaceAll('-', '')));
    return found.length === 64 ? HASH : ID;
  });
  return { text: left, taken: concat(...taken) };
}

function putBack(text: string, taken: Reader): string {
  const whole = [...text].map((char) =>
    char === ID ? uuidText(taken.take(16)) : char === HASH ? toHex(taken.take(32)) : char,
  );
  return whole.join('');
}

export async function pack(handed: Handed): Promise<Uint8Array> {
  const parts = handed.jws.split('.');
  if (parts.length !== 3) throw new HandError('not_carried', 'it is not a compact JWS');
  const [header, payload, signature] = parts.map(partBytes) as [Uint8Array, Uint8Array, Uint8Array];
  if (signature.length !== 64) throw new HandError('not_carried', 'its signature is not 64 bytes');
  const openings = handed.kind === 'sign_off' && handed.openings?.length ? handed.openings : undefined;
  const beside = openings ? `\n${JSON.stringify(openings)}` : '';
  if (header.length + payload.length + beside.length > LONGEST)
    throw new HandError('too_big', `it is longer than ${LONGEST} bytes`);
  const { text, taken } = takeOut(
    `${new TextDecoder().decode(header)}\n${new TextDecoder().decode(payload)}${beside}`,
  );
  const deflate = new CompressionStream('deflate-raw');
  const rest = concat(
    handed.kind === 'sign_off' ? uuidBytes(handed.key) : new Uint8Array(),
    signature,
    varint(taken.length),
    taken,
    await through(new TextEncoder().encode(text), deflate, Number.POSITIVE_INFINITY),
  );
  const kind = handed.kind === 'sign_off' ? SIGN_OFF : REQUEST;
  const front = Uint8Array.of(VERSION, kind);
  const message = concat(front, await sha256(concat(front, rest)), rest);
  // A JWS that is not the JSON we make could come out otherwise than it went in: that is found here, not there.
  const again = await unpack(message).catch(() => undefined);
  if (again?.jws !== handed.jws) throw new HandError('not_carried', 'it is not JSON in UTF-8');
  return message;
}

export async function unpack(message: Uint8Array): Promise<Handed> {
  const reader = new Reader(message);
  const version = reader.take(1)[0];
  if (version !== VERSION) throw new HandError('newer', `its version is ${version}`);
  const kind = reader.take(1)[0];
  if (kind !== SIGN_OFF && kind !== REQUEST) throw new HandError('newer', `its kind is ${kind}`);
  const hash = reader.take(32);
  const rest = reader.rest();
  if (!sameBytes(hash, await sha256(concat(message.subarray(0, 2), rest))))
    throw new HandError('damaged', 'its SHA-256 does not match');
  const body = new Reader(rest);
  const key = kind === SIGN_OFF ? uuidText(body.take(16)) : '';
  const signature = body.take(64);
  const taken = new Reader(body.take(body.varint()));
  let inflated: Uint8Array;
  try {
    inflated = await through(body.rest(), new DecompressionStream('deflate-raw'), LONGEST);
  } catch (error) {
    if (error instanceof HandError) throw error;
    throw new HandError('damaged', 'it does not unpack');
  }
  const [header = '', payload = '', beside] = putBack(new TextDecoder().decode(inflated), taken).split('\n');
  const signed = [header, payload].map((part) => base64url(new TextEncoder().encode(part)));
  const jws = [...signed, base64url(signature)].join('.');
  if (kind === REQUEST) return { kind: 'request', jws };
  return beside === undefined
    ? { kind: 'sign_off', jws, key }
    : { kind: 'sign_off', jws, key, openings: openingsOf(beside) };
}

function openingsOf(beside: string): Opening[] {
  let read: unknown;
  try {
    read = JSON.parse(beside);
  } catch {
    read = undefined;
  }
  const whole = (one: unknown): one is Opening => {
    const { salt, text } = (one ?? {}) as Partial<Opening>;
    return typeof salt === 'string' && typeof text === 'string';
  };
  if (!Array.isArray(read) || !read.every(whole))
    throw new HandError('damaged', 'the texts beside the sign-off cannot be read');
  return read.map(({ salt, text }) => ({ salt, text }));
}
