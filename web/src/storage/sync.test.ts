// Two phones and a server, played through in many orders of arrival and loss.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HandedItem, QueuedWrite, WriteLabel } from './database.ts';
import {
  GIVEN_UP,
  mayTakeBack,
  type Reply,
  type Sending,
  type SyncState,
  settledBy,
  step,
  toSend,
} from './sync.ts';
import { waitsFor } from './waiting.ts';

const EMPTY: SyncState = { writes: [], handed: [] };

let count = 0;
const key = (n: number = count++) => `019aaaaa-0000-7000-8000-${String(n).padStart(12, '0')}`;

function write(
  kind: WriteLabel['kind'],
  gag: string | undefined,
  more: Partial<QueuedWrite> = {},
): QueuedWrite {
  const id = more.id ?? key();
  return {
    id,
    account: 'ada',
    method: 'POST',
    path: `/gags/${gag}/${kind}`,
    body: { id: `body-${id}` },
    headers: {},
    label: { kind, gag, about: `${kind} ${gag}` },
    state: 'waiting',
    queued_at: 0,
    ...more,
  };
}

function handedOver(of: QueuedWrite, account: string): HandedItem {
  return {
    key: of.id,
    account,
    production: 'p',
    gag: of.label.gag,
    kind: of.label.kind as HandedItem['kind'],
    jws: `jws-${of.id}`,
    received_at: 0,
    state: 'waiting',
  };
}

const queue = (...writes: QueuedWrite[]) =>
  writes.reduce((state, one) => step(state, { kind: 'queued', write: one }), EMPTY);
const ok: Reply = { kind: 'answer', status: 201 };
const no: Reply = {
  kind: 'answer',
  status: 422,
  problem: { title: 'no', status: 422, code: 'invalid_input' },
};
const replied = (state: SyncState, one: { id: string }, reply: Reply) =>
  step(state, { kind: 'replied', key: one.id, reply, at: 1 });
const keys = (state: SyncState, account = 'ada') => toSend(state, account).map((one) => one.key);

describe('what a reply settles', () => {
  it.each([
    ['an answer', ok, 'sent'],
    ['a refusal in the server’s own form', no, 'refused'],
    ['a refusal in some other form', { kind: 'answer', status: 403 }, 'later_all'],
    ['no answer', { kind: 'lost' }, 'later_all'],
    ['the end of the sign-in', { kind: 'signed_out' }, 'later_all'],
    ['too many requests', { kind: 'answer', status: 429, problem: no.problem }, 'later_all'],
    ['a fault of the server', { kind: 'answer', status: 500, problem: no.problem }, 'later_this'],
    ['a server with no room left', { kind: 'answer', status: 507, problem: no.problem }, 'later_all'],
    ['a proxy without its server', { kind: 'answer', status: 502 }, 'later_all'],
  ] as [string, Reply, string][])('%s', (_name, reply, settled) => {
    expect(settledBy(reply)).toBe(settled);
  });

  it('never takes back what was sent', () => {
    const one = write('reading', 'g');
    const sent = replied(queue(one), one, ok);
    expect(replied(sent, one, no).writes[0]?.state).toBe('sent');
    const refused = replied(queue(one), one, no);
    expect(replied(refused, one, ok).writes[0]).toMatchObject({ state: 'sent' });
    expect(replied(refused, one, ok).writes[0]?.problem).toBeUndefined();
  });
});

