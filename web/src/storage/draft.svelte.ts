// A form half filled, kept on the phone until it is saved or thrown away: closing the app, a dead battery or a new
// version lose nothing of it. One helper for every form.

import { onDestroy } from 'svelte';
import { update } from '../update.svelte.ts';
import { database } from './database.ts';
import { isFull } from './storage.svelte.ts';

/** Kept at most this long after the last key. */
const SETTLE = 300;

let account = '';

/** Drafts belong to an account; another person on the same phone sees none of them. */
export function draftsBelongTo(id: string): void {
  account = id;
}

export class Draft<T, B = unknown> {
  value = $state.raw<T>() as T;
  /** What the form was begun from, when an earlier visit left it. */
  base = $state.raw<B | undefined>();
  /** When an earlier visit left it; undefined when there is none. */
  found = $state<number | undefined>();
  /** The phone has been asked for an earlier one. */
  ready = $state(false);
  readonly #key: string;
  readonly #initial: T;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #unsaved = false;
  #release: (() => void) | undefined;

  constructor(path: string, initial: T) {
    this.#key = `${account} ${path}`;
    this.#initial = initial;
    this.value = initial;
  }

  async start(): Promise<void> {
    const kept = await (await database()).get('drafts', this.#key);
    // What was typed while the phone looked is newer than what it found.
    if (kept && !this.#unsaved) {
      this.value = kept.value as T;
      this.base = kept.base as B | undefined;
      this.found = kept.saved_at;
      this.#hold();
    }
    this.ready = true;
  }

  /** Takes what the form holds now. */
  set(value: T, base: B | undefined = this.base): void {
    this.value = value;
    this.base = base;
    this.#unsaved = true;
    this.#hold();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.save(), SETTLE);
  }

  async save(): Promise<void> {
    clearTimeout(this.#timer);
    if (!this.#unsaved) return;
    this.#unsaved = false;
    const { value, base } = $state.snapshot({ value: this.value, base: this.base });
    try {
      const draft = { key: this.#key, value, base, saved_at: Date.now() };
      await (await database()).put('drafts', draft);
    } catch (error) {
      // The form itself is still on the screen; the full phone is said when it is sent.
      if (!isFull(error)) throw error;
    }
  }

  /** Saved for good, or thrown away: begins again from nothing, once the phone has let go of it. */
  async discard(): Promise<void> {
    clearTimeout(this.#timer);
    this.#unsaved = false;
    try {
      await (await database()).delete('drafts', this.#key);
    } finally {
      // A key pressed meanwhile is thrown away with the rest.
      clearTimeout(this.#timer);
      this.#unsaved = false;
      this.value = this.#initial;
      this.base = undefined;
      this.found = undefined;
      this.close();
    }
  }

  /** No new version interrupts a form that somebody has begun to fill. */
  #hold(): void {
    this.#release ??= update.hold();
  }

  close(): void {
    this.#release?.();
    this.#release = undefined;
  }
}

/** The draft of a form, for as long as its screen stands. Called while a component is made. */
export function draft<T, B = unknown>(path: string, initial: T): Draft<T, B> {
  const made = new Draft<T, B>(path, initial);
  const leave = () => {
    if (document.visibilityState === 'hidden') void made.save();
  };
  document.addEventListener('visibilitychange', leave);
  onDestroy(() => {
    document.removeEventListener('visibilitychange', leave);
    void made.save();
    made.close();
  });
  void made.start();
  return made;
}
