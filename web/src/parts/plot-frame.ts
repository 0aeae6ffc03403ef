// What a plot draws and says: which curves share a frame, which figures and limits belong to them, and where all
// of it stands. It decides nothing: a figure belongs to a curve when it is that curve's most, least or last value,
// and the status against a limit is the core's.

import type { Check, Figure, Quantity, Series, Trace } from '../api/types.ts';
import { listed, quantity } from '../format.ts';
import type { Units } from '../settings.svelte.ts';
import { t } from '../texts/index.ts';
import { displayScale, ticks } from './ticks.ts';

export const LEFT = 54;
export const TOP = 26;

export interface Frame {
  kind: Quantity;
  unit: string;
  series: Series[];
  /** Limits on what these curves show. */
  limits: Check[];
  /** Figures that are a curve's most, least or last, with the interval they lie in. */
  bands: Figure[];
}

interface Box {
  width: number;
  height: number;
  right: number;
  bottom: number;
}

function finite(values: number[]): number[] {
  return values.filter(Number.isFinite);
}

/** Whether a value is the most, the least or the last of a curve, as far as its samples tell. */
export function marks(series: Series, value: number): boolean {
  const values = finite(series.values);
  if (values.length === 0) return false;
  const close = (one: number) => Math.abs(one - value) <= 0.01 * Math.max(Math.abs(value), Math.abs(one));
  return [Math.max(...values), Math.min(...values), values.at(-1) ?? 0].some(
    (one) => one !== 0 && close(one),
  );
}

export function framesOf(trace: Trace, checks: Check[], figures: Figure[], units: Units): Frame[] {
  const kinds = [...new Set(trace.y.map((one) => one.quantity))];
  return kinds.map((kind) => {
    const series = trace.y.filter((one) => one.quantity === kind);
    const top = Math.max(...series.flatMap((one) => finite(one.values)));
    return {
      kind,
      series,
      unit: displayScale(kind, top, units).unit,
      limits: checks.filter(
        (one) =>
          one.limit.quantity === kind &&
          one.value !== null &&
          series.some((each) => marks(each, one.value ?? Number.NaN)),
      ),
      bands: figures.filter(
        (one) => one.quantity === kind && one.high > one.low && series.some((each) => marks(each, one.value)),
      ),
    };
  });
}

function span(values: number[], fromZero: boolean): [number, number] {
  const good = finite(values);
  let min = Math.min(...good);
  let max = Math.max(...good);
  if (fromZero && min > 0 && min < max * 0.6) min = 0;
  if (max === min) max = min + 1;
  return [min, max + (max - min) * 0.04];
}

/** The sample nearest to a place on the axis. */
export function nearest(values: number[], x: number): number {
  let best = 0;
  for (const [i, one] of values.entries()) {
    if (Math.abs(one - x) < Math.abs((values[best] ?? 0) - x)) best = i;
  }
  return best;
}

export function drawFrame(trace: Trace, frame: Frame, box: Box, units: Units) {
  const { kind, series } = frame;
  const curves = series.flatMap((one) => one.values);
  const highest = Math.max(...finite(curves));
  // A limit so far off that it would press the curve flat is named in words only.
  const limits = frame.limits.filter((one) => one.limit.value <= highest * 3);
  const [x0, x1] = span(trace.x.values, false);
  const [y0, y1] = span(
    [
      ...curves,
      ...limits.map((one) => one.limit.value),
      ...frame.bands.flatMap((one) => [one.low, one.high]).filter((one) => one <= highest * 3),
    ],
    kind !== 'temperature',
  );
  const { width, height, right, bottom } = box;
  const inner = Math.max(width - LEFT - right, 10);
  const x = (value: number) => LEFT + ((value - x0) / (x1 - x0)) * inner;
  const y = (value: number) =>
    TOP + (1 - (Math.min(y1, Math.max(y0, value)) - y0) / (y1 - y0)) * (height - TOP - bottom);
  return {
    x,
    y,
    xTicks: ticks(trace.x.quantity, [x0, x1], width < 420 ? 4 : 8, units, Math.max(...trace.x.values)).map(
      (one) => ({
        at: x(one.si),
        text: one.text,
      }),
    ),
    yTicks: ticks(kind, [y0, y1], 4, units, highest).map((one) => ({ at: y(one.si), text: one.text })),
    bands: frame.bands.map((one) => ({
      title: one.title,
      y: y(one.high),
      height: Math.max(y(one.low) - y(one.high), 2),
    })),
    limits: namesApart(limits.map((one) => ({ title: one.title, at: y(one.limit.value) }))),
    lines: series.map((one) => ({
      d: one.values
        .map((value, i) => [trace.x.values[i] ?? Number.NaN, value] as const)
        .filter(([a, b]) => Number.isFinite(a) && Number.isFinite(b))
        .map(([a, b], i) => `${i === 0 ? 'M' : 'L'}${x(a).toFixed(1)} ${y(b).toFixed(1)}`)
        .join(''),
    })),
  };
}

/** A line of text, with a hair of room. */
const TEXT = 15;

/** Names over their lines; under them at the very top, and where another name stands already. */
export function namesApart(
  lines: { title: string; at: number }[],
): { title: string; at: number; textAt: number }[] {
  const placed: { title: string; at: number; textAt: number }[] = [];
  for (const one of lines.toSorted((a, b) => a.at - b.at)) {
    const over = one.at - 7;
    const taken = placed.some((other) => Math.abs(other.textAt - over) < TEXT);
    placed.push({ ...one, textAt: one.at < TOP + 20 || taken ? one.at + 18 : over });
  }
  return placed;
}

/** The plot in words: from where to where each curve goes, and how it stands to its limits. */
export function summary(frame: Frame): string {
  const spans = frame.series.map((one) => {
    const values = finite(one.values);
    return t.figures.span(
      one.title,
      quantity(frame.kind, Math.min(...values)),
      quantity(frame.kind, Math.max(...values)),
    );
  });
  const limits = frame.limits.map((one) =>
    t.figures.against(
      one.title,
      `${one.limit.bound === 'at_most' ? t.figures.atMost : t.figures.atLeast} ${quantity(frame.kind, one.limit.value)}`,
      t.words.status[one.status],
    ),
  );
  return [`${listed(spans)}.`, ...limits].join(' ');
}
