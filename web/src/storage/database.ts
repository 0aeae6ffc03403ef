// The phone's own database: cached reads, writes not yet sent, the signing keys, a few settings.
// Knows nothing of screens or of the server's answers.

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ProblemBody } from '../api/types.ts';

export interface StoredRead {
  /** Account and path, so that one phone shared by two people never mixes them. */
  key: string;
  value: unknown;
  fetched_at: number;
}

export type WriteState = 'waiting' | 'sent' | 'refused';

/** What a queued write is about, for saying so and for showing it at once. */
export interface WriteLabel {
  kind:
    | 'sign_off'
    | 'hold'
    | 'release'
    | 'reading'
    | 'run'
    | 'revision'
    | 'gag'
    | 'device'
    | 'condition'
    | 'person'
    | 'members'
    | 'invitation';
  /** The gag it is about, if it is about one. */
  gag?: string;
  /** A few words that tell it from others: a gag's code, a role, a name. */
  about: string;
}

export interface QueuedWrite {
  /** UUIDv7: the Idempotency-Key, and the order of sending. */
  id: string;
  account: string;
  method: 'POST' | 'PUT' | 'DELETE';
  path: string;
  body: unknown;
  headers: Record<string, string>;
  label: WriteLabel;
  state: WriteState;
  queued_at: number;
  settled_at?: number;
  problem?: ProblemBody;
}

export interface StoredKey {
  /** Production and person: a key signs for one person on one production. */
  owner: string;
  device: string;
  name: string;
  pair: CryptoKeyPair;
}

interface Schema extends DBSchema {
  reads: { key: string; value: StoredRead };
  outbox: { key: string; value: QueuedWrite };
  keys: { key: string; value: StoredKey };
  settings: { key: string; value: unknown };
}

let opened: Promise<IDBPDatabase<Schema>> | undefined;

export function database(): Promise<IDBPDatabase<Schema>> {
  opened ??= openDB<Schema>('gagwright', 1, {
    upgrade(db) {
      db.createObjectStore('reads', { keyPath: 'key' });
      db.createObjectStore('outbox', { keyPath: 'id' });
      db.createObjectStore('keys', { keyPath: 'owner' });
      db.createObjectStore('settings');
    },
    terminated() {
      opened = undefined;
    },
  });
  return opened;
}

export async function getSetting<T>(name: string): Promise<T | undefined> {
  return (await (await database()).get('settings', name)) as T | undefined;
}

export async function setSetting(name: string, value: unknown): Promise<void> {
  await (await database()).put('settings', value, name);
}

export async function removeSetting(name: string): Promise<void> {
  await (await database()).delete('settings', name);
}
