// What is the reader's to sign: the server's word, and the core's own for gags about which this phone holds something
// that the server has not heard of yet.

import { at } from '../../api/address.ts';
import type { Today } from '../../api/types.ts';
import { core } from '../../core/core.svelte.ts';
import { owedBy, owedForTheDay } from '../../core/owed.ts';
import { session } from '../../session.svelte.ts';
import { judged } from '../../storage/judged.svelte.ts';
import { outbox } from '../../storage/outbox.svelte.ts';
import { read } from '../../storage/reads.svelte.ts';

type ToSign = Today['to_sign'][number];

export function toSign(today: Today): ToSign[] {
  const me = session.membership;
  if (!me || !core.ready) return today.to_sign;
  const unheard = [
    ...outbox.waiting.map((one) => one.label.gag),
    ...outbox.handed.filter((one) => one.state === 'waiting').map((one) => one.gag),
  ];
  const here = new Map<string, ToSign[]>();
  for (const gag of new Set(unheard)) {
    const answer = gag ? judged(read(at('/gags/{gag}', { gag }))) : undefined;
    if (!gag || !answer) continue;
    const { id, code, title } = answer.page.gag;
    const asked = owedBy(me, answer.page.case, answer.clearance).filter((one) => one.asked);
    const ofDay = today.to_sign.filter((one) => one.gag.id === gag && one.day);
    // Which days are marked now the server said; which of those marks are still wanted the core says here.
    const wanted = owedForTheDay(me, answer.page.case, answer.clearance).filter((one) => one.asked);
    const still = (one: ToSign) =>
      wanted.some((each) => each.role === one.role && (each.slot ?? null) === one.slot);
    here.set(gag, [
      ...asked.map((one) => ({
        gag: { id, code, title },
        role: one.role,
        role_title: one.title,
        slot: one.slot ?? null,
        state: one.state,
        why: one.why,
        day: null,
      })),
      ...ofDay.filter(still),
    ]);
  }
  const untouched = today.to_sign.filter((one) => !here.has(one.gag.id));
  return [...untouched, ...[...here.values()].flat()];
}
