// What waits, laid over a page: the same page in whatever order things were written or arrived.

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { GagPage } from '../api/types.ts';
import { COORDINATOR, emptyCase, MEDIC, pageOf, startCore } from '../testing/case.ts';
import type { HandedItem, QueuedWrite } from './database.ts';
import { type Laid, overlay } from './overlay.ts';
import { uuidv7 } from './uuid.ts';

type Kind = HandedItem['kind'];

/** One thing that somebody wrote: as the write of this phone, or as another phone handed it over. */
interface Made {
  key: string;
  kind: Kind;
  path: string;
  body: Record<string, unknown>;
  ifMatch?: string;
}

const AT = Date.parse('2026-11-21T10:00:00Z');
let page: GagPage;

beforeAll(async () => {
  await startCore();
  page = pageOf(emptyCase());
});

const coded = (value: unknown) => Buffer.from(JSON.stringify(value)).toString('base64url');

function asWrite(one: Made): QueuedWrite {
  return {
    id: one.key,
    account: 'a',
    method: 'POST',
    path: one.path,
    body: one.body,
    headers: one.ifMatch ? { 'If-Match': one.ifMatch } : {},
    label: { kind: one.kind, gag: page.gag.id, about: 'G07' },
    state: 'waiting',
    queued_at: AT,
  };
}

function asHanded(one: Made): HandedItem {
  const { key, kind, path, body } = one;
  const made_at = new Date(AT).toISOString();
  const request = { key, person: MEDIC, made_at, path, body, if_match: one.ifMatch };
  const jws =
    kind === 'sign_off' ? String(body.jws) : `${coded({ alg: 'ES256' })}.${coded(request)}.${coded('')}`;
  const { id: gag, production } = page.gag;
  return { key, account: 'a', production, gag, kind, jws, received_at: AT, state: 'waiting' };
}

function lay(writes: Made[], handed: Made[]) {
  const laid: Laid = {
    writes: writes.map(asWrite),
    handed: handed.map(asHanded),
    me: COORDINATOR,
    devices: [],
    hashes: (facets) => ({ action: facets.action.summary }) as unknown as ReturnType<Laid['hashes']>,
  };
  const over = overlay(page, laid);
  return { counted: over.counted, apart: over.apart, case: over.page.case, shots: over.page.test_shots };
}

/** A day of writing on one gag: holds and agreements on them, readings, runs, signatures and revisions. Keys are in
 *  any order, as on phones whose clocks differ. */
const aDay = fc
  .array(
    fc.record({
      kind: fc.constantFrom<Kind>('hold', 'release', 'reading', 'run', 'test_shot', 'sign_off', 'revision'),
      thing: fc.integer({ min: 0, max: 2 }),
      key: fc.uuid({ version: 7 }),
      base: fc.integer({ min: 1, max: 3 }),
      ours: fc.boolean(),
    }),
    { maxLength: 12 },
  )
  .map((all) =>
    all.map(({ kind, thing, key, base, ours }) => {
      const id = `thing-${thing}`;
      const one: Made = { key, kind, path: `/gags/${page.gag.id}/${kind}`, body: { id } };
      if (kind === 'release') {
        one.path = `/holds/${id}/agreements`;
        one.body = { role: 'coordinator', cause: 'dealt with' };
      } else if (kind === 'sign_off') one.body = { jws: `${coded({})}.${coded({ id })}.${coded(key)}` };
      else if (kind === 'revision') {
        const { facets } = page.case.plan;
        one.ifMatch = `"${base}"`;
        one.body = { facets: { ...facets, action: { ...facets.action, summary: `${id} ${key}` } }, note: '' };
      }
      return { one, ours };
    }),
  );

describe('what waits, laid over a page', () => {
  it('gives the same page for every order of own writes and handed items', () => {
    const shuffled = aDay.chain((all) =>
      fc.record({
        all: fc.constant(all),
        other: fc.shuffledSubarray(all, { minLength: all.length, maxLength: all.length }),
      }),
    );
    const parted = (all: { one: Made; ours: boolean }[]) =>
      lay(
        all.filter((each) => each.ours).map((each) => each.one),
        all.filter((each) => !each.ours).map((each) => each.one),
      );
    fc.assert(
      fc.property(shuffled, ({ all, other }) => {
        expect(parted(other)).toEqual(parted(all));
      }),
    );
  });

  it('counts once what both was written here and came back by another phone', () => {
    fc.assert(
      fc.property(aDay, (all) => {
        const ones = all.map((each) => each.one);
        const twice = lay([], [...ones, ...ones]);
        expect(twice).toEqual(lay([], ones));
        expect(lay(ones, ones).counted).toBe(twice.counted);
      }),
    );
  });

  it('finds the hold an agreement is about, and the revision another builds on, on clocks that differ', () => {
    const [early, late] = [uuidv7(1_000), uuidv7(9_000_000)];
    const { facets } = page.case.plan;
    const agreed: Made = {
      key: early,
      kind: 'release',
      path: '/holds/h/agreements',
      body: { role: 'medic' },
    };
    const hold: Made = { key: late, kind: 'hold', path: '/holds', body: { id: 'h' } };
    expect(lay([agreed], [hold]).case.holds[0]?.agreements).toHaveLength(1);

    const revision = (key: string, base: number): Made => ({
      key,
      kind: 'revision',
      path: '/plans',
      ifMatch: `"${base}"`,
      body: { facets: { ...facets, action: { ...facets.action, summary: key } }, note: '' },
    });
    const both = lay([revision(early, 2)], [revision(late, 1)]);
    expect([both.case.plan.revision, both.apart]).toEqual([3, []]);
    expect(lay([revision(early, 2)], []).apart).toEqual([early]);
  });
});
