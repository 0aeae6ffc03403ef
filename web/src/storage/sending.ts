// Carries out what the sync function decides: reads the queues, sends what is next, writes what came of it. The
// page and the background worker both run this, one at a time.

import type { ProblemBody } from '../api/types.ts';
import { call, transmit } from '../api/wire.ts';
import { database } from './database.ts';
import {
  difference,
  type Reply,
  type Sending,
  type SyncEvent,
  type SyncState,
  settledBy,
  step,
  toSend,
} from './sync.ts';

export const OUTBOX = 'outbox';

/** What others on this phone are told. */
export type Told =
  | { kind: 'changed' }
  /** Sent, with what the server answered. */
  | { kind: 'sent'; key: string; gag: string | undefined; answer: unknown };

export async function readState(): Promise<SyncState> {
  const tx = (await database()).transaction(['outbox', 'handed']);
  const [writes, handed] = await Promise.all([
    tx.objectStore('outbox').getAll(),
    tx.objectStore('handed').getAll(),
  ]);
  return { writes, handed };
}

/** Applies one event to what is kept, whole or not at all, and gives what is kept then. */
export async function apply(event: SyncEvent): Promise<SyncState> {
  const tx = (await database()).transaction(['outbox', 'handed'], 'readwrite', { durability: 'strict' });
  const [outbox, handed] = [tx.objectStore('outbox'), tx.objectStore('handed')];
  const before = { writes: await outbox.getAll(), handed: await handed.getAll() };
  const after = step(before, event);
  const changed = difference(before, after);
  await Promise.all([
    ...changed.putWrites.map((one) => outbox.put(one)),
    ...changed.dropWrites.map((key) => outbox.delete(key)),
    ...changed.putHanded.map((one) => handed.put(one)),
    ...changed.dropHanded.map((key) => handed.delete(key)),
    tx.done,
  ]);
  return after;
}

/** What left this phone while it had no room to write that down. */
const leftUnwritten = new Set<string>();

/** Writes down, before anything of an entry leaves this phone, that it may have left. */
export async function leaves(key: string, state: SyncState): Promise<SyncState> {
  if (!state.writes.some((one) => one.id === key && one.here_only)) return state;
  try {
    return await apply({ kind: 'leaves', key });
  } catch {
    // A full phone must still be heard: that it left is then known until the app is closed.
    leftUnwritten.add(key);
    return state;
  }
}

/** Takes back what never left this phone; nothing happens when it has. */
export async function takeBack(key: string): Promise<SyncState> {
  return leftUnwritten.has(key) ? readState() : apply({ kind: 'taken_back', key });
}

/** Whether a request has any way to go, by a question that changes nothing. */
async function mayReach(): Promise<boolean> {
  try {
    // The page of a network that wants a sign-in of its own is no answer.
    await (await call('/status', {})).json();
    return true;
  } catch {
    return false;
  }
}

/** Sends everything that waits, in order, until there is nothing more that can be sent now. False when something
 *  still waits for the network. Where nobody waits for it, or the browser says that it is offline, it is asked first
 *  whether the server can be reached at all, so that entries written with no signal stay wholly on this phone and can
 *  be taken back. */
export async function sendAll(
  account: string,
  tell: (told: Told) => void,
  by: 'hand' | 'itself',
): Promise<boolean> {
  return await navigator.locks.request(OUTBOX, async (): Promise<boolean> => {
    let state = await apply({ kind: 'aged', at: Date.now() });
    const tried = new Set<string>();
    let reached = by === 'hand' && navigator.onLine !== false;
    for (;;) {
      const next = toSend(state, account).find((one) => !tried.has(one.key));
      if (!next) return toSend(state, account).length === 0;
      tried.add(next.key);
      reached ||= await mayReach();
      if (!reached) return false;
      state = await leaves(next.key, state);
      // Somebody took it back, or another tab settled it, in the meantime.
      if (!toSend(state, account).some((one) => one.key === next.key)) continue;
      const { reply, answer } = await sendOne(next);
      const settled = settledBy(reply);
      if (settled === 'later_all') return false;
      if (settled === 'later_this') continue;
      state = await apply({ kind: 'replied', key: next.key, reply, at: Date.now() });
      if (settled === 'sent') tell({ kind: 'sent', key: next.key, gag: next.gag, answer });
      else tell({ kind: 'changed' });
    }
  });
}

/** One request and what came of it. Sending it again under its key is always safe. */
export async function sendOne(one: Sending): Promise<{ reply: Reply; answer?: unknown }> {
  try {
    const { method, body: json, headers, account } = one;
    const response = await transmit(one.path, { method, json, headers, as: account });
    const { status } = response;
    if (status === 401) return { reply: { kind: 'signed_out' } };
    if (status === 204) return { reply: { kind: 'answer', status } };
    // Half an answer, or a page of a network that wants a sign-in of its own, says nothing about the write.
    const body = (await response.json()) as unknown;
    if (response.ok) return { reply: { kind: 'answer', status }, answer: body };
    return { reply: { kind: 'answer', status, problem: ownProblem(body, status) } };
  } catch {
    // Whatever broke off on the way, no whole answer has come.
    return { reply: { kind: 'lost' } };
  }
}

/** The server's own refusals carry a code. */
function ownProblem(body: unknown, status: number): ProblemBody | undefined {
  const problem = body as Partial<ProblemBody> | null;
  if (typeof problem?.title !== 'string' || typeof problem.code !== 'string' || !problem.code)
    return undefined;
  return { ...(problem as ProblemBody), status };
}
