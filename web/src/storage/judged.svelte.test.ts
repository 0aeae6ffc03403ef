// The answer a phone shows: never a go on an old word that it could not judge anew itself.

import { beforeAll, beforeEach, expect, it, vi } from 'vitest';
import type { GagPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { session } from '../session.svelte.ts';
import { COORDINATOR, emptyCase, pageOf, startCore } from '../testing/case.ts';
import type { QueuedWrite } from './database.ts';
import { judged } from './judged.svelte.ts';
import { outbox } from './outbox.svelte.ts';
import type { Read } from './reads.svelte.ts';
import { uuidv7 } from './uuid.ts';

let page: GagPage;

beforeAll(startCore);

beforeEach(() => {
  vi.restoreAllMocks();
  core.ready = true;
  outbox.items = [];
  page = pageOf(emptyCase());
  const open = { take: 't', number: 3, called_by: 'a', called_at: '2026-11-21T10:00:00Z', lapsed: [] };
  const go = { ...page.clearance.go, may: true, why_not: [], open };
  page = { ...page, clearance: { ...page.clearance, go } };
});

const heard = (agoMs: number) => {
  const fetchedAt = Date.now() - agoMs;
  return { value: page, fetchedAt, begunAt: fetchedAt } as unknown as Read<GagPage>;
};

const hold = { id: 'h', state: 'waiting', label: { kind: 'hold', about: '' } } as unknown as QueuedWrite;

it('shows the fresh word of the server as it is while the rules are still loading', () => {
  core.ready = false;
  expect(judged(heard(1000))).toMatchObject({ unjudgedSince: undefined, clearance: { go: { may: true } } });
});

it('holds still what was sent after the page was asked for, and no longer once it was read again', () => {
  const me = { person: { id: COORDINATOR }, roles: [] } as unknown as typeof session.membership;
  vi.spyOn(session, 'membership', 'get').mockReturnValue(me);
  const id = uuidv7();
  const sent = {
    ...hold,
    id,
    state: 'sent',
    body: { id, gag: page.gag.id, reason: '', hazard: null },
    headers: {},
    path: `/productions/${page.gag.production}/holds`,
    queued_at: Date.now() - 800,
    settled_at: Date.now() - 500,
    label: { kind: 'hold', gag: page.gag.id, about: '' },
  } as unknown as QueuedWrite;
  outbox.items = [sent];
  const shown = judged(heard(1000));
  expect(shown?.page.case.holds.map((one) => one.id)).toContain(id);
  expect(shown?.clearance.state).toBe('held');
  expect(judged(heard(100))?.page.case.holds.map((one) => one.id)).not.toContain(id);
});

it.each([
  ['is old', 120_000, []],
  ['seems to come from the future', -40_000_000, []],
  ['lacks what this phone wrote', 1000, [hold]],
])('calls no go on a word that %s while the rules are not there', (_, ago, items) => {
  core.ready = false;
  outbox.items = items;
  const shown = judged(heard(ago));
  expect(shown?.clearance.go.may).toBe(false);
  expect(shown?.clearance.go.why_not[0]?.reason).toBe('This device could not judge it anew.');
  expect(shown?.clearance.go.open?.lapsed).toContain('This device could not judge it anew.');
  expect(shown?.unjudgedSince?.getTime()).toBeLessThanOrEqual(Date.now() - ago);
});

it('calls no go on an old word where judging it failed', () => {
  vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  vi.spyOn(core, 'clearance').mockImplementation(() => {
    throw new Error('odd record');
  });
  const shown = judged(heard(120_000));
  expect(shown?.clearance.go.may).toBe(false);
  expect(shown?.judgedAt).toBeUndefined();
});
