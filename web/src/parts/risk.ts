// Small things that every screen of risks shares. No level is decided here: the core's matrix gives it.

import {
  CONTROL_KINDS,
  type Control,
  type Facets,
  PROBABILITIES,
  type Rating,
  SEVERITIES,
} from '../api/types.ts';

/** Number and letter, as the standard writes an assessed risk: 1C. */
export function codeOf(rating: Rating): string {
  return `${SEVERITIES.indexOf(rating.severity) + 1}${'ABCDEF'.charAt(PROBABILITIES.indexOf(rating.probability))}`;
}

/** The strongest kind first; within a kind as they were written. */
export function ordered(controls: Control[]): Control[] {
  const rank = (one: Control) => CONTROL_KINDS.indexOf(one.kind);
  return controls.toSorted((a, b) => rank(a) - rank(b));
}

/** A plan as it is sent: rows must not move under the hand that types in them, so they are put in order then. */
export function withControlsInOrder(facets: Facets): Facets {
  if (!facets.action.risks) return facets;
  const risks = facets.action.risks.map((one) => ({ ...one, controls: ordered(one.controls ?? []) }));
  return { ...facets, action: { ...facets.action, risks } };
}
