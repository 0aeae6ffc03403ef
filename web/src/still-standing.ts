// Whether a hold or an incident that this phone heard of late still stands. One that came and went in the gap stops
// nobody now; one that the server gives no answer about may stand. Knows nothing of how it is made noticed.

import type { Raised } from './alarm.svelte.ts';
import { at } from './api/address.ts';
import { type Read, read } from './storage/reads.svelte.ts';

/** Asks the page that tells, and answers for any of its records. */
async function askedOf<T>(
  page: Read<T>,
  over: (value: T, id: string) => boolean,
): Promise<(id: string) => boolean> {
  const asked = Date.now();
  await page.refresh();
  // A request that was under way before may have been answered without what was heard of since.
  if (page.begunAt < asked && !page.unreachable && !page.problem) await page.refresh();
  const { value } = page;
  if (page.unreachable || page.problem || value === undefined) return () => true;
  return (id) => !over(value, id);
}

export function stillStanding(what: Raised['what'], production: string): Promise<(id: string) => boolean> {
  if (what === 'hold') {
    const today = read(at('/productions/{production}/today', { production }));
    return askedOf(today, ({ held }, id) => !held.some((one) => one.hold.id === id));
  }
  const book = read(at('/productions/{production}/day', { production }));
  return askedOf(book, ({ incidents }, id) => {
    const known = incidents.find((one) => one.incident.id === id);
    return known !== undefined && known.closers.length === 0 && known.untold.length === 0;
  });
}
