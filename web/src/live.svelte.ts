// The server's word that something changed, and the phone's own clock for answers that age. A hold or an
// incident is made noticed at once; everything else is read again a breath later. After a gap it asks only for what it
// missed.

import { alarm, type Raised } from './alarm.svelte.ts';
import { at } from './api/address.ts';
import { API, accessToken, getJson, serverNow } from './api/client.ts';
import { Problem, Unreachable } from './api/problem.ts';
import { ready as tokenReady } from './api/wire.ts';
import { stillStanding } from './still-standing.ts';
import { getSetting, setSetting } from './storage/database.ts';
import { day } from './storage/day.svelte.ts';
import { refreshOld, refreshReads } from './storage/reads.svelte.ts';

/** One change, as the stream and the feed tell it. */
interface Change {
  index: number;
  kind: string;
  gag?: string | null;
  actor?: string | null;
  actor_name?: string | null;
  hold?: string | null;
  incident?: string | null;
  code?: string | null;
}

/** Several changes in a breath are one refresh. An alarm waits for nothing. */
const SETTLE = 250;
const FIRST_RETRY = 1_000;
const LONGEST_RETRY = 30_000;
/** More than this was missed: reading everything again is less than reading one by one. */
const MANY = 100;
/** What a screen shows is asked for again when it is this old and the phone is taken up. */
const OLD = 5 * 60_000;

class Live {
  /** Half-minute clock, by the server's time where it is known: enough for "12 minutes ago" and for readings that grow old. */
  now = $state(new Date());
  connected = $state(false);
  #source: EventSource | undefined;
  #settle: ReturnType<typeof setTimeout> | undefined;
  #retry: ReturnType<typeof setTimeout> | undefined;
  #wait = FIRST_RETRY;
  #production = '';
  #me = '';
  /** The first leaf of the trail not yet heard of; undefined until the first answer. Kept over closing the app. */
  #next: number | undefined;
  /** Gags named by changes not yet acted on; an empty name for a change about none. */
  #changed = new Set<string>();

