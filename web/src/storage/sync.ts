// What happens to unsent writes and handed-over things, as a pure function: a state and an event give the next
// state. It does no input or output, reads no clock and knows no screen; the page and the background worker
// run the same one.

import type { ProblemBody } from '../api/types.ts';
import { payloadOf } from '../sign/jws.ts';
import type { HandedItem, QueuedWrite } from './database.ts';
import { isStop } from './stops.ts';
import { buildsOn, waitsFor } from './waiting.ts';

export interface SyncState {
  /** In the order they were written: their keys sort by time. */
  writes: readonly QueuedWrite[];
  handed: readonly HandedItem[];
}

/** What came of sending one. */
export type Reply =
  /** An answer that is the server's own: done, or a refusal in its own form. */
  | { kind: 'answer'; status: number; problem?: ProblemBody }
  /** No answer, half an answer, or one that is not the server's. */
  | { kind: 'lost' }
  /** The sign-in has ended, or is somebody else's. */
  | { kind: 'signed_out' };

export type SyncEvent =
  | { kind: 'queued'; write: QueuedWrite }
  | { kind: 'received'; item: HandedItem }
  | { kind: 'replied'; key: string; reply: Reply; at: number }
  /** A person takes a refused or a sent one off the list. */
  | { kind: 'dismissed'; key: string; at: number }
  /** A person sends a refused one again, under its own key. */
  | { kind: 'again'; key: string }
  /** It is about to leave this phone: from now on the server, or another phone, may have it. */
  | { kind: 'leaves'; key: string }
  /** A person takes back what has never left this phone. */
  | { kind: 'taken_back'; key: string }
  /** Another phone's entry was checked once its device became known: it holds, or it does not and is refused. */
  | { kind: 'checked'; key: string; at: number; from?: string; problem?: ProblemBody }
  | { kind: 'aged'; at: number };

/** One thing to send. */
export interface Sending {
  key: string;
  /** Whose it is to send: nobody else's sign-in will do. */
  account: string;
  method: string;
  path: string;
  body: unknown;
  headers: Record<string, string>;
  gag: string | undefined;
}

/** How far a reply settles the one it answers, and whether others may still be tried. */
export type Settled = 'sent' | 'refused' | 'later_this' | 'later_all';

const SENT_IS_SHOWN_FOR = 24 * 60 * 60 * 1000;

/** Refusals that say nothing about what was asked. */
const PASSING = new Set([408, 425, 429, 502, 503, 504, 507]);

export function settledBy(reply: Reply): Settled {
  if (reply.kind !== 'answer') return 'later_all';
  const { status, problem } = reply;
  if (status >= 200 && status < 300) return 'sent';
  if (status === 401 || PASSING.has(status)) return 'later_all';
  // A fault of the server over this one write must not keep a hold behind it from being heard.
  if (status >= 500) return 'later_this';
  // Only the server's own refusal, in its own form, settles a write: a network that wants a sign-in of its own
  // answers too.
  return problem && status >= 400 ? 'refused' : 'later_all';
}

/** The things to send, in order, that wait for nothing but the network. Writes of other people never appear. */
export function toSend(state: SyncState, account: string): Sending[] {
  const writes = state.writes.filter((one) => one.account === account && one.state === 'waiting');
  const free = writes.filter((one) => waitsFor(one, state.writes) === undefined);
  // A stop is heard first: on one bar of signal each request ahead of it costs seconds.
  const first = free.filter((one) => isStop(one.label.kind));
  const rest = free.filter((one) => !isStop(one.label.kind));
  const handed = state.handed.filter((one) => one.account === account && one.state === 'waiting');
  const stops = handed.filter((one) => isStop(one.kind));
  const others = handed.filter((one) => !isStop(one.kind));
  // What another phone signs may be about a revision made here, so own ones go first; but the end of a take goes
  // after the go that another phone handed over, whoever ended it. No clock is asked: phones differ by hours.
  const made = new Set(others.map((one) => askedIn(one).id));
  const builds = (path: string | undefined) => path?.split('/').some((part) => made.has(part)) ?? false;
  const [ownAfter, own] = parted(rest, (one) => builds(one.path));
  const [handedAfter, handedFirst] = parted(others, (one) => builds(askedIn(one).path));
  return [
    ...first.map(sendingOf),
    ...stops.map(handedSending),
    ...own.map(sendingOf),
    ...handedFirst.map(handedSending),
    ...ownAfter.map(sendingOf),
    ...handedAfter.map(handedSending),
  ];
}

