// Starts the service worker, through the one Trusted Types policy that may name a worker's address, and hears of
// new versions.

import { update } from './update.svelte.ts';

interface Policies {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): {
    createScriptURL(url: string): unknown;
  };
}

/** A phone that is never closed looks for a new version this often, and whenever it is taken up again. */
const LOOK_EVERY = 60 * 60_000;

export async function registerWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const address = '/service-worker.js';
  const policies = (window as unknown as { trustedTypes?: Policies }).trustedTypes;
  const policy = policies?.createPolicy('app-worker', {
    createScriptURL(url) {
      if (url !== address) throw new TypeError(`no worker at ${url}`);
      return url;
    },
  });
  try {
    const registration = await navigator.serviceWorker.register(
      (policy?.createScriptURL(address) ?? address) as string,
    );
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