  start(): void {
    this.now = serverNow();
    setInterval(() => {
      this.now = serverNow();
    }, 30_000);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') this.#takenUp();
    });
    window.addEventListener('online', () => this.#takenUp());
    alarm.whenSeen(() => this.#keepPlace());
  }

  /** The phone was put away, or had no signal: the stream may be dead without a word. */
  #takenUp(): void {
    this.now = serverNow();
    refreshOld(OLD);
    if (!this.#production) return;
    if (this.connected) void this.#catchUp();
    else this.#again(0);
  }

  listenTo(production: string, me: string): void {
    if (this.#production === production && this.#me === me && (this.#source || this.#retry)) return;
    this.#close();
    this.#production = production;
    this.#me = me;
    this.#next = undefined;
    this.#wait = FIRST_RETRY;
    if (production) void this.#begin(production, me);
  }

  /** Goes on from where this phone last heard, so that a stop from while the app was closed is not missed. */
  async #begin(production: string, me: string): Promise<void> {
    const place = await getSetting<number>(placeOf(production, me)).catch(() => undefined);
    if (this.#production !== production || this.#me !== me) return;
    this.#next ??= place;
    if (!this.#source) await this.#open();
  }

  /** Keeps the place, once nobody still has to see a stop that was heard of: else it would stay silent at opening. */
  #keepPlace(): void {
    if (this.#next === undefined || alarm.raised.length > 0) return;
    // A full phone keeps no place; it then hears of a hold as a screen shows it.
    void setSetting(placeOf(this.#production, this.#me), this.#next).catch(() => {});
  }

  #close(): void {
    clearTimeout(this.#retry);
    this.#retry = undefined;
    this.#source?.close();
    this.#source = undefined;
    this.connected = false;
  }

  #again(after: number): void {
    this.#close();
    this.#retry = setTimeout(() => void this.#open(), after);
  }

  #backOff(): void {
    // Phones that lost the same mast must not all come back in the same instant.
    const jitter = 0.75 + Math.random() / 2;
    this.#again(this.#wait * jitter);
    this.#wait = Math.min(this.#wait * 2, LONGEST_RETRY);
  }

  async #open(): Promise<void> {
    const production = this.#production;
    this.#retry = undefined;
    try {
      if (!(await tokenReady())) return;
    } catch {
      if (this.#production === production) this.#backOff();
      return;
    }
    const token = accessToken();
    if (!token || this.#production !== production || this.#source) return;
    const query = new URLSearchParams({ access_token: token });
    const source = new EventSource(`${API}/productions/${production}/events?${query}`);
    this.#source = source;
    source.addEventListener('open', () => {
      this.connected = true;
      this.#wait = FIRST_RETRY;
      void this.#catchUp();
      day.soon();
    });
    source.addEventListener('change', (event) => this.#hear(JSON.parse(String(event.data)) as Change));
    source.addEventListener('error', () => {
      // The signal went, or the token in the address ran out: open again, with a new one.
      if (this.#source === source) this.#backOff();
    });
  }

  #hear(change: Change): void {
    if (this.#next !== undefined && change.index < this.#next) return;
    this.#next = change.index + 1;
    this.#raise(change);
    this.#keepPlace();
    this.#changed.add(change.gag ?? '');
    clearTimeout(this.#settle);
    this.#settle = setTimeout(() => this.#refresh(), SETTLE);
  }

  #raise(change: Change): void {
    const alarming = alarmingIn(change);
    if (!alarming || change.actor === this.#me) return;
    alarm.raise({
      ...alarming,
      gag: change.gag ?? undefined,
      code: change.code ?? undefined,
      by: change.actor_name ?? undefined,
      how: 'told',
    });
  }

  #refresh(): void {
    const gags = new Set(this.#changed);
    this.#changed.clear();
    readAgain(gags.has('') ? undefined : gags);
  }

  /** Asks for what was missed since the last change heard, rather than reading everything again. */
  async #catchUp(): Promise<void> {
    const production = this.#production;
    const feed = (after: number) => getJson(at('/productions/{production}/changes', { production, after }));
    try {
      if (this.#next === undefined) {
        // The first time there is nothing to have missed: the screens have just read what is.
        const { trail_size } = await getJson(at('/productions/{production}', { production }));
        if (this.#production === production) this.#next ??= trail_size;
        this.#keepPlace();
        return;
      }
      const missed: Change[] = [];
      for (let after = this.#next; ; ) {
        const { size, items } = await feed(after);
        if (this.#production !== production) return;
        missed.push(...items);
        after = items.length > 0 ? (items.at(-1)?.index ?? after) + 1 : size;
        if (size < this.#next) {
          // The server was set back to an earlier copy: nothing this phone knows of it can be trusted.
          this.#next = size;
          this.#keepPlace();
          readAgain();
          return;
        }
        if (after >= size) break;
      }
      await this.#missed(missed);
    } catch (error) {
      if (!(error instanceof Unreachable || error instanceof Problem)) throw error;
    }
  }

  async #missed(missed: Change[]): Promise<void> {
    const fresh = missed.filter((one) => this.#next === undefined || one.index >= this.#next);
    if (fresh.length === 0) return;
    this.#next = (fresh.at(-1)?.index ?? 0) + 1;
    const gags = new Set(fresh.map((one) => one.gag ?? ''));
    await this.#raiseStanding(fresh);
    this.#keepPlace();
    readAgain(fresh.length > MANY || gags.has('') ? undefined : gags);
  }

  /** Of what was missed, what still stands: holds last, so that one is on top. */
  async #raiseStanding(missed: Change[]): Promise<void> {
    for (const what of ['incident', 'hold'] as const) {
      const those = missed.flatMap((change) => {
        const alarming = alarmingIn(change);
        return alarming?.what === what ? [{ id: alarming.id, change }] : [];
      });
      if (those.length === 0) continue;
      const stands = await stillStanding(what, this.#production);
      for (const { id, change } of those) if (stands(id)) this.#raise(change);
    }
  }
}

/** What of the news must be noticed at once. */
function alarmingIn(change: Change): Pick<Raised, 'id' | 'what'> | undefined {
  if (change.kind === 'hold.raised' && change.hold) return { id: change.hold, what: 'hold' };
  if (change.kind === 'incident.reported' && change.incident)
    return { id: change.incident, what: 'incident' };
  return undefined;
}

const placeOf = (production: string, me: string) => `feed ${production} ${me}`;

/** What screens show, at once; what is only kept for a day with no signal, in its turn. */
function readAgain(gags?: ReadonlySet<string>): void {
  refreshReads(gags);
  day.changed(gags);
}

export const live = new Live();
