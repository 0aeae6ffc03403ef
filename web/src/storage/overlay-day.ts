// What was done on the day and not yet sent, as records in the case: what the server will keep of it, so that
// the core judges the same here. It adds records and decides nothing.

import type { Case, DayLog, FacetHashes, Facets, GagPage } from '../api/types.ts';
import { payloadOf } from '../sign/jws.ts';
import type { Addition, LaidOut } from './overlay.ts';

const EVERYWHERE = new Set([
  'equipment',
  'quarantine',
  'back_in_use',
  'shock_load',
  'stand_down',
  'returned',
  'incident',
  'told',
  'closing',
]);

/** Kinds that concern every gag when they name none. */
export function ofEverything(kind: string): boolean {
  return EVERYWHERE.has(kind);
}

/** A copy to add to; a page kept by an earlier version of the app has none. */
export function copyOfDay(day: DayLog | undefined): DayLog {
  return {
    equipment: [...(day?.equipment ?? [])],
    briefings: [...(day?.briefings ?? [])],
    signoffs: [...(day?.signoffs ?? [])],
    takes: [...(day?.takes ?? [])],
    debriefs: [...(day?.debriefs ?? [])],
    looks: [...(day?.looks ?? [])],
    stand_downs: [...(day?.stand_downs ?? [])],
    incidents: [...(day?.incidents ?? [])],
    taken: [...(day?.taken ?? [])],
    elsewhere: [...(day?.elsewhere ?? [])],
    practised: [...(day?.practised ?? [])],
  };
}

export function layDay(
  one: Addition,
  into: Case,
  page: GagPage,
  hashes: (facets: Facets) => FacetHashes,
): LaidOut {
  const day = into.day as DayLog;
  const { body, by, at } = one;
  switch (one.kind) {
    case 'briefing':
      // The judge looks at those that are briefed, and knows which they are.
      return added(day.briefings, { points: '', ...body, facets: hashes(into.plan.facets), by });
    case 'day_mark': {
      const jws = String(body.jws);
      if (day.signoffs.some((known) => known.jws === jws || idOf(known.jws) === idOf(jws))) return false;
      day.signoffs.push({ jws, received_at: at, leaf: page.trail.size + day.signoffs.length });
      return true;
    }
    case 'go': {
      const { at: called_at, ...rest } = body;
      const cast = Object.fromEntries(
        (into.plan.facets.cast.slots ?? [])
          .filter((slot) => slot.person)
          .map((slot) => [slot.id, slot.person]),
      );
      return added(day.takes, { ...rest, called_at, called_by: by, cast, judged: null, outcome: null });
    }
    case 'take_end':
      return changed(day.takes, idIn(one.path, 'takes'), (take) =>
        take.outcome
          ? undefined
          : { ...take, outcome: { note: '', ...body, by } as unknown as typeof take.outcome },
      );
    case 'debrief':
      return added(day.debriefs, { as_planned: '', differently: '', next_time: '', used: [], ...body, by });
    case 'look':
      return added(day.looks, { ...body, gag: page.gag.id, by });
    case 'stand_down':
      return added(day.stand_downs, { ...body, by, returned: null });
    case 'returned':
      return changed(day.stand_downs, idIn(one.path, 'stand-downs'), (down) =>
        down.returned ? undefined : { ...down, returned: { at, by } },
      );
    case 'incident':
      return added(day.incidents, { what: '', ...body, by, told: [], closings: [], closed_at: null });
    case 'told':
      return changed(day.incidents, idIn(one.path, 'incidents'), (incident) => {
        const told = incident.told ?? [];
        if (told.some((known) => known.who === body.who)) return undefined;
        return { ...incident, told: [...told, { ...body, by } as (typeof told)[number]] };
      });
    case 'closing':
      return changed(day.incidents, idIn(one.path, 'incidents'), (incident) => {
        const closings = incident.closings ?? [];
        if (closings.some((known) => known.role === body.role && known.person === by)) return undefined;
        return {
          ...incident,
          closings: [...closings, { ...body, person: by, at } as (typeof closings)[number]],
        };
      });
    case 'quarantine':
      return changed(day.equipment, idIn(one.path, 'equipment'), (item) => {
        const quarantined = setAside(item.quarantined, String(body.at), String(body.reason), by);
        return quarantined && { ...item, quarantined };
      });
    case 'back_in_use':
      return changed(day.equipment, idIn(one.path, 'equipment'), (item) =>
        item.quarantined && !befellAfter(item, String(body.at))
          ? { ...item, quarantined: null, inspected_until: String(body.inspected_until) }
          : undefined,
      );
    case 'shock_load':
      return changed(day.equipment, idIn(one.path, 'equipment'), (item) => {
        const shocks = item.shock_loads ?? [];
        if (shocks.some((known) => known.id === body.id)) return undefined;
        const since = String(body.at);
        return {
          ...item,
          shock_loads: [...shocks, { ...body, by } as (typeof shocks)[number]],
          quarantined: setAside(item.quarantined, since, SHOCKED, by) ?? item.quarantined,
        };
      });
    default:
      return false;
  }
}

type Quarantine = NonNullable<DayLog['equipment'][number]['quarantined']>;

/** Why a piece is set aside that took a shock load, in the server's words. */
export const SHOCKED = 'it took a shock load';

/** A piece set aside, perhaps once more: as on the server, the earliest is told. Undefined when the page has it. */
export function setAside(
  before: Quarantine | null | undefined,
  since: string,
  reason: string,
  by: string,
): Quarantine | undefined {
  const mine = { since, reason, by };
  if (!before) return mine;
  const moment = Date.parse(since);
  const last = Date.parse(before.again_at ?? before.since);
  if (before.by === by && Date.parse(before.since) === moment) return undefined;
  const began = Date.parse(before.since);
  const theirs = began < moment || (began === moment && before.by <= by);
  const [first, again] = theirs ? [before, Math.max(last, moment)] : [mine, last];
  return { ...first, again_at: new Date(again).toISOString() };
}

/** Whether something befell a piece after it was inspected, which an inspection that arrives late did not see. */
export function befellAfter(item: DayLog['equipment'][number], inspected: string): boolean {
  const aside = item.quarantined;
  const moments = [aside?.again_at ?? aside?.since, ...(item.shock_loads ?? []).map((one) => one.at)];
  return moments.some((one) => one !== undefined && Date.parse(one) > Date.parse(inspected));
}

function added<T extends { id: string }>(list: T[], made: object): boolean {
  const one = made as unknown as T;
  if (list.some((known) => known.id === one.id)) return false;
  list.push(one);
  return true;
}

/** Changes the record a path names. One that is not here is not about this gag, or is still to be laid. */
function changed<T extends { id: string }>(
  list: T[],
  id: string | undefined,
  change: (one: T) => T | undefined,
): LaidOut {
  const at = list.findIndex((one) => one.id === id);
  const known = list[at];
  if (!known) return 'too_early';
  const next = change(known);
  if (!next) return false;
  list[at] = next;
  return true;
}

function idIn(path: string, after: string): string | undefined {
  const parts = path.split('/');
  return parts[parts.indexOf(after) + 1];
}

function idOf(jws: string): string {
  try {
    return payloadOf<{ id: string }>(jws).id;
  } catch {
    return jws;
  }
}
