// What this phone can hand over, as a message: an entry of its own, signed here with its device's key; a
// sign-off, which is signed already; or what another phone handed it, just as it came.

import { at } from '../api/address.ts';
import type { Statement } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { session } from '../session.svelte.ts';
import { keyFor } from '../sign/device-key.ts';
import { HANDED, payloadOf, signCompact } from '../sign/jws.ts';
import type { Opening } from '../sign/openings.ts';
import type { HandedItem, QueuedWrite } from '../storage/database.ts';
import { outbox } from '../storage/outbox.svelte.ts';
import { read } from '../storage/reads.svelte.ts';
import { HandError } from './bytes.ts';
import { canBeGiven } from './can-be-given.ts';
import { pack } from './message.ts';
import type { HandedRequest } from './request.ts';

export interface Given {
  kind: HandedItem['kind'];
  about: string;
  message: Uint8Array;
  /** The server knows the key that signed: whoever takes it can check it, if their phone knows it too. */
  registered: boolean;
}

/** The registration of the key waits in the outbox until the server has it. */
function keyWaits(device: string): boolean {
  return outbox.waiting.some(
    (one) => one.label.kind === 'device' && (one.body as { id?: string } | undefined)?.id === device,
  );
}

function productionOf(write: QueuedWrite): string {
  const named = /^\/productions\/([^/]+)\//.exec(write.path)?.[1];
  if (named) return named;
  const page = write.label.gag ? read(at('/gags/{gag}', { gag: write.label.gag })).value : undefined;
  return page?.gag.production ?? session.production?.id ?? '';
}

async function wrapped(write: QueuedWrite): Promise<Given> {
  const { kind, about } = write.label;
  const body = write.body as Record<string, unknown>;
  if (kind === 'sign_off') {
    const jws = String(body.jws);
    const openings = body.openings as Opening[] | undefined;
    const message = await pack({ kind: 'sign_off', jws, key: write.id, openings });
    const { device } = payloadOf<Statement>(jws);
    return { kind, about, message, registered: !keyWaits(device) };
  }
  const production = productionOf(write);
  const person = session.memberships.find((one) => one.production.id === production)?.person.id;
  if (!person) throw new HandError('not_carried', 'it is of another production');
  const key = await keyFor(production, person);
  const request: HandedRequest = {
    production,
    person,
    device: key.device,
    made_at: new Date(write.queued_at).toISOString(),
    key: write.id,
    method: write.method,
    path: write.path,
    body,
  };
  const ifMatch = write.headers['If-Match'];
  if (ifMatch) request.if_match = ifMatch;
  const jws = await signCompact(core.canonical(request), key.device, key.pair.privateKey, HANDED);
  const message = await pack({ kind: 'request', jws });
  return { kind: kind as HandedItem['kind'], about, message, registered: !keyWaits(key.device) };
}

async function passedOn(item: HandedItem, about: string): Promise<Given> {
  const message =
    item.packed instanceof Uint8Array
      ? item.packed
      : await pack(
          item.kind === 'sign_off'
            ? { kind: 'sign_off', jws: item.jws, key: item.key, openings: item.openings }
            : { kind: 'request', jws: item.jws },
        );
  return { kind: item.kind, about, message, registered: true };
}

/** By an entry's id, the key of what was handed over, or a sign-off's id on its gag's page. */
export async function given(id: string, gag: string): Promise<Given> {
  const write = outbox.items.find((one) => one.id === id);
  if (write && canBeGiven(write)) {
    const made = await wrapped(write);
    if (write.here_only) await outbox.leaves(write.id);
    return made;
  }
  const item = outbox.handed.find((one) => one.key === id);
  const page = read(at('/gags/{gag}', { gag: item?.gag ?? gag }));
  const code = page.value?.gag.code ?? '';
  if (item) return passedOn(item, code);
  const signOff = page.value?.case.signoffs.find((one) => payloadOf<Statement>(one.jws).id === id);
  if (!signOff) throw new HandError('not_carried', 'it is not on this phone');
  // Its own id serves as its key: whoever carries it, and however often, sends one thing.
  const message = await pack({ kind: 'sign_off', jws: signOff.jws, key: id, openings: signOff.openings });
  return { kind: 'sign_off', about: code, message, registered: true };
}
