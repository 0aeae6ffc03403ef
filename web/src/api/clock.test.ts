import fc from 'fast-check';
import { beforeEach, expect, it } from 'vitest';
import { removeSetting, setSetting } from '../storage/database.ts';
import { clockBehind, forgetClock, hearTime, serverNow, startClock } from './clock.ts';

const HOUR = 3_600_000;

beforeEach(async () => {
  forgetClock();
  await removeSetting('clock');
});

it('uses the device’s time while it knows no other', async () => {
  await startClock();
  expect(clockBehind()).toBeUndefined();
  expect(Math.abs(serverNow().getTime() - Date.now())).toBeLessThan(50);
});

it('follows what the server says, a day ahead or behind', () => {
  for (const wrong of [-26, 26]) {
    hearTime(new Date(Date.now() + wrong * HOUR).toUTCString());
    expect(Math.abs((clockBehind() ?? 0) - wrong * HOUR)).toBeLessThan(1_100);
  }
  hearTime('not a date');
  expect(Math.round((clockBehind() ?? 0) / HOUR)).toBe(26);
});

it('keeps what it learned over a restart', async () => {
  await setSetting('clock', { ahead: -26 * HOUR, at: Date.now() - HOUR });
  await startClock();
  expect(clockBehind()).toBe(-26 * HOUR);
});

it('is at most half a day wrong by what it kept, whenever somebody set the clock right in between', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: -50 * HOUR, max: 50 * HOUR }),
      fc.integer({ min: 0, max: 12 * HOUR }),
      async (ahead, later) => {
        forgetClock();
        const truth = 1_800_000_000_000;
        await setSetting('clock', { ahead, at: truth - ahead });
        // The clock was set right at some moment; the app starts `later` after it last heard the server.
        await startClock(truth + later);
        expect(Math.abs(clockBehind() ?? 0)).toBeLessThanOrEqual(12 * HOUR);
      },
    ),
  );
});
