// Which unsent write must not go before which other, and why. A write that builds on one the server refused
// is held back: sent alone it would say something its author never meant. Knows no network and no clock.

import type { QueuedWrite } from './database.ts';

/** Why a write waits for another: `order` while the other is still to be sent, `refused` once it was refused. */
export interface WaitsFor {
  write: QueuedWrite;
  why: 'order' | 'refused';
}

/** Kinds whose meaning depends on the plan as it stood when they were written. */
const ON_THE_PLAN = new Set(['sign_off', 'revision', 'run', 'briefing', 'day_mark', 'go', 'debrief']);

/** The person whose key signs, in the path of a device or of a person's own pages. */
function idIn(path: string, after: string): string | undefined {
  const parts = path.split('/');
  const at = parts.indexOf(after);
  return at < 0 ? undefined : parts[at + 1];
}

function bodyId(write: QueuedWrite): string | undefined {
  return (write.body as { id?: string } | undefined)?.id;
}

/** The id of the thing a write makes, as later writes name it in their paths. */
function makes(write: QueuedWrite): string | undefined {
  if (write.label.kind === 'sign_off' || write.label.kind === 'day_mark') return signOffId(write);
  return bodyId(write);
}

function signOffId(write: QueuedWrite): string | undefined {
  const jws = (write.body as { jws?: string } | undefined)?.jws;
  try {
    const part = (jws?.split('.')[1] ?? '').replaceAll('-', '+').replaceAll('_', '/');
    return (JSON.parse(atob(part)) as { id?: string }).id;
  } catch {
    return undefined;
  }
}

/** Whether `later` builds on `earlier`, which was written before it on the same phone. */
export function buildsOn(later: QueuedWrite, earlier: QueuedWrite): boolean {
  const made = makes(earlier);
  // Anything about a gag, a hold, a signature or a person that this phone made: first the thing itself.
  if (made && later.path.split('/').includes(made)) return true;
  const gag = later.label.gag;
  if (gag && earlier.label.kind === 'gag' && earlier.label.gag === gag) return true;
  // A stop says nothing of the plan it stops, and must never wait for it.
  if (later.label.kind === 'hold') return false;
  if (gag && earlier.label.gag === gag && earlier.label.kind === 'revision') {
    return ON_THE_PLAN.has(later.label.kind);
  }
  // The server must know a key before it can check what the key signed.
  const signed = later.label.kind === 'sign_off' || later.label.kind === 'day_mark';
  if (earlier.label.kind === 'device' && signed) {
    return earlier.method === 'POST' && keyOf(later) === bodyId(earlier);
  }
  // Two changes of the same thing: the second was made over the first.
  if (earlier.path === later.path && earlier.method === later.method && later.method !== 'POST') return true;
  return (
    idIn(later.path, 'people') !== undefined && idIn(later.path, 'people') === idIn(earlier.path, 'people')
  );
}

/** The device that signed a sign-off, from its protected header. */
function keyOf(write: QueuedWrite): string | undefined {
  const jws = (write.body as { jws?: string } | undefined)?.jws;
  try {
    const part = (jws?.split('.')[0] ?? '').replaceAll('-', '+').replaceAll('_', '/');
    return (JSON.parse(atob(part)) as { kid?: string }).kid;
  } catch {
    return undefined;
  }
}

/** What a waiting write waits for, if not only for the network: the refused one first, for it needs a person. */
export function waitsFor(write: QueuedWrite, all: readonly QueuedWrite[]): WaitsFor | undefined {
  if (write.state !== 'waiting') return undefined;
  const before = all.filter(
    (one) =>
      one.id < write.id && one.account === write.account && one.state !== 'sent' && buildsOn(write, one),
  );
  const refused = before.find((one) => one.state === 'refused');
  if (refused) return { write: refused, why: 'refused' };
  for (const one of before) {
    // What it waits for may itself be held back by a refusal further up: name that one.
    const further = waitsFor(one, all);
    if (further?.why === 'refused') return further;
  }
  const waiting = before[0];
  return waiting && { write: waiting, why: 'order' };
}
