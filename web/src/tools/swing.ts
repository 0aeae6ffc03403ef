// Where the bars of a ranking stand: all on one scale, from the figure's value as it is.

import type { Bar, Sensitivity } from '../api/types.ts';
export interface Swing {
  bar: Bar;
  /** From 0 to 1 of the whole width; the same scale for every bar. */
  from: number;
  to: number;
}

export interface Swings {
  /** Where the figure stands as it is; nothing when it is not given. */
  middle: number | undefined;
  /** Those that move the figure, the most telling first. */
  rows: Swing[];
}

export function swings({ value, bars }: Sensitivity): Swings {
  const moving = bars.filter((one) => one.swing > 0);
  const known = (one: number | null): one is number => one !== null;
  const numbers = [value, ...moving.flatMap((one) => [one.at_low, one.at_high])].filter(known);
  const least = Math.min(...numbers);
  const span = Math.max(...numbers) - least || 1;
  const at = (one: number) => (one - least) / span;
  return {
    middle: value === null ? undefined : at(value),
    rows: moving.map((bar) => {
      // An end at which the figure is not given leaves the bar at the figure's own value.
      const ends = [bar.at_low ?? value, bar.at_high ?? value].filter(known);
      return { bar, from: at(Math.min(...ends)), to: at(Math.max(...ends)) };
    }),
  };
}