/** The address that a handed request asks, and the id of what it makes. */
function askedIn(item: HandedItem): { path?: string; id?: string } {
  try {
    const { path, body } = payloadOf<{ path?: string; body?: { id?: string } }>(item.jws);
    return { path, id: body?.id };
  } catch {
    return {};
  }
}

function parted<T>(all: readonly T[], into: (one: T) => boolean): [T[], T[]] {
  return [all.filter(into), all.filter((one) => !into(one))];
}

function sendingOf(write: QueuedWrite): Sending {
  return {
    key: write.id,
    account: write.account,
    method: write.method,
    path: write.path,
    body: write.body,
    headers: { ...write.headers, 'Idempotency-Key': write.id },
    gag: write.label.gag,
  };
}

/** A sign-off proves itself and goes to its own door; anything else goes as the signed request it is. */
function handedSending(item: HandedItem): Sending {
  return {
    key: item.key,
    account: item.account,
    method: 'POST',
    path: item.kind === 'sign_off' ? `/gags/${item.gag}/signoffs` : '/handed',
    body: item.openings ? { jws: item.jws, openings: item.openings } : { jws: item.jws },
    headers: { 'Idempotency-Key': item.key },
    gag: item.gag,
  };
}

const byKey =
  <T>(key: (one: T) => string) =>
  (a: T, b: T) =>
    key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0;
const sortedWrites = (writes: QueuedWrite[]) => writes.toSorted(byKey((one) => one.id));
const sortedHanded = (items: HandedItem[]) => items.toSorted(byKey((one) => one.key));

export function step(state: SyncState, event: SyncEvent): SyncState {
  switch (event.kind) {
    case 'queued': {
      if (state.writes.some((one) => one.id === event.write.id)) return state;
      return { ...state, writes: sortedWrites([...state.writes, event.write]) };
    }
    case 'received': {
      // What this phone itself wrote goes by its own outbox.
      if (state.writes.some((one) => one.id === event.item.key)) return state;
      const known = state.handed.find((one) => one.key === event.item.key);
      if (!known) return { ...state, handed: sortedHanded([...state.handed, event.item]) };
      // Twice is once. Anybody may carry it: whoever has it before them now does.
      if (known.account === event.item.account || known.state !== 'waiting') return state;
      const carried = { ...known, account: event.item.account };
      return { ...state, handed: state.handed.map((one) => (one === known ? carried : one)) };
    }
    case 'replied':
      return replied(state, event.key, event.reply, event.at);
    case 'dismissed':
      return dismissed(state, event.key, event.at);
    case 'again':
      return {
        writes: state.writes.map((one) => (one.id === event.key ? waitingAgain(one) : one)),
        handed: state.handed.map((one) => (one.key === event.key ? waitingAgain(one) : one)),
      };
    case 'leaves':
      return { ...state, writes: state.writes.map((one) => (one.id === event.key ? left(one) : one)) };
    case 'taken_back':
      return {
        ...state,
        writes: state.writes.filter((one) => one.id !== event.key || !mayTakeBack(one, state.writes)),
      };
    case 'checked':
      return {
        ...state,
        handed: state.handed.map((one) => (one.key === event.key ? checked(one, event) : one)),
      };
    case 'aged':
      return {
        ...state,
        writes: state.writes.filter(
          (one) => one.state !== 'sent' || (one.settled_at ?? 0) >= event.at - SENT_IS_SHOWN_FOR,
        ),
      };
  }
}

