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

/** How a shot was set: as the plan says, but for what the person wrote or, where nothing stands, took out. */
export function setOver(plan: Inputs, own: Readonly<Record<string, InputValue | undefined>>): Inputs {
  const set = Object.entries({ ...plan, ...own }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(set) as Inputs;
}

/** The most shots that the core takes in one fit. */
export const MOST_SHOTS = 200;

/** A shot and its place on the ladder, from 1. */
export interface Placed {
  shot: TestShot;
  place: number;
}

/** Those that the fit is made with: all but those left out, and the newest when they are more than it takes. */
export function shotsToFit(shots: readonly TestShot[], left: ReadonlySet<string>): Placed[] {
  return shots
    .map((shot, at) => ({ shot, place: at + 1 }))
    .filter(({ shot }) => !left.has(shot.id))
    .slice(-MOST_SHOTS);
}

/** The rows of the fit under their shots, which count from 1. */
export function rowsByShot(count: number, rows: readonly ShotRow[]): ShotRow[][] {
  return Array.from({ length: count }, (_, at) => rows.filter((one) => one.shot === at + 1));
}

/** Why there is no fit, as a sentence: without the machine name of the field it is about. */
export function reasonOf(refusal: string): string {
  return refusal.replace(/^[a-z][a-z0-9_]*: (?=\S)/, '');
}
