// A gag's answer as this phone may show it: the server's while it is fresh, the core's own when there are
// writes not yet sent or the server's word has grown old.

import { serverNow } from '../api/client.ts';
import type { Clearance, Device, GagPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { live } from '../live.svelte.ts';
import { session } from '../session.svelte.ts';
import { existingKey, publicKey } from '../sign/device-key.ts';
import { t } from '../texts/index.ts';
import { spokenClearance } from '../texts/spoken.ts';
import type { QueuedWrite } from './database.ts';
import { outbox } from './outbox.svelte.ts';
import { overlay } from './overlay.ts';
import type { Read } from './reads.svelte.ts';
import { isStop } from './stops.ts';

export interface Judged {
  page: GagPage;
  clearance: Clearance;
  pending: number;
  /** Revisions of this phone that wait, made on another revision than the one shown. */
  apart: string[];
  /** When the core judged it here; undefined when it is the server's own answer. */
  judgedAt: Date | undefined;
  /** When the server said it, where it should have been judged anew and could not be: nothing goes on it. */
  unjudgedSince: Date | undefined;
}

/** Readings age by the minute, so an answer older than this is judged again. */
const FRESH_FOR = 90_000;

/** This phone's own key, so that a signature it made with no signal is one the core can check. */
class OwnKey {
  devices = $state.raw<Device[]>([]);
  #of = '';

  of(production: string, person: string): Device[] {
    const owner = `${production} ${person} ${outbox.items.length}`;
    if (owner !== this.#of) {
      this.#of = owner;
      queueMicrotask(() => void this.#load(production, person));
    }
    return this.devices;
  }

  async #load(production: string, person: string): Promise<void> {
    const key = await existingKey(production, person);
    if (!key) {
      if (this.devices.length > 0) this.devices = [];
      return;
    }
    if (this.devices[0]?.id === key.device) return;
    const [id, name] = [key.device, key.name];
    const registered_at = new Date(0).toISOString();
    this.devices = [{ id, person, name, key: await publicKey(key.pair), registered_at, revoked_at: null }];
  }
}
const ownKey = new OwnKey();

/** Each device once: the server's word of this phone's own is the fuller one. */
function known(devices: Device[]): Device[] {
  return [...new Map(devices.toReversed().map((one) => [one.id, one])).values()];
}

/** An old answer that nobody could judge anew: whatever it says, no go is called on it. */
function unjudged(said: Judged, heardAt: number): Judged {
  const because = { kind: 'plan' as const, about: '', reason: t.onDay.unjudged, remedy: t.onDay.unjudgedFix };
  const known = said.clearance.go;
  const open = known.open && { ...known.open, lapsed: [because.reason, ...known.open.lapsed] };
  const go = { ...known, may: false, why_not: [because, ...known.why_not], open };
  return { ...said, clearance: { ...said.clearance, go }, unjudgedSince: new Date(heardAt) };
}

/** What waits, and the stops and goes that the server took after the page shown was asked for: they are not in it, and
 *  if the signal goes before it is read again they must not be gone. */
function stillUnseen(items: readonly QueuedWrite[], begunAt: number): QueuedWrite[] {
  const unseen = (one: QueuedWrite) =>
    one.state === 'sent' &&
    (isStop(one.label.kind) || one.label.kind === 'go') &&
    (one.settled_at ?? 0) >= begunAt;
  return items.map((one) => (unseen(one) ? { ...one, state: 'waiting' } : one));
}

export function judged(read: Read<GagPage>): Judged | undefined {
  const page = read.value;
  if (!page) return undefined;
  const now = live.now;
  const asSaid: Judged = {
    page,
    clearance: spokenClearance(page.clearance),
    pending: 0,
    apart: [],
    judgedAt: undefined,
    unjudgedSince: undefined,
  };
  // An age below nothing is a clock that was set, and as good as any other.
  const old = Math.abs(serverNow().getTime() - read.fetchedAt) > FRESH_FOR;
  const waiting = [...outbox.items, ...outbox.handed].some((one) => one.state === 'waiting');
  if (!core.ready) return old || waiting ? unjudged(asSaid, read.fetchedAt) : asSaid;
  try {
    const me = session.membership?.person.id ?? '';
    const laid = overlay(page, {
      writes: stillUnseen(outbox.items, read.begunAt),
      handed: outbox.handed.filter((one) => one.verified || isStop(one.kind)),
      me,
      devices: known([...(session.page?.value?.devices ?? []), ...ownKey.of(page.gag.production, me)]),
      hashes: (facets) => core.facetHashes(facets),
    });
    if (laid.counted === 0 && !old) return { ...asSaid, apart: laid.apart };
    return {
      page: laid.page,
      clearance: core.clearance(laid.page.case, now),
      pending: waiting ? laid.counted : 0,
      apart: laid.apart,
      judgedAt: now,
      unjudgedSince: undefined,
    };
  } catch (error) {
    console.warn(error);
    return unjudged(asSaid, read.fetchedAt);
  }
}
