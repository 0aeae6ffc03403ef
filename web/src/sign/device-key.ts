// The signing key of one person on this phone. It is made here, cannot be exported, and never leaves.

import { at } from '../api/address.ts';
import type { PublicKey } from '../api/types.ts';
import { database, type StoredKey } from '../storage/database.ts';
import { outbox } from '../storage/outbox.svelte.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { t } from '../texts/index.ts';

function ownerOf(production: string, person: string): string {
  return `${production} ${person}`;
}

export async function existingKey(production: string, person: string): Promise<StoredKey | undefined> {
  return (await database()).get('keys', ownerOf(production, person));
}

export async function publicKey(pair: CryptoKeyPair): Promise<PublicKey> {
  const jwk = await crypto.subtle.exportKey('jwk', pair.publicKey);
  return { kty: 'EC', crv: 'P-256', x: jwk.x ?? '', y: jwk.y ?? '' };
}

/** A name its owner will recognise in a list of devices. */
export function deviceName(agent: string = navigator.userAgent): string {
  if (/iPhone|Android.*Mobile/.test(agent)) return t.device.phone;
  if (/iPad|Android/.test(agent)) return t.device.tablet;
  return t.device.computer;
}

/** The key for this person, made and registered the first time it is needed. */
export async function keyFor(production: string, person: string): Promise<StoredKey> {
  const existing = await existingKey(production, person);
  if (existing) return existing;
  const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, [
    'sign',
    'verify',
  ]);
  const made: StoredKey = {
    owner: ownerOf(production, person),
    device: uuidv7(),
    name: deviceName(),
    pair,
  };
  // Kept before it is registered: a key the server knows and the phone lost could never sign.
  await (await database()).put('keys', made);
  await outbox.post({
    path: at('/productions/{production}/devices', { production }),
    body: { id: made.device, name: made.name, key: await publicKey(pair) },
    label: { kind: 'device', about: made.name },
  });
  return made;
}

export async function forgetKey(production: string, person: string): Promise<void> {
  await (await database()).delete('keys', ownerOf(production, person));
}
