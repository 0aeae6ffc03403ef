// Which entries may travel from phone to phone. The server takes no others from a carrier.

import type { QueuedWrite } from '../storage/database.ts';

// The medic's looks stay off other people's phones.
const CARRIED = new Set<string>([
  'sign_off',
  'hold',
  'release',
  'reading',
  'run',
  'test_shot',
  'revision',
  'incident',
  'stand_down',
  'quarantine',
  'shock_load',
  'briefing',
  'day_mark',
  'go',
  'take_end',
]);

export function canBeGiven(write: QueuedWrite): boolean {
  return CARRIED.has(write.label.kind) && write.method === 'POST' && write.state !== 'refused';
}
