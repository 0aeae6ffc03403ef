// A sign-off made on paper, recorded by whoever saw it signed: their device signs for it, and for the photograph.

import { at } from '../api/address.ts';
import { send } from '../api/client.ts';
import { serverNow } from '../api/clock.ts';
import type { DayStatement, Draft, GagPage, Role, Statement } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { type Outcome, outbox } from '../storage/outbox.svelte.ts';
import { uuidv7 } from '../storage/uuid.ts';
import { keyFor } from './device-key.ts';
import { DAY_SIGN_OFF, signCompact } from './jws.ts';
import type { Opening } from './openings.ts';
import { type Choice, completeStatement } from './sign-off.ts';

/** The largest photograph that is kept. */
export const LARGEST = 4 * 1024 * 1024;

/** JPEG or PNG, by the first bytes. */
export function isPhotograph(bytes: Uint8Array): boolean {
  const begins = (...start: number[]) => start.every((one, i) => bytes[i] === one);
  return begins(0xff, 0xd8, 0xff) || begins(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
}

export async function sha256(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((one) => one.toString(16).padStart(2, '0')).join('');
}

/** The signer's draft as their witness signs it. */
export async function inked(
  draft: Statement,
  choice: Choice,
  witness: string,
  device: string,
  photograph: ArrayBuffer,
  now: Date,
): Promise<{ statement: Statement; openings: Opening[] }> {
  const { statement, openings } = await completeStatement(draft, choice, device, now);
  const ink = { witness, photograph: await sha256(photograph) };
  return { statement: { ...statement, kind: 'gagwright/ink-signoff/1', ink }, openings };
}

/** Signs as the witness. Gives the sign-off's id, for which the photograph is then sent. */
export async function witness(
  draft: Draft,
  choice: Choice,
  person: string,
  photograph: ArrayBuffer,
  about: string,
): Promise<{ id: string; outcome: Outcome }> {
  const { production, gag } = draft.statement;
  const key = await keyFor(production, person);
  const { statement, openings } = await inked(
    draft.statement,
    choice,
    person,
    key.device,
    photograph,
    serverNow(),
  );
  const jws = await signCompact(core.canonical(statement), key.device, key.pair.privateKey);
  const outcome = await outbox.post({
    path: at('/gags/{gag}/signoffs', { gag }),
    body: openings.length > 0 ? { jws, openings } : { jws },
    label: { kind: 'sign_off', gag, about },
  });
  return { id: statement.id, outcome };
}

/** A mark for the day as its witness signs it; a day is signed or declined, and nothing is written beside it. */
export async function inkedDay(
  draft: DayStatement,
  decision: 'approve' | 'decline',
  witness: string,
  device: string,
  photograph: ArrayBuffer,
  now: Date,
): Promise<DayStatement> {
  const ink = { witness, photograph: await sha256(photograph) };
  const signed_at = now.toISOString();
  return { ...draft, kind: 'gagwright/ink-day-signoff/1', device, decision, signed_at, ink };
}

/** Signs a mark for the day as the witness. The statement is made here, and so with no signal too. */
export async function witnessDay(
  page: GagPage,
  mark: { role: Role; slot: string | undefined; signer: string; decision: 'approve' | 'decline' },
  person: string,
  photograph: ArrayBuffer,
): Promise<{ id: string; outcome: Outcome }> {
  const { role, slot, signer, decision } = mark;
  const { statement } = core.draftDay(page.case, role, slot, signer, uuidv7(), serverNow());
  const key = await keyFor(statement.production, person);
  const signed = await inkedDay(statement, decision, person, key.device, photograph, serverNow());
  const jws = await signCompact(core.canonical(signed), key.device, key.pair.privateKey, DAY_SIGN_OFF);
  const gag = page.gag.id;
  const outcome = await outbox.post({
    path: at('/gags/{gag}/day-signoffs', { gag }),
    body: { jws },
    label: { kind: 'day_mark', gag, about: page.gag.code },
  });
  return { id: statement.id, outcome };
}

/** Hands the photograph in. The server takes the same one twice. */
export async function sendPhotograph(signoff: string, photograph: ArrayBuffer): Promise<void> {
  await send(at('/signoffs/{signoff}/photograph', { signoff }), {
    method: 'PUT',
    bytes: photograph,
    headers: { 'content-type': 'application/octet-stream', 'idempotency-key': uuidv7(Date.now()) },
  });
}
