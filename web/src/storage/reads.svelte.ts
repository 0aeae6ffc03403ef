// Reads that appear at once from the phone's database and are refreshed behind. One copy of a read is
// shared by every screen that shows it.

import type { Address, Answer, RouteOf } from '../api/address.ts';
import { send, serverNow } from '../api/client.ts';
import { Problem } from '../api/problem.ts';
import type { ProblemBody } from '../api/types.ts';
import { database } from './database.ts';
import { dropAllReads, dropRead, keepRead, keptRead, trimReads, whenRead } from './kept-reads.ts';

let account = '';
/** Counts how often what was read was let go: a read made before that keeps nothing that still arrives. */
let generation = 0;

function letGo(): void {
  live.clear();
  aside.clear();
  generation += 1;
}

/** Reads belong to an account; another account on the same phone sees none of them. */
export function readsBelongTo(id: string): void {
  if (account !== id) letGo();
  account = id;
}

export async function forgetReads(): Promise<void> {
  letGo();
  await dropAllReads();
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
  /** When the request behind what is shown was made, by the device's own clock: what was written since may not be in it. */
  begunAt = 0;
  /** When the server was last asked, whatever came of it; 0 when what is kept is known to be old. */
  askedAt = 0;
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

  /** Shows the kept copy. */
  async recall(): Promise<void> {
    if (this.#started) return;
    this.#started = true;
    const kept = await keptRead(this.#key);
    if (this.#letGo) return;
    if (kept && this.value === undefined) {
      this.value = kept.value as T;
      this.fetchedAt = kept.fetched_at;
      this.begunAt = kept.fetched_at - (serverNow().getTime() - Date.now());
    }
  }

  /** Shows the kept copy, then asks the server. */
  async start(): Promise<void> {
    await this.recall();
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
    const begun = Date.now();
    try {
      const value = (await (await send(this.path)).json()) as T;
      if (this.#letGo) return;
      this.begunAt = begun;
      await this.#keep(key, value);
      this.unreachable = false;
      this.problem = undefined;
    } catch (error) {
      if (error instanceof Problem) {
        this.problem = error.body;
        // What may no longer be read must not linger on the phone.
        if (error.status === 403 || error.status === 404) {
          this.value = undefined;
          await dropRead(key);
        }
        // Half an answer, or the page of a network that wants a sign-in of its own, is no answer.
      } else this.unreachable = true;
    } finally {
      this.loading = false;
    }
  }

  async #keep(key: string, value: T): Promise<void> {
    this.value = value;
    // The server's time where it is known: ages are told by it, on a clock that may be a day wrong.
    this.fetchedAt = serverNow().getTime();
    await keepRead({ key, value, fetched_at: this.fetchedAt });
  }

  /** Takes an answer that came with a write, so the screen need not ask again. */
  adopt(value: T): Promise<void> {
    this.begunAt = Date.now();
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
/** The same for a path put together by hand, whose answer the caller has to name. */
export function read<T>(path: string): Read<T>;
export function read<T>(path: string): Read<T> {
  let found = live.get(path) as Read<T> | undefined;
  if (!found) {
    found = outsideReactions(() => new Read<T>(path));
    live.set(path, found as Read<unknown>);
  }
  if (Date.now() - found.askedAt > ENOUGH) {
    const wanted = found;
    wanted.askedAt = Date.now();
    // Later, because a read may be asked for where nothing may change: inside a derived value.
    queueMicrotask(() => void wanted.start());
  }
  return found;
}

/** When what is only kept for later was last asked for, by path; no screen has asked for it on this visit. */
const aside = new Map<string, number>();

export type Filled = 'done' | 'cut_short';

/** Has the kept copies at hand before the first screen is drawn; asks no server. */
export async function recall(paths: string[]): Promise<void> {
  await Promise.all(
    paths.map((path) => {
      const found = live.get(path) ?? outsideReactions(() => new Read<unknown>(path));
      live.set(path, found);
      return found.recall();
    }),
  );
}

/** Fills the phone with reads that will be wanted where there is no signal. What was asked for less than `again`
 *  ago is not asked for once more. */
export async function keepForLater(
  paths: string[],
  again = Number.POSITIVE_INFINITY,
  progress: (done: number) => void = () => {},
): Promise<Filled> {
  const mine = generation;
  for (const [i, path] of paths.entries()) {
    const shown = live.get(path);
    const asked = shown?.askedAt ?? aside.get(path) ?? 0;
    if (asked === 0 || Date.now() - asked > again) {
      if (shown) {
        await shown.start();
        if (shown.unreachable) return 'cut_short';
      } else if (!(await fill(path))) return 'cut_short';
    }
    if (mine !== generation) return 'cut_short';
    progress(i + 1);
  }
  await trimReads();
  return 'done';
}

/** Reads one path straight onto the phone, holding none of it in memory. False when no server answered. */
async function fill(path: string): Promise<boolean> {
  const mine = generation;
  const key = `${account} ${path}`;
  aside.set(path, Date.now());
  try {
    const value = (await (await send(path)).json()) as unknown;
    if (mine === generation) await keepRead({ key, value, fetched_at: serverNow().getTime() });
    return true;
  } catch (error) {
    aside.delete(path);
    if (!(error instanceof Problem)) return false;
    // What may no longer be read must not linger on the phone.
    if (error.status === 403 || error.status === 404) await dropRead(key);
    return true;
  }
}

/** What this phone has of an address, asking nobody. */
export async function kept<R extends RouteOf<'get'>>(address: Address<R>): Promise<Answer<R> | undefined> {
  const shown = live.get(address)?.value ?? (await keptRead(`${account} ${address}`))?.value;
  return shown as Answer<R> | undefined;
}

/** Keeps what is at an address, known here without asking for it. */
export async function keep<R extends RouteOf<'get'>>(address: Address<R>, value: Answer<R>): Promise<void> {
  await keepRead({ key: `${account} ${address}`, value, fetched_at: serverNow().getTime() });
}

/** When each path was read, where this phone has it. */
export function whenKept(paths: string[]): Promise<(number | undefined)[]> {
  return whenRead(paths.map((path) => `${account} ${path}`));
}

/** Something changed, about these gags or (with none named) about anything: asks again for what screens have asked
 *  for, and lets what was only kept for later be asked for again in its turn. */
export function refreshReads(gags?: string | ReadonlySet<string>): void {
  const named = typeof gags === 'string' ? new Set([gags]) : gags;
  const concerns = (path: string) => {
    const gag = /^\/gags\/([^/?]+)/.exec(path)?.[1];
    return !named || gag === undefined || named.has(gag);
  };
  for (const path of aside.keys()) if (concerns(path)) aside.delete(path);
  for (const found of live.values()) if (concerns(found.path)) void found.refresh();
}

/** Asks again for what screens have asked for and was last asked for longer ago than this. */
export function refreshOld(age: number): void {
  for (const found of live.values()) if (Date.now() - found.askedAt > age) void found.refresh();
}

/** Everything this phone holds for the account, whether a screen has asked for it on this visit or not. */
export async function everyKept(): Promise<{ path: string; value: unknown }[]> {
  const mine = `${account} `;
  const all = await (await database()).getAll('reads', IDBKeyRange.bound(mine, `${mine}\uffff`));
  return all.map((one) => ({ path: one.key.slice(mine.length), value: one.value }));
}
