// Round numbers for the axes of plots, in the units people read. The units are the core's: how many SI one
// of them is, is asked of the core rather than known here.

import type { Quantity } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { number } from '../format.ts';
import type { Units } from '../settings.svelte.ts';

export interface Tick {
  si: number;
  text: string;
}

/** About `count` round numbers that cover `min` to `max`. */
export function roundNumbers(min: number, max: number, count: number): number[] {
  if (!(max > min) || !Number.isFinite(min) || !Number.isFinite(max)) return [min];
  const rough = (max - min) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? 10 * power;
  const numbers: number[] = [];
  for (let i = Math.ceil(min / step - 1e-9); i * step <= max + step * 1e-9; i += 1) {
    numbers.push(Number((i * step).toPrecision(12)));
  }
  return numbers;
}

export interface Scale {
  /** SI = offset + factor × what people read. */
  factor: number;
  offset: number;
  unit: string;
}

/** The unit the core would write this quantity in, and what it is worth. */
export function displayScale(kind: Quantity, typical: number, units: Units): Scale {
  const plain: Scale = { factor: 1, offset: 0, unit: '' };
  try {
    const unit = /[^\d.,\s+\-−–()]\S*$/u.exec(core.format(kind, typical, units))?.[0] ?? '';
    const offset = core.parse(kind, `0 ${unit}`);
    const factor = (core.parse(kind, `10 ${unit}`) - offset) / 10;
    return Number.isFinite(factor) && factor > 0 ? { factor, offset, unit } : plain;
  } catch {
    return plain;
  }
}

/** The axis may reach a little over what is on it, whose unit it keeps: `typical` says which. */
export function ticks(
  kind: Quantity,
  [min, max]: readonly [number, number],
  count: number,
  units: Units,
  typical = max,
): Tick[] {
  const { factor, offset } = displayScale(kind, typical, units);
  return roundNumbers((min - offset) / factor, (max - offset) / factor, count).map((read) => ({
    si: offset + factor * read,
    text: number(read).replace('-', '−'),
  }));
}