function checked(item: HandedItem, said: { at: number; from?: string; problem?: ProblemBody }): HandedItem {
  if (item.state !== 'waiting' || item.verified) return item;
  if (said.problem) return { ...item, state: 'refused', settled_at: said.at, problem: said.problem };
  return { ...item, verified: true, from: said.from ?? item.from };
}

function left(write: QueuedWrite): QueuedWrite {
  if (!write.here_only) return write;
  const { here_only: _here, ...rest } = write;
  return rest;
}

/** Whether it can be undone: nothing of it has left this phone, and nothing written later builds on it. */
export function mayTakeBack(write: QueuedWrite, all: readonly QueuedWrite[]): boolean {
  // Without its registration the key on this phone would sign what the server can never check.
  if (write.state !== 'waiting' || !write.here_only || write.label.kind === 'device') return false;
  return !all.some((one) => one.account === write.account && one.id > write.id && buildsOn(one, write));
}

function waitingAgain<T extends QueuedWrite | HandedItem>(one: T): T {
  if (one.state !== 'refused') return one;
  const { problem: _problem, ...rest } = { ...one, state: 'waiting' as const };
  return rest as T;
}

function replied(state: SyncState, key: string, reply: Reply, at: number): SyncState {
  const settled = settledBy(reply);
  if (settled === 'later_all' || settled === 'later_this') return state;
  const problem = reply.kind === 'answer' ? reply.problem : undefined;
  // A reply that comes late, to a write settled in the meantime, changes a refusal to sent and never the reverse.
  const settle = <T extends QueuedWrite | HandedItem>(one: T): T => {
    if (one.state === 'sent') return one;
    if (settled === 'refused') return { ...one, state: 'refused', settled_at: at, problem };
    const { problem: _problem, ...rest } = one;
    return { ...rest, state: 'sent', settled_at: at } as T;
  };
  return {
    writes: state.writes.map((one) => (one.id === key ? settle(one) : one)),
    handed: state.handed.map((one) => (one.key === key ? settle(one) : one)),
  };
}

/** The code of a write that was given up here, because what it built on was refused and taken off the list. */
export const GIVEN_UP = 'built_on_refused';

function dismissed(state: SyncState, key: string, at: number): SyncState {
  const gone = state.writes.find((one) => one.id === key);
  // What waits is never taken off: it would be lost without a word.
  if (gone && gone.state === 'waiting') return state;
  const handed = state.handed.filter((one) => one.key !== key || one.state === 'waiting');
  if (!gone) return { ...state, handed };
  const orphaned = (one: QueuedWrite) =>
    gone.state === 'refused' &&
    one.state === 'waiting' &&
    one.account === gone.account &&
    one.id > gone.id &&
    buildsOn(one, gone);
  return {
    handed,
    writes: state.writes
      .filter((one) => one.id !== key)
      .map((one) =>
        orphaned(one)
          ? {
              ...one,
              state: 'refused' as const,
              settled_at: at,
              problem: { title: '', status: 0, code: GIVEN_UP, detail: gone.label.about },
            }
          : one,
      ),
  };
}

/** What changed between two states: what the shell has to write and to delete. */
export interface Difference {
  putWrites: QueuedWrite[];
  dropWrites: string[];
  putHanded: HandedItem[];
  dropHanded: string[];
}

export function difference(before: SyncState, after: SyncState): Difference {
  const writes = new Map(before.writes.map((one) => [one.id, one]));
  const handed = new Map(before.handed.map((one) => [one.key, one]));
  const nowWrites = new Set(after.writes.map((one) => one.id));
  const nowHanded = new Set(after.handed.map((one) => one.key));
  return {
    putWrites: after.writes.filter((one) => writes.get(one.id) !== one),
    dropWrites: before.writes.filter((one) => !nowWrites.has(one.id)).map((one) => one.id),
    putHanded: after.handed.filter((one) => handed.get(one.key) !== one),
    dropHanded: before.handed.filter((one) => !nowHanded.has(one.key)).map((one) => one.key),
  };
}
