// Which entries may travel from phone to phone.

import { HANDED_KINDS, type QueuedWrite } from '../storage/database.ts';

const CARRIED = new Set<string>(HANDED_KINDS);

export function canBeGiven(write: QueuedWrite): boolean {
  return CARRIED.has(write.label.kind) && write.method === 'POST' && write.state !== 'refused';
}
