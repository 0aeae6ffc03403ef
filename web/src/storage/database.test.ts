import { deleteDB, openDB } from 'idb';
import { afterEach, expect, it } from 'vitest';
import { closeDatabase, database } from './database.ts';

afterEach(async () => {
  await closeDatabase();
  await deleteDB('gagwright');
});

/** The stores as the first version of the app made them, with something in each. */
async function firstVersion() {
  const db = await openDB('gagwright', 1, {
    upgrade(made) {
      made.createObjectStore('reads', { keyPath: 'key' });
      made.createObjectStore('outbox', { keyPath: 'id' });
      made.createObjectStore('keys', { keyPath: 'owner' });
      made.createObjectStore('settings');
    },
  });
  const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, [
    'sign',
    'verify',
  ]);
  const writes = Array.from({ length: 40 }, (_, n) => ({
    id: `id-${String(n).padStart(2, '0')}`,
    account: 'ada',
    method: 'POST',
    path: `/gags/g${n}/readings`,
    body: { n },
    headers: {},
    label: { kind: 'reading', about: `G${n}` },
    state: 'waiting',
    queued_at: n,
  }));
  for (const write of writes) await db.put('outbox', write);
  await db.put('reads', { key: 'ada /today', value: { day: 1 }, fetched_at: 5 });
  await db.put('keys', { owner: 'p ada', device: 'd', name: 'Phone', pair });
  await db.put('settings', 'daylight', 'theme');
  return { db, writes };
}

it('keeps a full outbox, the reads, the keys and the settings of the first version', async () => {
  const { db: old, writes } = await firstVersion();
  old.close();
  const db = await database();
  expect(db.version).toBe(2);
  expect(await db.getAll('outbox')).toEqual(writes);
  expect(await db.get('reads', 'ada /today')).toMatchObject({ value: { day: 1 } });
  const key = await db.get('keys', 'p ada');
  expect(key?.pair.privateKey.extractable).toBe(false);
  expect(await db.get('settings', 'theme')).toBe('daylight');
  expect(await db.getAll('handed')).toEqual([]);
  expect(await db.getAll('drafts')).toEqual([]);
});

it('gives way to a newer version opened beside it', async () => {
  await (await database()).put('settings', 1, 'kept');
  const newer = await openDB('gagwright', 3);
  expect(await newer.get('settings', 'kept')).toBe(1);
  newer.close();
});
