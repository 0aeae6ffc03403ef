// What one person may sign now. Under which hats, and which of the marks, is the core's word; here the two are asked
// together, so that no screen forgets the hats that somebody else lent.

import { serverNow } from '../api/clock.ts';
import type { Case, Clearance, Membership, Owed } from '../api/types.ts';
import { core } from './core.svelte.ts';

/** The marks on the plan; none while the core is still loading. */
export function owedBy(who: Membership | undefined, one: Case, clearance: Clearance): Owed[] {
  if (!who || !core.ready) return [];
  const person = who.person.id;
  return core.owed(clearance, person, core.hats(one, person, who.roles, serverNow()));
}

/** The marks for the day. */
export function owedForTheDay(who: Membership | undefined, one: Case, clearance: Clearance): Owed[] {
  return owedBy(who, one, { ...clearance, roles: clearance.day?.marks ?? [] });
}
