import { beforeAll, describe, expect, it } from 'vitest';
import type { GagPage } from '../api/types.ts';
import { forecast } from '../screens/edit/forecast.ts';
import type { QueuedWrite } from '../storage/database.ts';
import { overlay } from '../storage/overlay.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { COORDINATOR, emptyCase, MEDIC, pageOf, signed, startCore } from '../testing/case.ts';
import { core } from './core.svelte.ts';

beforeAll(startCore);

const now = new Date('2026-11-22T10:00:00Z');
const stateOf = (one: Parameters<typeof core.clearance>[0], role: string) =>
  core.clearance(one, now).roles.find((each) => each.role === role)?.state;

describe('signatures made with WebCrypto', () => {
  it('stand before the same judge the server uses', async () => {
    const one = await signed(emptyCase(), 'medic', MEDIC);
    expect(stateOf(one, 'medic')).toBe('standing');
    const signoff = one.signoffs[0];
    const key = one.devices[0]?.key;
    if (!signoff || !key) throw new Error('nothing was signed');
    expect(core.verifySignoff(signoff.jws, key)).toMatchObject({ role: 'medic', signer: MEDIC });
  });

  it('do not, with one character changed', async () => {
    const one = await signed(emptyCase(), 'medic', MEDIC);
    const signoff = one.signoffs[0];
    const key = one.devices[0]?.key;
    if (!signoff || !key) throw new Error('nothing was signed');
    const [head = '', body = '', signature = ''] = signoff.jws.split('.');
    const last = signature.startsWith('A') ? 'B' : 'A';
    expect(() => core.verifySignoff(`${head}.${body}.${last}${signature.slice(1)}`, key)).toThrow();
  });
});

describe('what a change would lapse', () => {
  it('is the coordinator alone for a camera that moves, and both for a higher fall', async () => {
    let one = await signed(emptyCase(), 'medic', MEDIC);
    one = await signed(one, 'coordinator', COORDINATOR);
    const facets = one.plan.facets;
    const titles = (next: typeof facets) =>
      forecast(one, one.plan, next, one.plan.technique, now).lapsing.map((each) => each.role);

    const moved = { ...facets, camera: { ...facets.camera, notes: 'From the crane' } };
    expect(titles(moved)).toEqual(['coordinator']);
    const higher = { ...facets, action: { ...facets.action, parameters: { drop_height: { value: 14 } } } };
    expect(titles(higher)).toEqual(expect.arrayContaining(['coordinator', 'medic']));
    expect(titles(facets)).toEqual([]);
  });

  it('names the field and both values', () => {
    const one = emptyCase();
    const next = structuredClone(one.plan.facets);
    next.action.parameters = { drop_height: { value: 14 } };
    const seen = forecast(one, one.plan, next, one.plan.technique, now);
    expect(seen.changes).toHaveLength(1);
    expect(seen.changes[0]?.facet).toBe('action');
    expect(JSON.stringify(seen.changes[0]?.fields)).toContain('14');
  });
});

describe('writes not sent yet', () => {
  const write = (kind: QueuedWrite['label']['kind'], gag: string | undefined, body: object): QueuedWrite => ({
    id: uuidv7(),
    account: 'a',
    method: 'POST',
    path: '/x',
    body,
    headers: {},
    label: { kind, gag, about: 'G07' },
    state: 'waiting',
    queued_at: now.getTime(),
  });

  const lay = (page: GagPage, writes: QueuedWrite[], me: string) =>
    overlay(page, { writes, handed: [], me, devices: [], hashes: (facets) => core.facetHashes(facets) });

  it('hold a gag here at once, and only the gag they name or all', () => {
    const page = pageOf(emptyCase());
    const held = (one: QueuedWrite) => {
      const laid = lay(page, [one], COORDINATOR);
      return core.clearance(laid.page.case, now).state;
    };
    expect(held(write('hold', page.gag.id, { id: uuidv7(), gag: page.gag.id }))).toBe('held');
    expect(held(write('hold', undefined, { id: uuidv7() }))).toBe('held');
    expect(held(write('hold', uuidv7(), { id: uuidv7(), gag: uuidv7() }))).not.toBe('held');
    expect(held({ ...write('hold', page.gag.id, { id: uuidv7() }), state: 'refused' })).not.toBe('held');
  });

  it('count a signature made here', async () => {
    const before = emptyCase();
    const after = await signed(before, 'medic', MEDIC);
    const page = pageOf({ ...before, devices: after.devices });
    const laid = lay(page, [write('sign_off', page.gag.id, { jws: after.signoffs[0]?.jws })], MEDIC);
    expect(laid.counted).toBe(1);
    expect(stateOf(laid.page.case, 'medic')).toBe('standing');
    expect(page.case.signoffs).toHaveLength(0);
  });

  it('count readings and runs as the judge wants them', () => {
    const page = pageOf(emptyCase());
    const writes = [
      write('reading', page.gag.id, {
        id: uuidv7(),
        kind: 'wind',
        value: 3,
        at: now.toISOString(),
        place: '',
      }),
      write('run', page.gag.id, {
        id: uuidv7(),
        rung: 'bag',
        good: true,
        note: '',
        revision: page.plan.revision,
        at: now.toISOString(),
      }),
    ];
    const laid = lay(page, writes, MEDIC);
    expect(laid.counted).toBe(2);
    expect(() => core.clearance(laid.page.case, now)).not.toThrow();
  });
});

describe('quantities', () => {
  it('are read as people write them and written in both systems', () => {
    expect(core.parse('length', '100 ft')).toBeCloseTo(30.48, 9);
    expect(core.format('length', 30, 'metric')).toMatch(/^30(\.0+)? ?m$/);
    expect(core.format('length', 30.48, 'imperial')).toContain('ft');
    expect(() => core.parse('length', '40 parsecs')).toThrow(/\w/);
  });
});

it('canonical JSON is RFC 8785: sorted keys, no spaces, shortest numbers', () => {
  expect(core.canonical({ b: 1.0, a: { d: '€', c: [1e30, 0.002] } })).toBe(
    '{"a":{"c":[1e+30,0.002],"d":"€"},"b":1}',
  );
});
