// Starts the service worker, and hears of new versions.

import { update } from './update.svelte.ts';
import { SERVICE_WORKER, workerAddress } from './worker-address.ts';

/** A phone that is never closed looks for a new version this often, and whenever it is taken up again. */
const LOOK_EVERY = 60 * 60_000;

export async function registerWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  try {
    const registration = await navigator.serviceWorker.register(workerAddress(SERVICE_WORKER));
    navigator.serviceWorker.controller?.postMessage('STARTED');
    update.watch(registration);
    let looked = Date.now();
    const look = () => {
      if (document.visibilityState !== 'visible' || Date.now() - looked < LOOK_EVERY) return;
      looked = Date.now();
      // With no signal there is nothing to find.
      void registration.update().catch(() => {});
    };
    document.addEventListener('visibilitychange', look);
    setInterval(look, LOOK_EVERY);
  } catch (error) {
    // The app works without it; only opening with no signal does not.
    console.warn(error);
  }
}
