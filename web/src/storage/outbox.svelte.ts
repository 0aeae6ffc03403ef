// Writes on their way to the server. Each is kept with its key until the server has answered, so closing
// the app, losing signal or sending twice loses nothing and doubles nothing.

import { send } from '../api/client.ts';
import { isPassing, Problem } from '../api/problem.ts';
import type { ProblemBody } from '../api/types.ts';
import { database, type QueuedWrite, type WriteLabel } from './database.ts';
import { refreshReads } from './reads.svelte.ts';
import { uuidv7 } from './uuid.ts';

export interface Write {
  method?: 'POST' | 'PUT' | 'DELETE';
  path: string;
  body?: unknown;
  headers?: Record<string, string>;
  label: WriteLabel;
}

/** How a write stands once an attempt was made. */
export type Outcome =
  | { state: 'sent'; answer: unknown }
  | { state: 'waiting' }
  | { state: 'refused'; problem: ProblemBody };

const SENT_IS_SHOWN_FOR = 24 * 60 * 60 * 1000;
const TRY_EVERY = 20_000;

class Outbox {
  items = $state.raw<QueuedWrite[]>([]);
  #account = '';
  #channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('outbox');
  #answers = new Map<string, unknown>();

  get waiting(): QueuedWrite[] {
    return this.items.filter((item) => item.state === 'waiting');
  }

  get refused(): QueuedWrite[] {
    return this.items.filter((item) => item.state === 'refused');
  }

  /** Watches every moment at which the network may be back; the `online` event alone is not enough. */
  watch(): void {
    const flush = () => void this.flush();
    window.addEventListener('online', flush);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') flush();
    });
    setInterval(() => {
      if (this.waiting.length > 0) flush();
    }, TRY_EVERY);
    this.#channel?.addEventListener('message', () => void this.#load());
  }

  async belongTo(account: string): Promise<void> {
    this.#account = account;
    await this.#load();
    if (account) void this.flush();
  }

  async #load(): Promise<void> {
    const all = await (await database()).getAll('outbox');
    this.items = all.filter((item) => item.account === this.#account);
  }

  async #put(item: QueuedWrite): Promise<void> {
    await (await database()).put('outbox', item);
    await this.#changed();
  }

  async #changed(): Promise<void> {
    await this.#load();
    this.#channel?.postMessage('changed');
  }

  /** Keeps the write, tries to send everything that waits, and says how this one stands. */
  async post(write: Write): Promise<Outcome> {
    const item: QueuedWrite = {
      id: uuidv7(),
      account: this.#account,
      method: write.method ?? 'POST',
      path: write.path,
      // A plain copy: what is queued must not change when a form does.
      body: write.body === undefined ? undefined : JSON.parse(JSON.stringify(write.body)),
      headers: write.headers ?? {},
      label: write.label,
      state: 'waiting',
      queued_at: Date.now(),
    };
    await this.#put(item);
    await this.flush();
    const now = await (await database()).get('outbox', item.id);
    if (now?.state === 'refused')
      return { state: 'refused', problem: now.problem ?? { title: '', status: 0 } };
    if (now?.state === 'waiting') return { state: 'waiting' };
    const answer = this.#answers.get(item.id);
    this.#answers.delete(item.id);
    return { state: 'sent', answer };
  }

  /** Sends what waits, oldest first. One tab at a time; stops at the first sign of no network. */
  async flush(): Promise<void> {
    if (!this.#account) return;
    await navigator.locks.request('outbox', async () => {
      const db = await database();
      const all = (await db.getAll('outbox')).filter((item) => item.account === this.#account);
      const old = Date.now() - SENT_IS_SHOWN_FOR;
      for (const item of all) {
        if (item.state === 'sent' && (item.settled_at ?? 0) < old) await db.delete('outbox', item.id);
      }
      for (const item of all.filter((one) => one.state === 'waiting')) {
        if (!(await this.#sendOne(item))) break;
      }
    });
  }

  /** False when nothing more can be sent now. */
  async #sendOne(item: QueuedWrite): Promise<boolean> {
    try {
      const response = await send(item.path, {
        method: item.method,
        json: item.body,
        headers: { ...item.headers, 'Idempotency-Key': item.id },
      });
      const answer = response.status === 204 ? undefined : await response.json();
      this.#answers.set(item.id, answer);
      await this.#put({ ...item, state: 'sent', settled_at: Date.now() });
      refreshReads(item.label.gag);
      return true;
    } catch (error) {
      // Only the server's own refusal settles a write. A connection lost while the answer arrives, an answer
      // that is not the server's, a sign-in that ran out: the same key makes sending it again safe.
      if (!(error instanceof Problem) || error.status === 401 || isPassing(error.status)) return false;
      await this.#put({ ...item, state: 'refused', settled_at: Date.now(), problem: error.body });
      return true;
    }
  }

  /** Takes a refused or sent write off the list. */
  async dismiss(id: string): Promise<void> {
    await (await database()).delete('outbox', id);
    await this.#changed();
  }
}

export const outbox = new Outbox();
