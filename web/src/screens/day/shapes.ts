// Which strip belongs to which word of the day.

import type { EquipmentState, ReadingState } from '../../api/types.ts';
import type { StripShape } from '../../parts/Strip.svelte';

export const readingShape: Record<ReadingState, StripShape> = {
  good: 'whole',
  old: 'torn',
  missing: 'none',
  outside: 'crossed',
};

export const equipmentShape: Record<EquipmentState, StripShape> = {
  ready: 'whole',
  uninspected: 'torn',
  quarantined: 'crossed',
};
