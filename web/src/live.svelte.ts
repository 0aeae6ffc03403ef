// The server's word that something changed, and the phone's own clock for answers that age.

import { API, accessToken, serverNow } from './api/client.ts';
import { refreshReads } from './storage/reads.svelte.ts';

class Live {
  /** Half-minute clock, by the server's time where it is known: enough for "12 minutes ago" and for readings that grow old. */
  now = $state(new Date());
  connected = $state(false);
  #source: EventSource | undefined;
  #settle: ReturnType<typeof setTimeout> | undefined;
  #production = '';
  /** Gags named by changes not yet acted on; an empty name for a change about none. */
  #changed = new Set<string>();

  start(): void {
    setInterval(() => {
      this.now = serverNow();
      if (this.#production && !this.#source) this.#open();
    }, 30_000);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState !== 'visible') return;
      this.now = serverNow();
      refreshReads();
    });
    window.addEventListener('online', () => refreshReads());
  }

  listenTo(production: string): void {
    if (this.#production === production && this.#source) return;
    this.#production = production;
    this.#source?.close();
    this.#source = undefined;
    this.connected = false;
    if (production) this.#open();
  }

  #open(): void {
    const token = accessToken();
    if (!token) return;
    const query = new URLSearchParams({ access_token: token });
    const source = new EventSource(`${API}/productions/${this.#production}/events?${query}`);
    this.#source = source;
    source.addEventListener('open', () => {
      this.connected = true;
    });
    source.addEventListener('change', (event) => {
      const { gag } = JSON.parse(String(event.data)) as { gag?: string | null };
      this.#changed.add(gag ?? '');
      // Several changes in a breath are one refresh.
      clearTimeout(this.#settle);
      this.#settle = setTimeout(() => {
        const gags = [...this.#changed];
        this.#changed.clear();
        refreshReads(gags.length === 1 ? gags[0] : undefined);
      }, 250);
    });
    source.addEventListener('error', () => {
      // The token in the address may have run out: open again with a new one at the next tick.
      source.close();
      this.connected = false;
      if (this.#source === source) this.#source = undefined;
    });
  }
}

export const live = new Live();
