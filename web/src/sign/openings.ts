// What a signer writes, conditions and a reason, is not in what is signed: it has SHA-256(salt || text), and salt and
// text travel beside it, so that they can be erased while the commitment stands.

import { toHex } from '../hand/bytes.ts';

export interface Opening {
  /** 32 random bytes, lower-case hex. */
  salt: string;
  text: string;
}

const SALT = /^[0-9a-f]{64}$/;

/** The commitment, lower-case hex; undefined when the salt is none. */
export async function commitmentOf({ salt, text }: Opening): Promise<string | undefined> {
  if (!SALT.test(salt)) return undefined;
  const bytes = new TextEncoder().encode(text);
  const all = new Uint8Array(32 + bytes.length);
  for (let at = 0; at < 32; at += 1) all[at] = Number.parseInt(salt.slice(at * 2, at * 2 + 2), 16);
  all.set(bytes, 32);
  return toHex(new Uint8Array(await crypto.subtle.digest('SHA-256', all)));
}

/** A text with a fresh salt, and its commitment. */
export async function committed(text: string): Promise<{ opening: Opening; commitment: string }> {
  const opening = { salt: toHex(crypto.getRandomValues(new Uint8Array(32))), text };
  return { opening, commitment: (await commitmentOf(opening)) ?? '' };
}

/** The text that a commitment stands for, while it is kept. */
export async function textOf(
  commitment: string,
  openings: readonly Opening[] | undefined,
): Promise<string | undefined> {
  for (const one of openings ?? []) if ((await commitmentOf(one)) === commitment) return one.text;
  return undefined;
}
