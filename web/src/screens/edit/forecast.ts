// What a change would do, before it is saved: the core judges the case as it is and as it would be, and this
// puts the two answers side by side.

import type { Case, Clearance, FacetChange, Facets, Plan, RoleStanding } from '../../api/types.ts';
import { core } from '../../core/core.svelte.ts';

export interface Forecast {
  after: Clearance;
  changes: FacetChange[];
  /** Signatures that stand now and would not. */
  lapsing: RoleStanding[];
  /** It would be done by another technique, whose figures are not those of before. */
  otherwise: boolean;
  /** What the plan held, and what it would hold. */
  from: Facets;
  to: Facets;
}

const keyOf = (one: RoleStanding) => `${one.role} ${one.slot ?? ''}`;
const good = (one: RoleStanding) => one.state === 'standing' || one.state === 'conditional';

export function forecast(one: Case, base: Plan, facets: Facets, technique: string, now: Date): Forecast {
  const changes = core.diffFacets(base.facets, facets);
  const before = core.clearance({ ...one, plan: base }, now);
  const plan: Plan =
    changes.length === 0 && technique === base.technique
      ? base
      : { ...base, technique, facets, revision: base.revision + 1, written_at: now.toISOString() };
  const after = core.clearance({ ...one, plan }, now);
  const still = new Set(after.roles.filter(good).map(keyOf));
  return {
    from: base.facets,
    to: facets,
    otherwise: technique !== base.technique,
    after,
    changes,
    lapsing: before.roles.filter((role) => good(role) && !still.has(keyOf(role))),
  };
}
