import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Device, ProductionPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { session } from '../session.svelte.ts';
import { keyFor, publicKey } from '../sign/device-key.ts';
import { payloadOf } from '../sign/jws.ts';
import { database, type QueuedWrite } from '../storage/database.ts';
import { outbox } from '../storage/outbox.svelte.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { COORDINATOR, emptyCase, pageOf, startCore } from '../testing/case.ts';
import { canBeGiven } from './can-be-given.ts';
import { given } from './giving.ts';
import { Known } from './known.ts';
import { unpack } from './message.ts';
import type { HandedRequest } from './request.ts';
import { linesOf } from './said.ts';
import { taken } from './taking.ts';

beforeAll(startCore);

const NOW = Date.parse('2026-11-22T10:00:00Z');
const one = emptyCase();
const { production, plan } = one;
const gag = plan.gag;
let device: Device;

function write(kind: QueuedWrite['label']['kind'], path: string, body: object, etag?: string): QueuedWrite {
  return {
    id: uuidv7(),
    account: 'ada',
    method: 'POST',
    path,
    body,
    headers: etag ? { 'If-Match': etag } : {},
    label: { kind, gag, about: 'G07' },
    state: 'waiting',
    queued_at: NOW,
  };
}

const entries = {
  hold: () => write('hold', `/productions/${production}/holds`, { id: uuidv7(), gag, reason: 'Wind' }),
  reading: () =>
    write('reading', `/gags/${gag}/readings`, {
      id: uuidv7(),
      kind: 'wind',
      value: 4.5,
      at: '2026-11-22T09:59:00Z',
      place: 'Ledge',
    }),
  run: () =>
    write('run', `/gags/${gag}/runs`, {
      id: uuidv7(),
      rung: 'bag',
      good: false,
      note: '',
      revision: 1,
      at: new Date().toISOString(),
    }),
  revision: () => {
    const facets = structuredClone(plan.facets);
    facets.medical.cover = 'Doctor';
    return write('revision', `/gags/${gag}/plans`, { technique: 'high-fall', facets, note: 'Asked' }, '"1"');
  },
  release: () =>
    write('release', `/holds/${uuidv7()}/agreements`, { role: 'coordinator', cause: 'The wind has dropped' }),
};

async function keep(path: string, value: unknown): Promise<void> {
  await (await database()).put('reads', { key: `bo ${path}`, value, fetched_at: NOW });
}

/** What the other phone, which has read the gag, makes of it. */
async function takenFrom(message: Uint8Array) {
  await keep(`/gags/${gag}`, pageOf(one));
  await keep(`/productions/${production}`, {
    devices: [device],
    members: [{ person: COORDINATOR, name: 'Ada', roles: ['coordinator'] }],
  } as unknown as ProductionPage);
  return taken(message, new Known('bo'), [production], NOW);
}

beforeEach(async () => {
  const db = await database();
  await Promise.all([db.clear('reads'), db.clear('keys'), db.clear('outbox'), db.clear('handed')]);
  session.memberships = [
    {
      production: { id: production, name: 'Salt Meridian', demo: true, time_zone: 'UTC' },
      person: { id: COORDINATOR, name: 'Ada', code: 'A1' },
      roles: ['coordinator'],
    },
  ];
  const key = await keyFor(production, COORDINATOR);
  device = {
    id: key.device,
    person: COORDINATOR,
    name: key.name,
    key: await publicKey(key.pair),
    registered_at: '2026-11-20T09:00:00Z',
    revoked_at: null,
  };
});

describe('an entry of this phone', () => {
  it.each(Object.keys(entries) as (keyof typeof entries)[])('goes as a signed request: %s', async (kind) => {
    const entry = entries[kind]();
    outbox.items = [entry];
    const { message } = await given(entry.id, '');
    const handed = await unpack(message);
    const said = payloadOf<HandedRequest>(handed.jws);
    expect(said).toMatchObject({
      production,
      person: COORDINATOR,
      device: device.id,
      key: entry.id,
      method: 'POST',
      path: entry.path,
      body: entry.body,
    });
    expect(said.if_match).toBe(kind === 'revision' ? '"1"' : undefined);
    expect(core.verifyHanded(handed.jws, device.key)).toMatchObject({ key: entry.id });

    const found = await takenFrom(message);
    expect(found.verdict).toEqual({ state: 'holds', name: 'Ada' });
    expect(found.item).toMatchObject({ key: entry.id, kind, verified: true });
  });

  it('is said in words', async () => {
    const words = async (entry: QueuedWrite) => {
      outbox.items = [entry];
      const found = await takenFrom((await given(entry.id, '')).message);
      return linesOf(found).map((line) => line.said);
    };
    expect(await words(entries.hold())).toEqual(expect.arrayContaining(['Hold', 'Wind', 'G07, High fall']));
    expect((await words(entries.reading())).join()).toMatch(/Wind 4.5 m\/s, Ledge/);
    expect(await words(entries.run())).toContain('bag: not good');
    expect(await words(entries.revision())).toEqual(
      expect.arrayContaining(['Changes: Medical', 'Made on revision 1, the plan on this phone.', 'Asked']),
    );
    expect((await words(entries.release())).join()).toContain('The wind has dropped');
  });

  it('is said to be by a key the server does not know, while that is so', async () => {
    const entry = entries.hold();
    outbox.items = [entry];
    expect((await given(entry.id, '')).registered).toBe(true);
    outbox.items = [entry, write('device', `/productions/${production}/devices`, { id: device.id })];
    expect((await given(entry.id, '')).registered).toBe(false);
  });

  it('does not verify once a word of it is changed', async () => {
    const entry = entries.hold();
    outbox.items = [entry];
    const { jws } = await unpack((await given(entry.id, '')).message);
    const [head, payload = '', signature] = jws.split('.');
    const said = Buffer.from(payload, 'base64url').toString();
    const changed = Buffer.from(said.replace('Wind', 'Rain')).toString('base64url');
    expect(changed).not.toBe(payload);
    expect(core.verifyHanded(jws, device.key)).toMatchObject({ key: entry.id });
    expect(() => core.verifyHanded(`${head}.${changed}.${signature}`, device.key)).toThrow(/signature/);
  });

  it('is passed on byte for byte as it came', async () => {
    const entry = entries.reading();
    outbox.items = [entry];
    const first = (await given(entry.id, '')).message;
    const { item } = await takenFrom(first);
    outbox.items = [];
    outbox.handed = [{ ...item, account: 'bo' }];
    expect((await given(item.key, '')).message).toEqual(first);
  });

  it('is not given when it was refused, or is of a kind that stays', () => {
    expect(canBeGiven({ ...entries.hold(), state: 'refused' })).toBe(false);
    expect(canBeGiven(write('members', '/x', {}))).toBe(false);
    expect(canBeGiven(entries.hold())).toBe(true);
  });
});