describe('what waits for what', () => {
  it('holds a signature back while the revision it was made on is refused, and says so', () => {
    const revision = write('revision', 'g');
    const signature = write('sign_off', 'g');
    const other = write('sign_off', 'h');
    const state = replied(queue(revision, signature, other), revision, no);
    expect(keys(state)).toEqual([other.id]);
    expect(waitsFor(signature, state.writes)).toEqual({ write: state.writes[0], why: 'refused' });
  });

  it('names the refused one at the root of a chain', () => {
    const gag = write('gag', 'g');
    const revision = write('revision', 'g');
    const signature = write('sign_off', 'g');
    const state = replied(queue(gag, revision, signature), gag, no);
    expect(waitsFor(signature, state.writes)?.write.id).toBe(gag.id);
    expect(keys(state)).toEqual([]);
  });

  it('sends what builds on another only after it, though the other one meets a fault', () => {
    const revision = write('revision', 'g');
    const signature = write('sign_off', 'g');
    const state = queue(revision, signature);
    expect(keys(state)).toEqual([revision.id]);
    expect(waitsFor(signature, state.writes)).toMatchObject({ why: 'order' });
    expect(keys(replied(state, revision, ok))).toEqual([signature.id]);
  });

  it('lets a stop wait for nothing, and go first', () => {
    const revision = write('revision', 'g');
    const reading = write('reading', 'g');
    const hold = write('hold', 'g');
    expect(keys(queue(revision, reading, hold))).toEqual([hold.id, revision.id, reading.id]);
    expect(keys(replied(queue(revision, reading, hold), revision, no))).toEqual([hold.id, reading.id]);
  });

  it('registers a key before what it signed, and raises a hold before it is released', () => {
    const device = write('device', undefined, { path: '/productions/p/devices', body: { id: 'd1' } });
    const head = btoa(JSON.stringify({ alg: 'ES256', kid: 'd1' }));
    const signature = write('sign_off', 'g', { body: { jws: `${head}.${btoa('{"id":"s"}')}.x` } });
    const met = write('condition', 'g', { path: '/signoffs/s/conditions-met', body: { condition: 'x' } });
    expect(keys(queue(device, signature, met))).toEqual([device.id]);
    const hold = write('hold', undefined, { path: '/productions/p/holds', body: { id: 'h1' } });
    const release = write('release', undefined, { path: '/holds/h1/agreements', body: {} });
    expect(keys(queue(hold, release))).toEqual([hold.id]);
  });

  it('keeps what was built on a refused write when that is taken off, as refused, with the reason', () => {
    const revision = write('revision', 'g');
    const signature = write('sign_off', 'g');
    const reading = write('reading', 'g');
    const refused = replied(queue(revision, signature, reading), revision, no);
    const state = step(refused, { kind: 'dismissed', key: revision.id, at: 2 });
    expect(state.writes.map((one) => [one.id, one.state, one.problem?.code])).toEqual([
      [signature.id, 'refused', GIVEN_UP],
      [reading.id, 'waiting', undefined],
    ]);
    expect(keys(step(state, { kind: 'again', key: signature.id }))).toContain(signature.id);
  });

  it('never takes a waiting write off the list', () => {
    const one = write('reading', 'g');
    const state = queue(one);
    expect(step(state, { kind: 'dismissed', key: one.id, at: 2 })).toEqual(state);
  });

  it('sends nobody else’s', () => {
    expect(keys(queue(write('hold', 'g'), write('hold', 'g', { account: 'bo' })), 'cy')).toEqual([]);
  });
});

/** The server as the API is specified: a key is done once, and a repeat gets the first answer. */
class Server {
  done = new Map<string, Reply>();
  order: string[] = [];
  /** Refuses these; each revision must follow on from the one before. */
  constructor(readonly refuses: ReadonlySet<string>) {}

  receive(one: Sending): Reply {
    const kept = this.done.get(one.key);
    if (kept) return kept;
    if (this.refuses.has(one.key)) return no;
    this.order.push(one.key);
    this.done.set(one.key, ok);
    return ok;
  }
}

/** What the network does with one attempt. */
type Luck = 'arrives' | 'request lost' | 'answer lost' | 'fault' | 'signed out' | 'arrives twice';
const lucks = fc.constantFrom<Luck>(
  'arrives',
  'request lost',
  'answer lost',
  'fault',
  'signed out',
  'arrives twice',
);

function attempt(server: Server, one: Sending, luck: Luck): Reply {
  if (luck === 'request lost') return { kind: 'lost' };
  if (luck === 'signed out') return { kind: 'signed_out' };
  if (luck === 'fault') return { kind: 'answer', status: 500 };
  const reply = server.receive(one);
  if (luck === 'arrives twice') server.receive(one);
  return luck === 'answer lost' ? { kind: 'lost' } : reply;
}

/** One visit to the network, as the shell makes it. */
function flush(state: SyncState, account: string, server: Server, luck: () => Luck): SyncState {
  const tried = new Set<string>();
  let now = state;
  for (;;) {
    const next = toSend(now, account).find((one) => !tried.has(one.key));
    if (!next) return now;
    tried.add(next.key);
    const reply = attempt(server, next, luck());
    const settled = settledBy(reply);
    if (settled === 'later_all') return now;
    if (settled !== 'later_this') now = step(now, { kind: 'replied', key: next.key, reply, at: 1 });
  }
}

const kinds = fc.constantFrom<WriteLabel['kind']>('hold', 'reading', 'run', 'sign_off', 'revision');
const plans = fc.array(fc.record({ kind: kinds, gag: fc.constantFrom('g', 'h'), refused: fc.boolean() }), {
  maxLength: 9,
});

