// Sending what waits while no page is open: the page's own sending, as whoever was last signed in here.

import { startClock } from '../api/clock.ts';
import { actAs, resumeToken, watchSession } from '../api/wire.ts';
import { getSetting } from '../storage/database.ts';
import { OUTBOX, sendAll, type Told } from '../storage/sending.ts';

/** Throws while something still waits for the network, so that the browser tries again by its own timing. */
export async function sendInBackground(): Promise<void> {
  const kept = await getSetting<{ account: { id: string } }>('session');
  if (!kept) return;
  const account = kept.account.id;
  let over = false;
  watchSession({
    changed: (session) => {
      over = session === undefined;
    },
    // A sign-out that the server has not heard of is the page's to finish; until then the cookie is not used.
    settle: async () => {
      over = (await getSetting<boolean>('signed_out')) ?? false;
      if (over) throw new Error('signed out');
    },
    someoneElse: () => {
      over = true;
    },
  });
  actAs(account);
  await startClock();
  if (await getSetting<boolean>('signed_out')) return;
  await resumeToken(account);
  const channel = new BroadcastChannel(OUTBOX);
  try {
    const all = await sendAll(account, (told: Told) => channel.postMessage(told), 'itself');
    if (!all && !over) throw new Error('no answer yet');
  } finally {
    channel.close();
  }
}
