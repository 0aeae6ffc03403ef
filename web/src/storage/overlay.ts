// What this phone has written and not yet sent, and what other phones handed it, laid over what the server last
// said: a hold raised with no signal shows as held here at once. A pure function that gives the same page in
// whatever order things arrived, and counts once what the server has by now. It adds records; the judge in the
// core gives the answer.

import type {
  Case,
  Device,
  FacetHashes,
  Facets,
  GagPage,
  Hold,
  Plan,
  Reading,
  RehearsalRun,
  TestShot,
} from '../api/types.ts';
import { payloadOf } from '../sign/jws.ts';
import type { Opening } from '../sign/openings.ts';
import type { HandedItem, QueuedWrite } from './database.ts';
import { copyOfDay, layDay, ofEverything } from './overlay-day.ts';

export interface Overlaid {
  page: GagPage;
  /** How many records were added to what the server said. */
  counted: number;
  /** Revisions that wait and were made on another revision than the one shown: a choice is to come. */
  apart: string[];
}

/** What is laid over the page, and what it takes to read it. */
export interface Laid {
  writes: readonly QueuedWrite[];
  handed: readonly HandedItem[];
  /** Who wrote the writes. */
  me: string;
  /** Keys this phone knows besides those on the page: its own, and those of people who handed something over. */
  devices: readonly Device[];
  /** The core's own hashing, for a run made on a revision that is not yet sent. */
  hashes: (facets: Facets) => FacetHashes;
}

/** A write of this phone or of another, in one form. */
export interface Addition {
  key: string;
  kind: string;
  gag: string | undefined;
  by: string;
  at: string;
  path: string;
  ifMatch: string | undefined;
  body: Record<string, unknown>;
  jws: string | undefined;
}

interface Request {
  key: string;
  person: string;
  made_at: string;
  path: string;
  if_match?: string;
  body: Record<string, unknown>;
}

function ofWrite(write: QueuedWrite, me: string): Addition {
  const body = (write.body ?? {}) as Record<string, unknown>;
  return {
    key: write.id,
    kind: write.label.kind,
    gag: write.label.gag,
    by: me,
    at: new Date(write.queued_at).toISOString(),
    path: write.path,
    ifMatch: write.headers['If-Match'],
    body,
    jws: write.label.kind === 'sign_off' ? String(body.jws) : undefined,
  };
}

function ofHanded(item: HandedItem): Addition[] {
  if (item.kind === 'sign_off') {
    const at = new Date(item.received_at).toISOString();
    const { key, kind, gag, jws, openings } = item;
    return [{ key, kind, gag, by: '', at, path: '', ifMatch: undefined, body: { openings }, jws }];
  }
  try {
    const request = payloadOf<Request>(item.jws);
    return [
      {
        key: item.key,
        kind: item.kind,
        gag: item.gag,
        by: request.person,
        at: request.made_at,
        path: request.path,
        ifMatch: request.if_match,
        body: request.body ?? {},
        jws: undefined,
      },
    ];
  } catch {
    // Whatever verified it must have read it; what cannot be read adds nothing.
    return [];
  }
}

function concerns(one: Addition, page: GagPage): boolean {
  if (ofEverything(one.kind) && !one.gag) return true;
  return one.gag === page.gag.id || (one.kind === 'hold' && !one.gag);
}

/** The page as it will be once these are sent. */
export function overlay(page: GagPage, laid: Laid): Overlaid {
  const waiting = <T extends { state: string }>(one: T) => one.state === 'waiting';
  const all = [
    ...laid.writes.filter(waiting).map((one) => ofWrite(one, laid.me)),
    ...laid.handed.filter(waiting).flatMap(ofHanded),
  ].filter((one) => concerns(one, page));
  // One key is one thing, and keys sort by the time they were made, whatever came first.
  const additions = [...new Map(all.map((one) => [one.key, one])).values()].toSorted((a, b) =>
    a.key < b.key ? -1 : 1,
  );
  const desk = new Desk(page, laid);
  // Clocks of phones differ: what builds on something not yet laid, such as an agreement on its hold, is tried again
  // after the rest.
  let left = additions;
  for (let before = -1; left.length !== before; ) {
    before = left.length;
    left = left.filter((one) => desk.lay(one) === 'too_early');
  }
  const apart = [
    ...desk.apart,
    ...left.filter((one) => one.kind === 'revision').map((one) => one.key),
  ].sort();
  if (desk.counted === 0) return { page, counted: 0, apart };
  const over = { ...page, plan: desk.one.plan, case: desk.one, test_shots: desk.shots };
  return { page: over, counted: desk.counted, apart };
}

/** What came of laying one: whether it counts, or what it builds on is not there. */
export type LaidOut = boolean | 'too_early';

