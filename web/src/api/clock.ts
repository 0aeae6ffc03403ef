// The server's time as far as this device knows it. Clocks on set are wrong more often than one thinks, some by a
// day. Knows how far the device's clock is off, and from when it knows; decides nothing about signatures.

import { getSetting, setSetting } from '../storage/database.ts';

interface KeptClock {
  /** Server time minus device time, in milliseconds. */
  ahead: number;
  /** When that was learned, on the device's clock. */
  at: number;
}

/**
 * A kept difference is used only this long, and never when it seems to come from the future. Whoever sets the
 * clock right in the meantime makes it wrong: but a clock that was further behind than this then seems to have
 * learned it too long ago, and one that was ahead seems to have learned it in the future. So what was learned
 * within this time makes a corrected time at most half a day wrong, and the server takes a day.
 */
const KEPT_FOR = 12 * 3_600_000;

/** From here on a person is told that the device's clock is off. */
export const CLOCK_OFF = 2 * 60_000;

let ahead = 0;
let known: 'heard' | 'kept' | 'unknown' = 'unknown';
let keptAhead: number | undefined;

export async function startClock(now = Date.now()): Promise<void> {
  const kept = await getSetting<KeptClock>('clock');
  keptAhead = kept?.ahead;
  if (known === 'heard' || !kept) return;
  const age = now - kept.at;
  if (age < 0 || age > KEPT_FOR) return;
  ahead = kept.ahead;
  known = 'kept';
}

/** Every answer of the server says what time it is there, to the second. */
export function hearTime(date: string | null): void {
  const said = Date.parse(date ?? '');
  if (!Number.isFinite(said)) return;
  ahead = said - Date.now();
  known = 'heard';
  // Written when it changed by more than the header's own coarseness, or a busy phone would write all day.
  if (keptAhead !== undefined && Math.abs(keptAhead - ahead) < 5_000) return;
  keptAhead = ahead;
  void keepClock();
}

export async function keepClock(): Promise<void> {
  if (known !== 'heard') return;
  try {
    await setSetting('clock', { ahead, at: Date.now() } satisfies KeptClock);
  } catch {
    // A full phone keeps no time; the next answer tells it again.
  }
}

export function serverNow(): Date {
  return new Date(Date.now() + ahead);
}

/** How far this device's clock is behind (or, negative, ahead of) the server's; undefined when not known. */
export function clockBehind(): number | undefined {
  return known === 'unknown' ? undefined : ahead;
}

/** Begins as a phone just started: for tests. */
export function forgetClock(): void {
  ahead = 0;
  known = 'unknown';
  keptAhead = undefined;
}
