import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type { Case, Membership, Role } from '../api/types.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { emptyCase, MEDIC, PERFORMER, startCore } from '../testing/case.ts';
import { core } from './core.svelte.ts';
import { owedBy, owedForTheDay } from './owed.ts';

const now = new Date('2026-11-22T10:00:00Z');

beforeAll(async () => {
  vi.useFakeTimers({ now, toFake: ['Date'] });
  await startCore();
});
afterAll(() => {
  vi.useRealTimers();
});

const who = (id: string, roles: Role[]): Membership => ({
  production: { id: uuidv7(), name: 'Silo', demo: false, time_zone: 'UTC' },
  person: { id, name: 'Dee', code: 'P01' },
  roles,
});

function rolesOwed(me: Membership | undefined, one: Case): Role[] {
  return owedBy(me, one, core.clearance(one, now)).map((mark) => mark.role);
}

it('is what waits under one’s own hats, and nothing for nobody', () => {
  const one = emptyCase();
  expect(rolesOwed(who(MEDIC, ['medic']), one)).toEqual(['medic']);
  expect(rolesOwed(who(PERFORMER, ['performer']), one)).toEqual(['performer']);
  expect(rolesOwed(undefined, one)).toEqual([]);
});

it('is also what is owed under a hat that somebody lent, on the plan and on the day', () => {
  const one = emptyCase();
  const [from, to] = [uuidv7(), uuidv7()];
  one.members.push(
    { person: from, name: 'Eli', roles: ['rigging'], certificates: [] },
    { person: to, name: 'Dee', roles: ['first_ad'], certificates: [] },
  );
  const lent = who(to, ['first_ad']);
  expect(rolesOwed(lent, one)).toEqual(['first_ad']);
  const at = (hours: number) => new Date(now.getTime() + hours * 3_600_000).toISOString();
  one.delegations = [
    {
      id: uuidv7(),
      from,
      to,
      role: 'rigging',
      gags: [],
      starts: at(-1),
      until: at(24),
      limits: '',
      made_at: at(-1),
    },
  ];
  expect(rolesOwed(lent, one)).toEqual(['rigging', 'first_ad']);
  const day = owedForTheDay(lent, one, core.clearance(one, now));
  expect(day.map((mark) => mark.role)).toEqual(['rigging', 'first_ad']);
});
