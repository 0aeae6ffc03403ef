// Reads that appear at once from the phone's database and are refreshed behind. One copy of a read is
// shared by every screen that shows it.

import type { Address, Answer, RouteOf } from '../api/address.ts';
import { send } from '../api/client.ts';
import { Problem, Unreachable } from '../api/problem.ts';
import type { ProblemBody } from '../api/types.ts';
import { database } from './database.ts';

let account = '';
/** Counts how often what was read was let go: a read made before that keeps nothing that still arrives. */
let generation = 0;

function letGo(): void {
  live.clear();
  generation += 1;
}

/** Reads belong to an account; another account on the same phone sees none of them. */
export function readsBelongTo(id: string): void {
  if (account !== id) letGo();
  account = id;
}

export async function forgetReads(): Promise<void> {
  letGo();
  await (await database()).clear('reads');
}

/** One path of the API, as last seen and as now. */
export class Read<T> {
  readonly path: string;
  value = $state.raw<T | undefined>(undefined);
  fetchedAt = $state(0);
  problem = $state.raw<ProblemBody | undefined>(undefined);
  /** The last attempt found no server: what is shown is what this phone kept. */
  unreachable = $state(false);
  loading = $state(true);
  /** When the server was last asked, whatever came of it; 0 when what is kept is known to be old. */
  askedAt = 0;
  /** Kept for later only: no screen has asked for it on this visit. */
  background = false;
  #running: Promise<void> | undefined;
  #started = false;
  readonly #generation = generation;

  constructor(path: string) {
    this.path = path;
  }

  get #letGo(): boolean {
    return this.#generation !== generation;
  }

  get #key(): string {
    return `${account} ${this.path}`;
  }

  /** Shows the kept copy, then asks the server. */
  async start(): Promise<void> {
    if (!this.#started) {
      this.#started = true;
      const kept = await (await database()).get('reads', this.#key);
      if (this.#letGo) return;
      if (kept && this.value === undefined) {
        this.value = kept.value as T;
        this.fetchedAt = kept.fetched_at;
      }
    }
    await this.refresh();
  }

  refresh(): Promise<void> {
    this.askedAt = Date.now();
    this.#running ??= this.#fetch().finally(() => {
      this.#running = undefined;
    });
    return this.#running;
  }

  async #fetch(): Promise<void> {
    this.loading = true;
    const key = this.#key;
    try {
      const value = (await (await send(this.path)).json()) as T;
      if (this.#letGo) return;
      await this.#keep(key, value);
      this.unreachable = false;
      this.problem = undefined;
    } catch (error) {
      if (error instanceof Unreachable) this.unreachable = true;
      else if (error instanceof Problem) {
        this.problem = error.body;
        // What may no longer be read must not linger on the phone.
        if (error.status === 403 || error.status === 404) {
          this.value = undefined;
          await (await database()).delete('reads', key);
        }
      } else throw error;
    } finally {
      this.loading = false;
    }
  }

  async #keep(key: string, value: T): Promise<void> {
    this.value = value;
    this.fetchedAt = Date.now();
    await (await database()).put('reads', { key, value, fetched_at: this.fetchedAt });
  }

  /** Takes an answer that came with a write, so the screen need not ask again. */
  adopt(value: T): Promise<void> {
    return this.#keep(this.#key, value);
  }
}

const live = new Map<string, Read<unknown>>();

/** State made inside something that is being worked out does not wake it again, and a read is often asked for
 *  there first: so it is made under a root of its own, which lives as long as the app. */
function outsideReactions<T>(make: () => T): T {
  const made: T[] = [];
  $effect.root(() => {
    made.push(make());
  });
  return made[0] as T;
}

/** A screen that asks again this soon gets what was just read. It also keeps a value that is worked out from a
 *  read, and so asks for it each time the read changes, from asking for ever. */
const ENOUGH = 4000;

/** The shared read of a path; it starts itself. */
export function read<R extends RouteOf<'get'>>(address: Address<R>): Read<Answer<R>>;
export function read<T>(path: string): Read<T>;
export function read<T>(path: string): Read<T> {
  let found = live.get(path) as Read<T> | undefined;
  if (!found) {
    found = outsideReactions(() => new Read<T>(path));
    live.set(path, found as Read<unknown>);
  }
  found.background = false;
  if (Date.now() - found.askedAt > ENOUGH) {
    const wanted = found;
    wanted.askedAt = Date.now();
    // Later, because a read may be asked for where nothing may change: inside a derived value.
    queueMicrotask(() => void wanted.start());
  }
  return found;
}

/** Fills the phone with reads that will be wanted where there is no signal. */
export async function keepForLater(paths: string[]): Promise<void> {
  for (const path of paths) {
    let found = live.get(path);
    if (!found) {
      found = outsideReactions(() => new Read<unknown>(path));
      found.background = true;
      live.set(path, found);
    }
    if (found.askedAt > 0) continue;
    await found.start();
    if (found.unreachable) return;
  }
}

/** Something changed, about one gag or (with none named) about anything: asks again for what screens have asked
 *  for, and lets what was only kept for later be asked for again in its turn. */
export function refreshReads(gag?: string): void {
  for (const found of live.values()) {
    if (gag && found.path.startsWith('/gags/') && !found.path.startsWith(`/gags/${gag}`)) continue;
    if (found.background) found.askedAt = 0;
    else void found.refresh();
  }
}

/** Everything this phone holds for the account, whether a screen has asked for it on this visit or not. */
export async function everyKept(): Promise<{ path: string; value: unknown }[]> {
  const mine = `${account} `;
  const all = await (await database()).getAll('reads', IDBKeyRange.bound(mine, `${mine}\uffff`));
  return all.map((one) => ({ path: one.key.slice(mine.length), value: one.value }));
}
