// What stops work. A stop goes first, waits for nothing of the plan, and counts even where nobody could check it.

const STOPS = new Set<string>(['hold', 'incident', 'stand_down', 'quarantine', 'shock_load']);

export function isStop(kind: string): boolean {
  return STOPS.has(kind);
}
