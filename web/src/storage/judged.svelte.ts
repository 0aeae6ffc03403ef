// A gag's answer as this phone may show it: the server's while it is fresh, the core's own when there are
// writes not yet sent or the server's word has grown old.

import { serverNow } from '../api/client.ts';
import type { Clearance, Device, GagPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { live } from '../live.svelte.ts';
import { session } from '../session.svelte.ts';
import { existingKey, publicKey } from '../sign/device-key.ts';
import { spokenClearance } from '../texts/spoken.ts';
import { outbox } from './outbox.svelte.ts';
import { overlay } from './overlay.ts';
import type { Read } from './reads.svelte.ts';

export interface Judged {
  page: GagPage;
  clearance: Clearance;
  pending: number;
  /** Revisions of this phone that wait, made on another revision than the one shown. */
  apart: string[];
  /** When the core judged it here; undefined when it is the server's own answer. */
  judgedAt: Date | undefined;
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

export function judged(read: Read<GagPage>): Judged | undefined {
  const page = read.value;
  if (!page) return undefined;
  const now = live.now;
  const asSaid = {
    page,
    clearance: spokenClearance(page.clearance),
    pending: 0,
    apart: [],
    judgedAt: undefined,
  };
  if (!core.ready) return asSaid;
  try {
    const me = session.membership?.person.id ?? '';
    const laid = overlay(page, {
      writes: outbox.items,
      handed: outbox.handed.filter((one) => one.verified || one.kind === 'hold'),
      me,
      devices: known([...(session.page?.value?.devices ?? []), ...ownKey.of(page.gag.production, me)]),
      hashes: (facets) => core.facetHashes(facets),
    });
    const old = serverNow().getTime() - read.fetchedAt > FRESH_FOR;
    if (laid.counted === 0 && !old) return { ...asSaid, apart: laid.apart };
    return {
      page: laid.page,
      clearance: core.clearance(laid.page.case, now),
      pending: laid.counted,
      apart: laid.apart,
      judgedAt: now,
    };
  } catch (error) {
    console.warn(error);
    return asSaid;
  }
}
