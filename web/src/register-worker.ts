// Starts the service worker, through the one Trusted Types policy that may name a worker's address.

interface Policies {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): {
    createScriptURL(url: string): unknown;
  };
}

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
    await navigator.serviceWorker.register((policy?.createScriptURL(address) ?? address) as string);
  } catch (error) {
    // The app works without it; only opening with no signal does not.
    console.warn(error);
  }
}