/** A copy of the case being added to. */
class Desk {
  readonly one: Case;
  readonly shots: TestShot[];
  readonly apart: string[] = [];
  counted = 0;
  readonly #page: GagPage;
  readonly #hashes: Laid['hashes'];

  constructor(page: GagPage, laid: Laid) {
    this.#page = page;
    this.#hashes = laid.hashes;
    const { signoffs, holds, readings, runs, devices, day } = page.case;
    const more = laid.devices.filter((one) => !devices.some((known) => known.id === one.id));
    // A page kept by an earlier version of the app has none.
    this.shots = [...(page.test_shots ?? [])];
    this.one = {
      ...page.case,
      signoffs: [...signoffs],
      holds: [...holds],
      readings: [...readings],
      runs: [...runs],
      devices: [...devices, ...more],
      day: copyOfDay(day),
    };
  }

  lay(one: Addition): LaidOut {
    const laid = this.#add(one);
    if (laid === true) this.counted += 1;
    return laid;
  }

  #add(one: Addition): LaidOut {
    const { body, by, at } = one;
    switch (one.kind) {
      case 'sign_off':
        return this.#signOff(one);
      case 'hold':
        return addNew(this.one.holds, {
          agreements: [],
          ...body,
          raised_at: at,
          raised_by: by,
        } as unknown as Hold);
      case 'reading':
        return addNew(this.one.readings, { ...body, by } as unknown as Reading);
      case 'run': {
        const { revision, ...run } = body as Record<string, unknown>;
        // A run counts for what was rehearsed; of another revision nothing is known here.
        const facets = revision === this.one.plan.revision ? this.#hashes(this.one.plan.facets) : {};
        return addNew(this.one.runs, { at, ...run, facets, by } as unknown as RehearsalRun);
      }
      case 'test_shot': {
        const made = { ...body, gag: this.#page.gag.id, recorded_by: by, recorded_at: at };
        return addNew(this.shots, made as unknown as TestShot);
      }
      case 'release':
        return this.#release(one);
      case 'revision':
        return this.#revise(one);
      default:
        return layDay(one, this.one, this.#page, this.#hashes);
    }
  }

  #signOff(one: Addition): boolean {
    const jws = one.jws ?? '';
    const id = idOf(jws);
    if (this.one.signoffs.some((known) => known.jws === jws || idOf(known.jws) === id)) return false;
    const openings = (one.body.openings ?? []) as Opening[];
    this.one.signoffs.push({ jws, received_at: one.at, leaf: this.#page.trail.size, met: [], openings });
    return true;
  }

  /** An agreement is added to the hold it is about; whether that releases it is for others to say. */
  #release(one: Addition): LaidOut {
    const at = this.one.holds.findIndex((hold) => one.path === `/holds/${hold.id}/agreements`);
    const hold = this.one.holds[at];
    if (!hold) return 'too_early';
    const agreements = hold.agreements ?? [];
    const made = { role: one.body.role, cause: one.body.cause, person: one.by, at: one.at };
    if (agreements.some((known) => known.role === made.role && known.person === made.person)) return false;
    this.one.holds[at] = { ...hold, agreements: [...agreements, made as (typeof agreements)[number]] };
    return true;
  }

  #revise(one: Addition): LaidOut {
    const { plan } = this.one;
    const base = Number(one.ifMatch?.replaceAll('"', ''));
    const facets = one.body.facets as Facets;
    // The answer was lost on its way, and the page has it already.
    if (plan.revision === base + 1 && same(plan.facets, facets)) return false;
    if (plan.revision < base) return 'too_early';
    if (plan.revision !== base) {
      this.apart.push(one.key);
      return false;
    }
    const next: Plan = {
      ...plan,
      facets,
      technique: String(one.body.technique ?? plan.technique),
      note: String(one.body.note ?? ''),
      revision: base + 1,
      author: one.by,
      written_at: one.at,
    };
    this.one.plan = next;
    return true;
  }
}

function addNew<T extends { id: string }>(list: T[], made: T): boolean {
  if (list.some((one) => one.id === made.id)) return false;
  list.push(made);
  return true;
}

function idOf(jws: string): string {
  try {
    return payloadOf<{ id: string }>(jws).id;
  } catch {
    return jws;
  }
}

/** Two JSON values that say the same. A field left out and one given as nothing are the same to the server. */
function same(a: unknown, b: unknown): boolean {
  if (a === b || (empty(a) && empty(b))) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].every((key) =>
    same(one[key], other[key]),
  );
}

function empty(value: unknown): boolean {
  if (value === undefined || value === null || value === '') return true;
  return typeof value === 'object' && Object.values(value).every(empty);
}
