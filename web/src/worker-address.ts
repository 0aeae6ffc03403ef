// The one Trusted Types policy that may name a worker's address: the service worker's, and those built beside the
// app.

interface Policies {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): {
    createScriptURL(url: string): unknown;
  };
}

export const SERVICE_WORKER = '/service-worker.js';
const BUILT = /^\/assets\/[\w.-]+\.js$/;

let policy: ReturnType<Policies['createPolicy']> | undefined;

/** The address as the browser wants it before it starts a worker from it. */
export function workerAddress(address: string): string {
  const policies = (window as unknown as { trustedTypes?: Policies }).trustedTypes;
  if (!policies || import.meta.env.DEV) return address;
  policy ??= policies.createPolicy('app-worker', {
    createScriptURL(url) {
      if (url !== SERVICE_WORKER && !BUILT.test(url)) throw new TypeError(`no worker at ${url}`);
      return url;
    },
  });
  return policy.createScriptURL(address) as string;
}
