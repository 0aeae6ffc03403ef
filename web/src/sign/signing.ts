// What is put before a signer: the statement, and what changed since their role last signed. The server makes it
// where it answers; with no signal the core makes the same from the page that this phone kept.

import { at } from '../api/address.ts';
import { serverNow } from '../api/clock.ts';
import type { Draft, Facet, Facets, GagPage, Role } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import type { Judged } from '../storage/judged.svelte.ts';
import { kept } from '../storage/reads.svelte.ts';

/** A draft and the page it is of: both are held as first shown, for what is read is what is signed. */
export interface Offered {
  draft: Draft;
  page: GagPage;
  /** Covered facets that changed since, of which this phone does not have what they were. */
  unseen: Facet[];
}

/** The device mints the id when the statement is signed; until then there is none. */
const NO_ID = '00000000-0000-0000-0000-000000000000';

export function offeredByServer(draft: Draft, page: GagPage): Offered {
  return { draft, page, unseen: [] };
}

/** The same, made here. `laid` is the page with what this phone has not sent yet, `read` the page as the server
 *  last gave it, `earlier` a draft the server made at some other time. Throws when it may not be signed. */
export async function offeredHere(
  laid: Judged,
  read: GagPage,
  [role, slot, signer]: [Role, string | undefined, string],
  earlier?: Draft,
): Promise<Offered> {
  const page = { ...laid.page, clearance: laid.clearance };
  const prepared = core.draftSignoff(page.case, role, slot, signer, NO_ID, serverNow());
  const previous = prepared.previous ?? null;
  const offered = (changes: Draft['changes'], unseen: Facet[] = []): Offered => ({
    draft: { ...prepared, previous, changes },
    page,
    unseen,
  });
  if (!previous) return offered([]);
  const same =
    earlier?.statement.plan_digest === prepared.statement.plan_digest &&
    earlier.statement.technique === prepared.statement.technique &&
    earlier.previous?.signoff === previous.signoff;
  if (same) return offered(earlier.changes);
  const covers = new Set(prepared.covers);
  const before = await facetsAt(previous.revision, page, read);
  if (before) {
    const changes = core.diffFacets(before, page.plan.facets);
    return offered(changes.filter((one) => covers.has(one.facet)));
  }
  const standing = page.clearance.roles.find((one) => one.role === role && (one.slot ?? undefined) === slot);
  return offered([], standing?.changed ?? prepared.covers);
}

/** What the plan held at a revision, where this phone has it. */
async function facetsAt(revision: number, ...pages: GagPage[]): Promise<Facets | undefined> {
  const gag = pages[0]?.gag.id ?? '';
  const found = pages.find((one) => one.plan.revision === revision);
  return (found?.plan ?? (await kept(at('/gags/{gag}/plans/{revision}', { gag, revision }))))?.facets;
}
