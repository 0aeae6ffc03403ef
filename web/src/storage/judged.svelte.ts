// A gag's answer as this phone may show it: the server's while it is fresh, the core's own when there are
// writes not yet sent or the server's word has grown old.

import type { Clearance, GagPage } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { live } from '../live.svelte.ts';
import { session } from '../session.svelte.ts';
import { outbox } from './outbox.svelte.ts';
import { withPending } from './overlay.ts';
import type { Read } from './reads.svelte.ts';

export interface Judged {
  page: GagPage;
  clearance: Clearance;
  pending: number;
  /** When the core judged it here; undefined when it is the server's own answer. */
  judgedAt: Date | undefined;
}

/** Readings age by the minute, so an answer older than this is judged again. */
const FRESH_FOR = 90_000;

export function judged(read: Read<GagPage>): Judged | undefined {
  const page = read.value;
  if (!page) return undefined;
  const now = live.now;
  const asSaid = { page, clearance: page.clearance, pending: 0, judgedAt: undefined };
  if (!core.ready) return asSaid;
  try {
    const laid = withPending(page, outbox.items, session.membership?.person.id ?? '');
    const old = Date.now() - read.fetchedAt > FRESH_FOR;
    if (laid.counted === 0 && !old) return asSaid;
    return {
      page: laid.page,
      clearance: core.clearance(laid.page.case, now),
      pending: laid.counted,
      judgedAt: now,
    };
  } catch (error) {
    console.warn(error);
    return asSaid;
  }
}
