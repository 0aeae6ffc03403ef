// The copies of what was read, on the phone: bounded, the least recently used let go first. A copy that cannot be
// kept is no failure, for it can be read again; so nothing here throws when the phone is full.

import { database, getSetting, type StoredRead, setSetting } from './database.ts';

/** What one copy weighs, when it was read, and when it was last shown. */
export interface Weight {
  size: number;
  read: number;
  used: number;
}

const INDEX = 'reads_index';
/** A production of fifty gags is about a tenth of this. */
export const MOST_BYTES = 80 * 1024 * 1024;

let index: Promise<Record<string, Weight>> | undefined;
let saving: ReturnType<typeof setTimeout> | undefined;

/** The one table of all, however many ask for it at once. */
function weights(): Promise<Record<string, Weight>> {
  index ??= getSetting<Record<string, Weight>>(INDEX).then(
    (kept) => kept ?? {},
    (error: unknown) => {
      index = undefined;
      throw error;
    },
  );
  return index;
}

function saveSoon(): void {
  clearTimeout(saving);
  saving = setTimeout(
    () =>
      void weights()
        .then((all) => setSetting(INDEX, all))
        .catch(() => {}),
    1_000,
  );
}

export async function keptRead(key: string): Promise<StoredRead | undefined> {
  const [kept, all] = await Promise.all([database().then((db) => db.get('reads', key)), weights()]);
  if (kept) {
    all[key] = { size: all[key]?.size ?? 0, read: kept.fetched_at, used: Date.now() };
    saveSoon();
  }
  return kept;
}

/** Keeps a copy, making room where there is none. False when there is no room even so. */
export async function keepRead(read: StoredRead): Promise<boolean> {
  const all = await weights();
  const size = JSON.stringify(read.value)?.length ?? 0;
  for (let attempt = 0; attempt < 3; attempt += 1) {
    try {
      await (await database()).put('reads', read);
      all[read.key] = { size, read: read.fetched_at, used: Date.now() };
      saveSoon();
      return true;
    } catch {
      // The phone is full: let go of the older half, at the last attempt of all of it.
      await letGo(leastUsed(all, attempt === 0 ? Object.keys(all).length / 2 : Number.POSITIVE_INFINITY));
    }
  }
  return false;
}

export async function dropRead(key: string): Promise<void> {
  await letGo([key]);
}

/** Lets go of what was used least, until what is kept fits. */
export async function trimReads(most = MOST_BYTES): Promise<void> {
  const all = await weights();
  let total = Object.values(all).reduce((sum, one) => sum + one.size, 0);
  const gone: string[] = [];
  for (const key of leastUsed(all)) {
    if (total <= most) break;
    total -= all[key]?.size ?? 0;
    gone.push(key);
  }
  await letGo(gone);
}

function leastUsed(all: Record<string, Weight>, most = Number.POSITIVE_INFINITY): string[] {
  const keys = Object.keys(all).toSorted((a, b) => (all[a]?.used ?? 0) - (all[b]?.used ?? 0));
  return keys.slice(0, Math.ceil(Math.min(most, keys.length)));
}

async function letGo(keys: string[]): Promise<void> {
  const all = await weights();
  const db = await database();
  for (const key of keys) {
    delete all[key];
    await db.delete('reads', key).catch(() => {});
  }
  if (keys.length > 0) saveSoon();
}

export async function dropAllReads(): Promise<void> {
  index = Promise.resolve({});
  saveSoon();
  await (await database()).clear('reads');
}

/** When each of these was read, where this phone has it. */
export async function whenRead(keys: string[]): Promise<(number | undefined)[]> {
  const all = await weights();
  const db = await database();
  const stored = new Set(await db.getAllKeys('reads'));
  // The index is written a moment after the copy: an app closed in between has only the copy to ask.
  return await Promise.all(
    keys.map(async (key) => {
      if (!stored.has(key)) return undefined;
      return all[key]?.read ?? (await db.get('reads', key))?.fetched_at;
    }),
  );
}
