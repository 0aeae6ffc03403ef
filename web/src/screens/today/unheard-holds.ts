// Holds that this phone knows of and the server does not: raised here, or handed over by another phone. Each once,
// and none that the server has told of by now.

import type { Today } from '../../api/types.ts';
import { payloadOf } from '../../sign/jws.ts';
import { outbox } from '../../storage/outbox.svelte.ts';

export interface UnheardHold {
  id: string;
  gag: string | undefined;
  /** The gag's code as its raiser's phone wrote it; empty when it was handed over. */
  about: string;
  /** Who handed it over, where it was handed over. */
  from?: string;
  handed: boolean;
  /** The phone had no room for it. */
  unkept: boolean;
}

export function unheardHolds(today: Today): UnheardHold[] {
  const own = outbox.waiting
    .filter((one) => one.label.kind === 'hold')
    .map((one) => ({
      id: (one.body as { id?: string } | undefined)?.id ?? one.id,
      gag: one.label.gag,
      about: one.label.about,
      handed: false,
      unkept: outbox.unkept.some((each) => each.id === one.id),
    }));
  const handed = outbox.handed
    .filter((one) => one.kind === 'hold' && one.state === 'waiting')
    .map((one) => ({
      id: payloadOf<{ body?: { id?: string } }>(one.jws).body?.id ?? one.key,
      gag: one.gag,
      about: '',
      from: one.from,
      handed: true,
      unkept: false,
    }));
  const heard = new Set(today.held.map((one) => one.hold.id));
  return [...own, ...handed].filter((one) => !heard.has(one.id));
}
