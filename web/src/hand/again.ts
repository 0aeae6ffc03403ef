// Entries of other phones that nobody here could check when they came, checked as soon as their device is known.

import type { ProductionPage } from '../api/types.ts';
import { outbox } from '../storage/outbox.svelte.ts';
import { Known } from './known.ts';
import { checkAgain } from './taking.ts';

let running = false;

/** Looks through what waits unchecked. */
export async function checkHanded(account: string, page: ProductionPage | undefined): Promise<void> {
  if (running) return;
  running = true;
  try {
    const known = new Known(account, page);
    for (const item of outbox.handed.filter((one) => one.state === 'waiting' && !one.verified)) {
      const found = await checkAgain(item, known);
      if (!found) continue;
      const problem = found.why ? { title: found.why, status: 0 } : undefined;
      await outbox.checked(item.key, { from: found.from, problem });
    }
  } finally {
    running = false;
  }
}
