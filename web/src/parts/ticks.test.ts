import { expect, it } from 'vitest';
import { roundNumbers } from './ticks.ts';

it.each([
  [0, 10, 5, [0, 2, 4, 6, 8, 10]],
  [0.13, 0.87, 4, [0.2, 0.4, 0.6, 0.8]],
  [-3, 3, 4, [-2, 0, 2]],
  [293, 341, 4, [300, 320, 340]],
  [5, 5, 4, [5]],
])('covers %d to %d with about %d round numbers', (min, max, count, numbers) => {
  expect(roundNumbers(min, max, count)).toEqual(numbers);
});