describe('two phones and a server', () => {
  it('lose nothing acknowledged, double nothing and keep each refusal, whatever the network does', () => {
    fc.assert(
      fc.property(
        plans,
        plans,
        fc.infiniteStream(lucks),
        fc.array(fc.boolean()),
        (adas, bos, stream, turns) => {
          const make = (account: string) => (one: { kind: WriteLabel['kind']; gag: string }) =>
            write(one.kind, one.gag, { account });
          const phones = { ada: adas.map(make('ada')), bo: bos.map(make('bo')) };
          const all = [...phones.ada, ...phones.bo];
          const marks = [...adas, ...bos];
          const refuses = new Set(all.filter((_, i) => marks[i]?.refused).map((one) => one.id));
          const server = new Server(refuses);
          const states = { ada: queue(...phones.ada), bo: queue(...phones.bo) };
          // Ada has no signal to begin with: what may travel by hand goes to Bo too, and back.
          for (const one of phones.ada.filter((each) => each.label.kind !== 'sign_off')) {
            for (let twice = 0; twice < 2; twice += 1)
              states.bo = step(states.bo, { kind: 'received', item: handedOver(one, 'bo') });
          }
          const luck = () => stream.next().value as Luck;
          for (const turn of turns) {
            const who = turn ? 'ada' : 'bo';
            states[who] = flush(states[who], who, server, luck);
            for (const one of states[who].writes) {
              if (one.state === 'sent') expect(server.done.has(one.id)).toBe(true);
            }
          }
          // In the end the network holds.
          for (const who of ['bo', 'ada'] as const)
            states[who] = flush(states[who], who, server, () => 'arrives');

          expect(new Set(server.order).size).toBe(server.order.length);
          for (const who of ['ada', 'bo'] as const) {
            for (const one of states[who].writes) {
              if (one.state === 'sent') expect(server.done.has(one.id)).toBe(true);
              else if (one.state === 'refused') {
                expect(refuses.has(one.id)).toBe(true);
                expect(one.problem?.code).toBe('invalid_input');
              } else expect(waitsFor(one, states[who].writes)?.why).toBe('refused');
            }
            expect(states[who].writes).toHaveLength(phones[who].length);
          }
          // Nothing arrived before what it was built on.
          for (const one of all) {
            const at = server.order.indexOf(one.id);
            if (at < 0 || one.label.kind === 'hold' || one.label.kind === 'reading') continue;
            const built = phones[one.account as 'ada' | 'bo'].filter(
              (other) =>
                other.label.kind === 'revision' && other.label.gag === one.label.gag && other.id < one.id,
            );
            // What goes by hand proves itself and is judged by the server alone.
            const byHand = one.account === 'ada' && one.label.kind !== 'sign_off';
            if (byHand) continue;
            for (const other of built) {
              expect(server.order.indexOf(other.id)).toBeGreaterThanOrEqual(0);
              expect(server.order.indexOf(other.id)).toBeLessThan(at);
            }
          }
        },
      ),
      { numRuns: 250 },
    );
  });

  it('send what others build on first, whatever the clocks of the phones, and every stop before all', () => {
    const asked = (of: QueuedWrite) => {
      const text = JSON.stringify({ path: of.path, body: of.body });
      return { ...handedOver(of, 'ada'), jws: `h.${btoa(text).replaceAll('=', '')}.s` };
    };
    const take = 'take-1';
    const [theirs, mine] = [write('incident', 'g', { account: 'bo' }), write('hold', 'g')];
    // The other phone's clock is behind: its signature on this phone's revision sorts before it.
    const signature = write('sign_off', 'g', { account: 'bo' });
    const revision = write('revision', 'g');
    // And ahead: its go sorts after the end that was recorded here.
    const end = write('take_end', 'g', { path: `/gags/g/takes/${take}/outcome` });
    const go = write('go', 'g', { account: 'bo', path: '/gags/g/takes', body: { id: take } });
    const again = write('take_end', 'g', { account: 'bo', path: `/gags/g/takes/${take}/outcome` });
    const received = [again, theirs, go, signature].map(asked);
    const state = received.reduce(
      (before, item) => step(before, { kind: 'received', item }),
      queue(end, mine, revision),
    );
    const keys = toSend(state, 'ada').map((one) => one.key);
    expect(keys).toEqual([mine, theirs, revision, signature, go, end, again].map((one) => one.id));
  });

  it('come to the same end in every order in which five things are received', () => {
    const [a, b, c] = [write('hold', 'g'), write('reading', 'g'), write('run', 'h')];
    const events = [
      { kind: 'received', item: handedOver(a, 'bo') },
      { kind: 'received', item: handedOver(b, 'bo') },
      { kind: 'received', item: handedOver(a, 'bo') },
      { kind: 'queued', write: { ...c, account: 'bo' } },
      { kind: 'received', item: handedOver(b, 'bo') },
    ] as const;
    const ends = permutations([...events]).map((order) => order.reduce(step, EMPTY));
    for (const end of ends) expect(end).toEqual(ends[0]);
    expect(ends).toHaveLength(120);
    expect(ends[0]?.handed).toHaveLength(2);
  });

  it('come to the same end in every order in which replies arrive, a late refusal after an acceptance included', () => {
    const [a, b] = [write('reading', 'g'), write('reading', 'g')];
    const replies = [
      { kind: 'replied', key: a.id, reply: ok, at: 1 },
      { kind: 'replied', key: a.id, reply: { kind: 'lost' }, at: 1 },
      { kind: 'replied', key: b.id, reply: no, at: 1 },
      { kind: 'replied', key: b.id, reply: { kind: 'signed_out' }, at: 1 },
      { kind: 'replied', key: a.id, reply: no, at: 1 },
    ] as const;
    const ends = permutations([...replies]).map((order) => order.reduce(step, queue(a, b)));
    for (const end of ends) expect(end).toEqual(ends[0]);
    expect(ends[0]?.writes.map((one) => one.state)).toEqual(['sent', 'refused']);
  });
});

