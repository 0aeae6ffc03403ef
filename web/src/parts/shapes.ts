// Which strip belongs to which word. The words come from the judge; this only draws them.

import type { ClearanceState, Finding, Outcome, RoleState, Status } from '../api/types.ts';
import type { StripShape } from './Strip.svelte';

export const stateShape: Record<ClearanceState, StripShape> = {
  cleared: 'whole',
  not_asked: 'none',
  waiting: 'broken',
  lapsed: 'torn',
  blocked: 'crossed',
  held: 'crossed',
};

export const roleShape: Record<RoleState, StripShape> = {
  standing: 'whole',
  conditional: 'broken',
  missing: 'none',
  lapsed: 'torn',
  declined: 'crossed',
};

export const statusShape: Record<Status, StripShape> = {
  within: 'whole',
  marginal: 'broken',
  unknown: 'none',
  exceeded: 'crossed',
};

export const outcomeShape: Record<Outcome, StripShape> = {
  qualified: 'whole',
  conditional: 'broken',
  not_qualified: 'crossed',
};

export const findingShape: Record<Finding['standing'], StripShape> = {
  met: 'whole',
  curable: 'broken',
  not_met: 'crossed',
};

/** The colour of the tape on which a word of that shape is written. */
export const tapeColour: Record<StripShape, string> = {
  whole: 'green',
  broken: 'yellow',
  torn: 'orange',
  crossed: 'red',
  none: '',
};
