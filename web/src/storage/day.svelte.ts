// What a day with no signal needs, read onto the phone ahead of it: quietly while there is signal, and all of it
// at once when a person asks. Knows which pages those are; how they are kept is for the reads.

import { at } from '../api/address.ts';
import { serverNow } from '../api/clock.ts';
import { type Filled, keepForLater, kept, whenKept } from './reads.svelte.ts';

/** Beyond this a phone keeps what comes next and what its owner signs, and then as many as these. */
export const MOST_GAGS = 200;
/** A page this old is read again though nobody has said that it changed. */
const FRESH = 60 * 60_000;
/** The screen that is being looked at reads first. */
const AT_START = 2_000;
/** Changes come in flurries: a plan is written, signed and cast within a minute. */
const AFTER_CHANGE = 15_000;

/** How many of the production's gags open with no signal, and when the one read longest ago was read. */
export interface KeptGags {
  kept: number;
  all: number;
  since: number;
}

class Day {
  gags = $state.raw<KeptGags | undefined>();
  /** How far taking everything has come, while it runs. */
  taking = $state.raw<{ done: number; all: number } | undefined>();
  /** What came of it. */
  taken = $state<Filled | undefined>();
  #production = '';
  #me = '';
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<Filled> | undefined;
  /** When each gag was last said to have changed, and under an empty name when anything was. */
  #changed = new Map<string, number>();

  belongTo(production: string, me: string): void {
    if (this.#production === production && this.#me === me) return;
    this.#production = production;
    this.#me = me;
    this.#changed.clear();
    [this.gags, this.taken] = [undefined, undefined];
    clearTimeout(this.#timer);
    if (production) this.soon(AT_START);
  }

  /** Something changed, about these gags or (with none named) about anything. */
  changed(gags?: ReadonlySet<string>): void {
    const now = serverNow().getTime();
    for (const gag of gags ?? ['all']) this.#changed.set(gag, now);
    this.#changed.set('', now);
    this.soon(AFTER_CHANGE);
  }

  /** Keeps what is wanted and not there, or older than what is known of it. */
  soon(after = 0): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#fill((paths) => this.#old(paths)), after);
  }

  /** Reads everything again and counts while it does. */
  async takeEverything(): Promise<void> {
    if (this.taking) return;
    this.taken = undefined;
    this.taking = { done: 0, all: 0 };
    try {
      while (this.#running) await this.#running;
      this.taken = await this.#fill(
        async (paths) => paths,
        (done, all) => {
          this.taking = { done, all };
        },
      );
    } finally {
      this.taking = undefined;
    }
  }

  async #fill(
    which: (paths: string[]) => Promise<string[]>,
    progress: (done: number, all: number) => void = () => {},
  ): Promise<Filled> {
    if (!this.#production) return 'cut_short';
    this.#running ??= this.#read(this.#production, which, progress).finally(() => {
      this.#running = undefined;
    });
    return await this.#running;
  }

  async #read(
    production: string,
    which: (paths: string[]) => Promise<string[]>,
    progress: (done: number, all: number) => void,
  ): Promise<Filled> {
    const lists = await which(this.#lists(production));
    let filled = await keepForLater(lists, 0);
    if (filled === 'done') {
      // What is in the lists says what else there is to read.
      const each = await which(await this.#each(production));
      const all = lists.length + each.length;
      filled = await keepForLater(each, 0, (done) => progress(lists.length + done, all));
    }
    if (this.#production === production) await this.look();
    return filled;
  }

  #lists(production: string): string[] {
    return [
      at('/productions/{production}', { production }),
      at('/productions/{production}/today', { production }),
      at('/productions/{production}/gags', { production }),
      at('/productions/{production}/holds', { production }),
      at('/productions/{production}/people', { production }),
      ...(this.#me
        ? [at('/productions/{production}/people/{person}', { production, person: this.#me })]
        : []),
    ];
  }

  /** The gags, what comes next first, and what is to be signed, ready to be signed. */
  async #each(production: string): Promise<string[]> {
    const today = await kept(at('/productions/{production}/today', { production }));
    const gags = await this.#gagPaths(production);
    const drafts = (today?.to_sign ?? []).map(({ gag, role, slot }) =>
      at('/gags/{gag}/signoff-draft', slot ? { gag: gag.id, role, slot } : { gag: gag.id, role }),
    );
    return [...drafts, ...gags];
  }

  async #gagPaths(production: string): Promise<string[]> {
    const today = await kept(at('/productions/{production}/today', { production }));
    const all = await kept(at('/productions/{production}/gags', { production }));
    const ids = new Set([
      ...(today?.to_sign ?? []).map((one) => one.gag.id),
      ...(today?.next ?? []).map((one) => one.id),
      ...(all?.items ?? []).map((one) => one.id),
    ]);
    return [...ids].slice(0, MOST_GAGS).map((gag) => at('/gags/{gag}', { gag }));
  }

  /** Those not on the phone, old, or changed since they were read. */
  async #old(paths: string[]): Promise<string[]> {
    const read = await whenKept(paths);
    const oldest = serverNow().getTime() - FRESH;
    return paths.filter((path, i) => {
      const gag = /^\/gags\/([^/?]+)/.exec(path)?.[1];
      const changed = Math.max(this.#changed.get(gag ?? '') ?? 0, this.#changed.get('all') ?? 0);
      return (read[i] ?? 0) <= Math.max(oldest, changed);
    });
  }

  /** Counts what is there. */
  async look(): Promise<void> {
    if (!this.#production) return;
    const read = await whenKept(await this.#gagPaths(this.#production));
    const there = read.filter((one) => one !== undefined);
    this.gags = { kept: there.length, all: read.length, since: Math.min(...there) };
  }
}

export const day = new Day();
