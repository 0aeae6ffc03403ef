// Who performed on the day of the last take, and the skills that their slots ask for: what a debrief begins with.

import type { Case, Take } from '../../api/types.ts';

export interface Performed {
  /** The last take that has ended. */
  last: Take;
  /** Who performed that day, with what was asked of them. */
  skills: Map<string, string[]>;
}

/** None while no take has ended. */
export function performed(one: Case): Performed | undefined {
  const ended = (one.day?.takes ?? []).filter((take) => take.outcome);
  const last = ended.toSorted((a, b) => b.number - a.number || b.called_at.localeCompare(a.called_at))[0];
  if (!last) return undefined;
  const skills = new Map<string, string[]>();
  const slots = one.plan.facets.cast.slots ?? [];
  for (const take of ended) {
    if (take.day !== last.day || take.outcome?.result === 'stopped') continue;
    for (const [slot, person] of Object.entries(take.cast ?? {})) {
      const asked = slots.find((each) => each.id === slot)?.requirements ?? [];
      const names = asked.flatMap((each) => (each.kind === 'skill' ? [each.name] : []));
      skills.set(person, [...new Set([...(skills.get(person) ?? []), ...names])]);
    }
  }
  return { last, skills };
}
