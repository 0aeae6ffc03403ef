// Which entries may travel from phone to phone. The server takes no others from a carrier.

import type { QueuedWrite } from '../storage/database.ts';

const CARRIED = new Set<string>(['sign_off', 'hold', 'release', 'reading', 'run', 'test_shot', 'revision']);

export function canBeGiven(write: QueuedWrite): boolean {
  return CARRIED.has(write.label.kind) && write.method === 'POST' && write.state !== 'refused';
}