function permutations<T>(of: T[]): T[][] {
  if (of.length < 2) return [of];
  return of.flatMap((one, i) =>
    permutations([...of.slice(0, i), ...of.slice(i + 1)]).map((rest) => [one, ...rest]),
  );
}

describe('taking back', () => {
  const here = { here_only: true } as const;
  const takenBack = (state: SyncState, one: QueuedWrite) => step(state, { kind: 'taken_back', key: one.id });

  it('undoes what has never left the phone', () => {
    const [reading, other] = [write('reading', 'g1', here), write('reading', 'g2', here)];
    expect(takenBack(queue(reading, other), reading).writes).toEqual([other]);
  });

  it('does nothing once a request was begun, whatever came of it, however often it is sent again', () => {
    const reading = write('reading', 'g1', here);
    const left = step(queue(reading), { kind: 'leaves', key: reading.id });
    expect(left.writes.map((one) => one.here_only)).toEqual([undefined]);
    expect(takenBack(left, reading)).toEqual(left);
    const lost = replied(left, reading, { kind: 'lost' });
    expect(takenBack(lost, reading)).toEqual(lost);
    const again = step(replied(left, reading, no), { kind: 'again', key: reading.id });
    expect(again.writes[0]?.state).toBe('waiting');
    expect(takenBack(again, reading)).toEqual(again);
  });

  it('does nothing to an entry of which it is not known whether it left', () => {
    const reading = write('reading', 'g1');
    expect(takenBack(queue(reading), reading).writes).toEqual([reading]);
  });

  it('does nothing to what is settled', () => {
    for (const state of ['sent', 'refused'] as const) {
      const one = write('reading', 'g1', { ...here, state });
      expect(takenBack(queue(one), one).writes).toEqual([one]);
    }
  });

  it('takes what was built on it first', () => {
    const [revision, run] = [write('revision', 'g1', here), write('run', 'g1', here)];
    const both = queue(revision, run);
    expect(mayTakeBack(revision, both.writes)).toBe(false);
    expect(takenBack(both, revision)).toEqual(both);
    expect(takenBack(takenBack(both, run), revision).writes).toEqual([]);
  });

  it('keeps the registration of a key, which later signatures need', () => {
    const device = write('device', undefined, here);
    expect(takenBack(queue(device), device).writes).toEqual([device]);
  });

  it('leaves what other phones handed over alone', () => {
    const handed = step(EMPTY, { kind: 'received', item: handedOver(write('hold', 'g1'), 'ada') });
    expect(step(handed, { kind: 'taken_back', key: handed.handed[0]?.key ?? '' })).toEqual(handed);
  });
});

describe('checking what another phone handed over', () => {
  const item = () => handedOver(write('hold', 'g'), 'ada');

  it('counts it once its signature holds, and refuses it with the reason when it does not', () => {
    const one = item();
    const state = { writes: [], handed: [one] };
    const held = step(state, { kind: 'checked', key: one.key, at: 5, from: 'Bo' });
    expect(held.handed[0]).toMatchObject({ verified: true, from: 'Bo', state: 'waiting' });
    const problem = { title: 'the signature does not hold', status: 0 };
    const refused = step(state, { kind: 'checked', key: one.key, at: 5, problem });
    expect(refused.handed[0]).toMatchObject({ state: 'refused', settled_at: 5, problem });
    expect(toSend(refused, 'ada')).toEqual([]);
  });

  it('leaves alone what is settled or was checked before', () => {
    const one = { ...item(), verified: true };
    const state = { writes: [], handed: [one, { ...item(), state: 'sent' as const }] };
    const problem = { title: 'the signature does not hold', status: 0 };
    for (const { key } of state.handed) {
      expect(step(state, { kind: 'checked', key, at: 5, problem }).handed).toEqual(state.handed);
    }
  });
});
