// How much room this phone gives the app, whether it may take it away again, and what to do when it is full.
// What was read can be read again and is let go first; what was written is never let go.

import { getSetting, setSetting } from './database.ts';
import { dropAllReads } from './kept-reads.ts';

/** The phone had no room: what was written is not kept. */
export class NotKept extends Error {}

export interface Room {
  /** Whether the system promised not to clear what is kept. Undefined where it cannot say. */
  persisted: boolean | undefined;
  used: number;
  quota: number;
}

/** Nearly full, from here on: a day's work is far smaller, so there is time to make room. */
export const LOW = 20 * 1024 * 1024;

export function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}

class Storage {
  room = $state.raw<Room | undefined>();
  /** Set when something could not be kept, until somebody has read it. */
  full = $state(false);

  get low(): boolean {
    return this.room !== undefined && this.room.quota > 0 && this.room.quota - this.room.used < LOW;
  }

  /** Asks to be kept, once, and looks how much room there is. Never awaited: a browser may ask a person first. */
  start(): void {
    void this.#ask();
    void this.look();
  }

  async #ask(): Promise<void> {
    if (!navigator.storage?.persist || (await getSetting<boolean>('asked_to_persist'))) return;
    await setSetting('asked_to_persist', true).catch(() => {});
    await navigator.storage.persist().catch(() => false);
    await this.look();
  }

  /** A person asks, after the first answer was no. */
  async askAgain(): Promise<boolean> {
    const granted = (await navigator.storage?.persist?.().catch(() => false)) ?? false;
    await this.look();
    return granted;
  }

  async look(): Promise<void> {
    if (!navigator.storage?.estimate) return;
    const { usage = 0, quota = 0 } = await navigator.storage.estimate().catch(() => ({ usage: 0, quota: 0 }));
    const persisted = await navigator.storage.persisted?.().catch(() => undefined);
    this.room = { persisted, used: usage, quota };
  }

  /** Lets go of what can be read again. */
  async free(): Promise<void> {
    // On a full phone even letting go may be refused; whoever called tries again and is told.
    await dropAllReads().catch(() => {});
    // Packets kept for reading with no signal can be fetched again as well; the app itself must stay.
    if (typeof caches !== 'undefined') {
      const names = (await caches.keys()).filter((name) => !name.startsWith('app-'));
      await Promise.all(names.map((name) => caches.delete(name)));
    }
    await this.look();
  }
}

export const storage = new Storage();

/** Does a write to the phone's database; when the phone is full it makes room and tries once more. */
export async function keptSafely<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!isFull(error)) throw error;
    await storage.free();
    try {
      return await work();
    } catch (again) {
      if (!isFull(again)) throw again;
      storage.full = true;
      throw new NotKept();
    }
  }
}
