// What test shots mean to the tools: which of them count for a technique, how each differs from the plan, and which
// measurements belong to which shot. The fit itself is the core's.

import type { Inputs, InputValue, ShotRow, TestShot } from '../api/types.ts';

/** Those of the technique, the earliest first: a ladder is read from its foot. */
export function shotsFor(technique: string, shots: readonly TestShot[]): TestShot[] {
  return shots
    .filter((one) => one.technique === technique)
    .toSorted((a, b) => a.shot_at.localeCompare(b.shot_at));
}

function same(a: InputValue | undefined, b: InputValue | undefined): boolean {
  if (typeof a === 'object' && typeof b === 'object') return a.value === b.value;
  return a === b;
}

/** What was set otherwise than the plan says, by name. */
export function differing(shot: Inputs, plan: Inputs): string[] {
  return [...new Set([...Object.keys(shot), ...Object.keys(plan)])].filter(
    (name) => !same(shot[name], plan[name]),
  );
}

/** The rows of the fit under their shots, which count from 1. */
export function rowsByShot(count: number, rows: readonly ShotRow[]): ShotRow[][] {
  return Array.from({ length: count }, (_, at) => rows.filter((one) => one.shot === at + 1));
}

/** Why there is no fit, as a sentence: without the machine name of the field it is about. */
export function reasonOf(refusal: string): string {
  return refusal.replace(/^[a-z][a-z0-9_]*: (?=\S)/, '');
}
