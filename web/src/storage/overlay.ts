// What this phone has written and not yet sent, laid over what the server last said, so that a hold raised
// with no signal shows as held here at once. It adds records; the judge in the core gives the answer.

import type { GagPage, Hold, Reading, RehearsalRun } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import type { QueuedWrite } from './database.ts';

type Body = Record<string, unknown>;

function concerns(write: QueuedWrite, page: GagPage): boolean {
  if (write.state !== 'waiting') return false;
  if (write.label.gag) return write.label.gag === page.gag.id;
  return write.label.kind === 'hold';
}

/** The page as it will be once these writes are sent, and how many of them it counts. */
export function withPending(
  page: GagPage,
  writes: QueuedWrite[],
  me: string,
): { page: GagPage; counted: number } {
  const mine = writes.filter((write) => concerns(write, page));
  if (mine.length === 0) return { page, counted: 0 };
  const one = {
    ...page.case,
    signoffs: [...page.case.signoffs],
    holds: [...page.case.holds],
    readings: [...page.case.readings],
    runs: [...page.case.runs],
  };
  let counted = 0;
  for (const write of mine) {
    const body = write.body as Body;
    const at = new Date(write.queued_at).toISOString();
    if (write.label.kind === 'hold') {
      one.holds.push({ agreements: [], ...body, raised_at: at, raised_by: me } as unknown as Hold);
    } else if (write.label.kind === 'reading') {
      one.readings.push({ ...body, by: me } as unknown as Reading);
    } else if (write.label.kind === 'run') {
      const facets = core.facetHashes(page.plan.facets);
      one.runs.push({ ...body, facets, at, by: me } as unknown as RehearsalRun);
    } else if (write.label.kind === 'sign_off') {
      one.signoffs.push({ jws: String(body.jws), received_at: at, leaf: page.trail.size, met: [] });
    } else continue;
    counted += 1;
  }
  return { page: { ...page, case: one }, counted };
}
