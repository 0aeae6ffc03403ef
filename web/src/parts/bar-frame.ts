// Where things stand on a bar that shows a figure against its limit. Knows numbers only; the sentence beside the
// bar is for its screen.

export const BAR = { width: 320, top: 6, height: 16 } as const;

export interface Held {
  value: number;
  low: number;
  high: number;
  limit: number;
  bound: 'at_most' | 'at_least';
  /** Nought means nothing here, as with degrees of temperature: the bar need not begin there. */
  free?: boolean;
}

export interface BarFrame {
  value: number;
  edge: number;
  band: { x: number; width: number };
  beyond: { x: number; width: number };
  /** Where the limit's own words stand, so that they never leave the bar. */
  anchor: 'start' | 'middle' | 'end';
}

/** Never thinner than can be seen. */
const LEAST = 6;

export function barFrame({ value, low, high, limit, bound, free = false }: Held): BarFrame {
  let least = Math.min(low, high, value, limit);
  let most = Math.max(low, high, value, limit);
  if (!free) {
    least = Math.min(least, 0);
    most = Math.max(most, 0);
  }
  const room = (most - least || 1) * 0.14;
  // Nothing against a limit of nothing still needs a bar to stand on.
  if (most > 0 || free || most === least) most += room;
  if (least < 0 || free) least -= room;
  const at = (one: number) => ((one - least) / (most - least)) * BAR.width;
  const edge = at(limit);
  const [from, to] = [at(Math.min(low, high)), at(Math.max(low, high))];
  const width = Math.max(to - from, LEAST);
  const x = Math.min(Math.max((from + to - width) / 2, 0), BAR.width - width);
  return {
    value: at(value),
    edge,
    band: { x, width },
    beyond: bound === 'at_most' ? { x: edge, width: BAR.width - edge } : { x: 0, width: edge },
    anchor: edge < BAR.width * 0.25 ? 'start' : edge > BAR.width * 0.75 ? 'end' : 'middle',
  };
}
