// Writes on their way to the server, as screens see them. Each is kept with its key until the server has
// answered, so closing the app, losing signal or sending twice loses nothing and doubles nothing. What happens to
// them is decided in `sync.ts` and carried out in `sending.ts`.

import { alarm } from '../alarm.svelte.ts';
import type { Address, Answer, Body, Route } from '../api/address.ts';
import { serverNow } from '../api/clock.ts';
import type { ProblemBody } from '../api/types.ts';
import { payloadOf } from '../sign/jws.ts';
import { t } from '../texts/index.ts';
import { getSetting, type HandedItem, type QueuedWrite, type WriteLabel } from './database.ts';
import { inOrder } from './json.ts';
import { refreshReads } from './reads.svelte.ts';
import { apply, leaves, OUTBOX, readState, sendAll, sendOne, type Told, takeBack } from './sending.ts';
import { keptSafely, NotKept } from './storage.svelte.ts';
import { GIVEN_UP, mayTakeBack, type SyncEvent, type SyncState, settledBy } from './sync.ts';
import { timeOfUuidv7, uuidv7 } from './uuid.ts';
import { type WaitsFor, waitsFor } from './waiting.ts';

type Method = QueuedWrite['method'];

/** A write to an address, with the body that the address takes. */
export type Write<R extends Route, M extends Method> = {
  /** POST unless it says otherwise. */
  method?: M;
  path: Address<R>;
  headers?: Record<string, string>;
  label: WriteLabel;
} & (Body<R, Lowercase<M>> extends undefined ? { body?: undefined } : { body: Body<R, Lowercase<M>> });

/** How a write stands once an attempt was made. */
export type Outcome<T = unknown> =
  | { state: 'sent'; answer: T }
  | { state: 'waiting' }
  | { state: 'refused'; problem: ProblemBody };

/** Another account of this phone, and how many entries of theirs wait here. */
export interface OthersWaiting {
  account: string;
  name: string;
  count: number;
}

const TRY_EVERY = 20_000;
/** A screen waits this long for the server's word; after that the write goes on its way without the screen. */
const PATIENCE = 10_000;

class Outbox {
  items = $state.raw<QueuedWrite[]>([]);
  handed = $state.raw<HandedItem[]>([]);
  others = $state.raw<OthersWaiting[]>([]);
  /** Written, and not kept: the phone is full. Gone when the app is closed, and said so loudly. */
  unkept = $state.raw<QueuedWrite[]>([]);
  #account = '';
  #channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(OUTBOX);
  #answers = new Map<string, unknown>();
  #wanted = new Set<string>();

  get waiting(): QueuedWrite[] {
    return this.items.filter((item) => item.state === 'waiting');
  }

  get refused(): QueuedWrite[] {
    return this.items.filter((item) => item.state === 'refused');
  }

  /** What holds a waiting write back besides the network, and why. */
  waitsFor(item: QueuedWrite): WaitsFor | undefined {
    return waitsFor(item, this.items);
  }

  /** Why it was refused, in words: the server's, or this phone's own where it never reached the server. */
  problemOf(item: QueuedWrite): ProblemBody | undefined {
    if (item.problem?.code !== GIVEN_UP) return item.problem;
    return { ...item.problem, title: t.outbox.givenUp(item.problem.detail ?? ''), detail: undefined };
  }

