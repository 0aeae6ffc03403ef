// The phone's own database: cached reads, writes not yet sent, what other phones handed over, drafts, the
// signing keys, a few settings.
// Knows nothing of screens or of the server's answers.

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ProblemBody } from '../api/types.ts';
import type { Opening } from '../sign/openings.ts';

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
    | 'test_shot'
    | 'revision'
    | 'briefing'
    | 'debrief'
    | 'day_mark'
    | 'go'
    | 'take_end'
    | 'look'
    | 'stand_down'
    | 'returned'
    | 'incident'
    | 'told'
    | 'closing'
    | 'equipment'
    | 'quarantine'
    | 'shock_load'
    | 'back_in_use'
    | 'gag'
    | 'device'
    | 'condition'
    | 'person'
    | 'members'
    | 'invitation'
    | 'delegation'
    | 'resolution'
    | 'witness'
    | 'cosignature';
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
  /** Nothing of it has left this phone: no request was begun and no code of it shown. Missing once it may have. */
  here_only?: true;
  settled_at?: number;
  problem?: ProblemBody;
}

/** What may travel from phone to phone: the server takes no others from a carrier. The medic's looks stay off other
 *  people's phones. */
export const HANDED_KINDS = [
  'sign_off',
  'hold',
  'release',
  'reading',
  'run',
  'test_shot',
  'revision',
  'incident',
  'stand_down',
  'quarantine',
  'shock_load',
  'briefing',
  'day_mark',
  'go',
  'take_end',
] as const;

export type HandedKind = (typeof HANDED_KINDS)[number];

/** What came from another phone by code or file, kept until the server has it or refuses it. */
export interface HandedItem {
  /** The author's own Idempotency-Key, so that the same thing from two carriers is one thing. */
  key: string;
  /** Who carries it: the account that was signed in when it arrived. */
  account: string;
  production: string;
  gag?: string;
  kind: HandedKind;
  /** As its author signed it; passed on and sent unchanged. */
  jws: string;
  /** Its signature held on this phone. What nobody could check yet counts for nothing here, save a stop. */
  verified?: boolean;
  /** The texts that a sign-off commits to, sent beside it. */
  openings?: Opening[];
  /** As it travelled, for passing it on without packing it again. */
  packed?: unknown;
  received_at: number;
  /** The author's name, where this phone knows it. */
  from?: string;
  state: WriteState;
  settled_at?: number;
  problem?: ProblemBody;
}

/** A form half filled. */
export interface StoredDraft {
  /** Account and path. */
  key: string;
  value: unknown;
  /** What it was begun from, so that a plan that moved on underneath is noticed. */
  base?: unknown;
  saved_at: number;
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
  handed: { key: string; value: HandedItem };
  drafts: { key: string; value: StoredDraft };
}

export type AppDatabase = IDBPDatabase<Schema>;

let opened: Promise<AppDatabase> | undefined;

export function database(): Promise<AppDatabase> {
  opened ??= openDB<Schema>('gagwright', 2, {
    // Each version adds to the one before; nothing a phone has kept is ever dropped here.
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('reads', { keyPath: 'key' });
        db.createObjectStore('outbox', { keyPath: 'id' });
        db.createObjectStore('keys', { keyPath: 'owner' });
        db.createObjectStore('settings');
      }
      if (from < 2) {
        db.createObjectStore('handed', { keyPath: 'key' });
        db.createObjectStore('drafts', { keyPath: 'key' });
      }
    },
    // A newer version of the app in another tab must not wait for this one to be closed.
    blocking(_from, _to, event) {
      (event.target as IDBDatabase).close();
      opened = undefined;
    },
    terminated() {
      opened = undefined;
    },
  });
  // A failure to open is not kept: the next call tries again.
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

/** Closes it, so that a test may open it as an older or a newer version. */
export async function closeDatabase(): Promise<void> {
  const db = await opened;
  opened = undefined;
  db?.close();
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
