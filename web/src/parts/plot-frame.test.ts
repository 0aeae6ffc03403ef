import { beforeAll, expect, it } from 'vitest';
import type { Check, Figure, Trace } from '../api/types.ts';
import { startCore } from '../testing/case.ts';
import { drawFrame, framesOf, marks, namesApart, nearest, summary } from './plot-frame.ts';

beforeAll(startCore);

const trace: Trace = {
  name: 'pull',
  title: 'Pull',
  x: { title: 'Time', quantity: 'time', values: [0, 1, 2, 3] },
  y: [
    { title: 'Line', quantity: 'force', values: [0, 4000, 2000, 1000] },
    { title: 'Speed', quantity: 'speed', values: [0, 2, 4, 5] },
  ],
};

const check = (value: number, limit: number): Check => ({
  name: 'force',
  title: 'Force on the body',
  figure: null,
  value,
  low: null,
  high: null,
  limit: { bound: 'at_most', value: limit, quantity: 'force' },
  source: { document: '', clause: null, jurisdiction: null, standing: 'published' },
  status: 'within',
  blocking: true,
  detail: '',
});

const figure = (value: number): Figure => ({
  name: 'peak',
  title: 'Peak',
  quantity: 'force',
  value,
  low: value - 300,
  high: value + 300,
});

it('gives a frame to each kind of quantity, with the limits and figures that are about its curves', () => {
  const [force, speed] = framesOf(
    trace,
    [check(4010, 8000), check(3000, 1)],
    [figure(4000), figure(2500)],
    'metric',
  );
  expect(force?.limits.map((one) => one.value)).toEqual([4010]);
  expect(force?.bands.map((one) => one.value)).toEqual([4000]);
  expect(force?.unit).toBe('kN');
  expect(speed?.limits).toEqual([]);
});

it('knows a value that a curve ends with, and takes none for zero', () => {
  const [line] = trace.y;
  if (!line) throw new Error('no curve');
  expect([4000, 1000, 1005, 2000, 0].map((one) => marks(line, one))).toEqual([
    true,
    true,
    true,
    false,
    false,
  ]);
});

it('draws a limit inside the frame, and leaves out of it one that would press the curve flat', () => {
  const box = { width: 330, height: 250, right: 16, bottom: 46 };
  const draw = (limit: number) => {
    const [frame] = framesOf(trace, [check(4000, limit)], [], 'metric');
    if (!frame) throw new Error('no frame');
    return { drawn: drawFrame(trace, frame, box, 'metric'), words: summary(frame) };
  };
  const near = draw(8000);
  expect(near.drawn.limits[0]?.at).toBeGreaterThan(0);
  expect(near.drawn.limits[0]?.at).toBeLessThan(near.drawn.y(4000));
  const far = draw(80_000);
  expect(far.drawn.limits).toEqual([]);
  expect(far.words).toBe('Line from 0 N to 4 kN. Force on the body, at most 80 kN: Within.');
});

it('keeps the names of two limits apart', () => {
  const [upper, lower] = namesApart([
    { title: 'lower', at: 110 },
    { title: 'upper', at: 100 },
  ]);
  expect(upper?.title).toBe('upper');
  expect(Math.abs((upper?.textAt ?? 0) - (lower?.textAt ?? 0))).toBeGreaterThan(14);
  expect(lower?.textAt).toBeGreaterThan(lower?.at ?? 0);
});

it('counts an axis in the unit of what is drawn on it', () => {
  const small: Trace = {
    ...trace,
    x: { title: 'Time', quantity: 'time', values: [0, 1, 2, 3] },
    y: [{ title: 'Scatter', quantity: 'length', values: [0.05, 0.06, 0.07, 0.098] }],
  };
  const [frame] = framesOf(small, [], [], 'metric');
  if (!frame) throw new Error('no frame');
  expect(frame.unit).toBe('mm');
  const drawn = drawFrame(small, frame, { width: 330, height: 250, right: 16, bottom: 46 }, 'metric');
  // The axis reaches past 0.1 m, where the core would write metres.
  expect(drawn.yTicks.map((one) => one.text)).toContain('100');
});

it('reads the sample nearest to a finger', () => {
  expect([-1, 0.4, 0.6, 2.9, 9].map((x) => nearest(trace.x.values, x))).toEqual([0, 0, 1, 3, 3]);
});