  /** Watches every moment at which the network may be back; the `online` event alone is not enough. */
  watch(): void {
    const flush = () => void this.flush('itself');
    window.addEventListener('online', flush);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') flush();
    });
    window.addEventListener('beforeunload', (event) => {
      if (this.unkept.length > 0) event.preventDefault();
    });
    setInterval(() => {
      if (this.unkept.length > 0) void this.keepAgain();
      if (this.waiting.length + this.handed.length > 0) flush();
    }, TRY_EVERY);
    this.#channel?.addEventListener('message', (event: MessageEvent<Told>) => void this.#hear(event.data));
    void this.#load();
  }

  async belongTo(account: string): Promise<void> {
    this.#account = account;
    await this.#load();
    if (account) void this.flush('itself');
  }

  async #hear(told: Told): Promise<void> {
    await this.#load();
    if (told.kind === 'sent') {
      if (this.#wanted.has(told.key)) this.#answers.set(told.key, told.answer);
      refreshReads(told.gag);
    }
  }

  #tell(told: Told): void {
    this.#channel?.postMessage(told);
    void this.#hear(told);
  }

  async #load(): Promise<void> {
    await this.#show(await readState());
  }

  async #show(state: SyncState): Promise<void> {
    const kept = new Set(state.writes.map((item) => item.id));
    const writes = [...state.writes, ...this.unkept.filter((item) => !kept.has(item.id))];
    this.items = writes.filter((item) => item.account === this.#account);
    this.handed = state.handed.filter((item) => item.account === this.#account);
    const counts = new Map<string, number>();
    for (const item of [...state.writes, ...state.handed]) {
      if (item.account === this.#account || item.state !== 'waiting') continue;
      counts.set(item.account, (counts.get(item.account) ?? 0) + 1);
    }
    const names = counts.size > 0 ? ((await getSetting<Record<string, string>>('account_names')) ?? {}) : {};
    this.others = [...counts].map(([account, count]) => ({ account, name: names[account] ?? '', count }));
  }

  async #apply(event: SyncEvent): Promise<SyncState> {
    const state = await apply(event);
    await this.#show(state);
    this.#channel?.postMessage({ kind: 'changed' } satisfies Told);
    return state;
  }

  /** Keeps the write, tries to send everything that waits, and says how this one stands. */
  async post<R extends Route, M extends Method = 'POST'>(
    write: Write<R, M>,
  ): Promise<Outcome<Answer<R, Lowercase<M>>>> {
    // Keys sort by the order of writing even when the device's clock was set back in between.
    const latest = this.items.reduce((time, one) => Math.max(time, timeOfUuidv7(one.id)), 0);
    const item: QueuedWrite = {
      id: uuidv7(Math.max(Date.now(), latest)),
      account: this.#account,
      method: write.method ?? 'POST',
      path: write.path,
      // A plain copy, in the one order: what is queued must not change when a form does, and is sent the same
      // bytes whoever carries it.
      body: write.body === undefined ? undefined : inOrder(JSON.parse(JSON.stringify(write.body))),
      headers: write.headers ?? {},
      label: write.label,
      state: 'waiting',
      here_only: true,
      // The server's time where it is known: a reading made now must not look a day old.
      queued_at: serverNow().getTime(),
    };
    this.#wanted.add(item.id);
    try {
      if (!(await this.#keep(item))) return (await this.sendUnkept(item)) as Outcome<Answer<R, Lowercase<M>>>;
      // Its own hold needs no alarm when it comes back as news.
      if (write.label.kind === 'hold') alarm.ignore(String((item.body as { id?: string } | undefined)?.id));
      const late = new Promise<void>((done) => setTimeout(done, PATIENCE));
      await Promise.race([this.flush(), late]);
      return (await this.#standing(item)) as Outcome<Answer<R, Lowercase<M>>>;
    } finally {
      this.#wanted.delete(item.id);
      this.#answers.delete(item.id);
    }
  }

  /** False when the phone has no room for it; it is then held here, as long as the app is open. */
  async #keep(item: QueuedWrite): Promise<boolean> {
    try {
      await keptSafely(() => this.#apply({ kind: 'queued', write: item }));
      this.unkept = this.unkept.filter((one) => one.id !== item.id);
      return true;
    } catch (error) {
      if (!(error instanceof NotKept)) throw error;
      if (!this.unkept.some((one) => one.id === item.id)) this.unkept = [...this.unkept, item];
      await this.#load();
      return false;
    }
  }

  /** Tries once more to keep what the phone had no room for. False when there is still none. */
  async keepAgain(): Promise<boolean> {
    for (const item of this.unkept) if (!(await this.#keep(item))) return false;
    await this.flush();
    return true;
  }

  /** Sends what could not be kept, while the app is open: the server is as good a place as the phone. */
  async sendUnkept(item: QueuedWrite): Promise<Outcome> {
    const headers = { ...item.headers, 'Idempotency-Key': item.id };
    const { reply, answer } = await sendOne({ ...item, key: item.id, headers, gag: item.label.gag });
    const settled = settledBy(reply);
    const title = `${t.storage.notKept} ${t.storage.notKeptWhy(item.label.about)}`;
    if (settled === 'later_all' || settled === 'later_this')
      return { state: 'refused', problem: { title, status: 0, code: 'not_kept' } };
    this.unkept = this.unkept.filter((one) => one.id !== item.id);
    await this.#load();
    refreshReads(item.label.gag);
    if (settled === 'sent') return { state: 'sent', answer };
    return { state: 'refused', problem: (reply.kind === 'answer' && reply.problem) || { title, status: 0 } };
  }

  async #standing(item: QueuedWrite): Promise<Outcome> {
    const now = this.items.find((one) => one.id === item.id);
    if (now?.state === 'waiting') return { state: 'waiting' };
    if (now?.state === 'refused')
      return { state: 'refused', problem: this.problemOf(now) ?? { title: '', status: 0 } };
    if (!this.#answers.has(item.id)) {
      // The background worker sent it and was not heard: the server gives the answer it kept with the key.
      const headers = { ...item.headers, 'Idempotency-Key': item.id };
      const again = await sendOne({ ...item, key: item.id, headers, gag: item.label.gag });
      this.#answers.set(item.id, again.answer);
    }
    return { state: 'sent', answer: this.#answers.get(item.id) };
  }

  /** Keeps what another phone handed over; `about` is the gag's code, where this phone knows it. False when this
   *  phone has it already. */
  async receive(item: HandedItem, about?: string): Promise<boolean> {
    const before = this.handed.length;
    await keptSafely(() => this.#apply({ kind: 'received', item: { ...item, account: this.#account } }));
    const fresh = this.handed.length > before;
    if (fresh && (item.kind === 'hold' || item.kind === 'incident')) {
      const id = payloadOf<{ body?: { id?: string } }>(item.jws).body?.id ?? item.key;
      alarm.raise({ id, what: item.kind, gag: item.gag, code: about, by: item.from, how: 'handed' });
    }
    void this.flush();
    return fresh;
  }

  /** What another phone handed over was checked after all. */
  async checked(key: string, found: { from?: string; problem?: ProblemBody }): Promise<void> {
    await this.#apply({ kind: 'checked', key, at: Date.now(), ...found });
  }

  /** Sends what waits. Where the browser can, it goes on doing so when the app is closed. */
  async flush(by: 'hand' | 'itself' = 'hand'): Promise<void> {
    if (!this.#account) return;
    const all = await sendAll(this.#account, (told) => this.#tell(told), by);
    await this.#load();
    if (!all) await askForBackground();
  }

  /** Whether this phone alone has it, and nothing written later builds on it. */
  mayTakeBack(item: QueuedWrite): boolean {
    return !this.unkept.includes(item) && mayTakeBack(item, this.items);
  }

  /** Takes back what never left this phone. What leaves at that very moment stays on the list. */
  async takeBack(id: string): Promise<void> {
    await this.#show(await takeBack(id));
    this.#channel?.postMessage({ kind: 'changed' } satisfies Told);
  }

  /** A code or a file of it is about to be shown: another phone may have it from then on. */
  async leaves(id: string): Promise<void> {
    await this.#show(await leaves(id, await readState()));
  }

  /** Takes a refused or sent write off the list. What was built on a refused one is then refused with it. */
  async dismiss(id: string): Promise<void> {
    await this.#apply({ kind: 'dismissed', key: id, at: Date.now() });
  }

  /** Sends a refused one again, under its own key. */
  async again(id: string): Promise<void> {
    await this.#apply({ kind: 'again', key: id });
    await this.flush();
  }
}

/** Asks the browser to wake the worker when there is signal, where it can. */
async function askForBackground(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const registration = await navigator.serviceWorker.getRegistration();
  const sync = (registration as unknown as { sync?: { register(tag: string): Promise<void> } })?.sync;
  // Refused in some browsing modes; every other moment at which the app sends remains.
  await sync?.register(OUTBOX).catch(() => {});
}

export const outbox = new Outbox();
