import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BAR, barFrame } from './bar-frame.ts';

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('a bar of a figure against its limit', () => {
  it('stands on something when figure and limit are both nothing', () => {
    const frame = barFrame({ value: 0, low: 0, high: 0, limit: 0, bound: 'at_most' });
    expect(frame.edge).toBe(0);
    expect(frame.anchor).toBe('start');
    expect(frame.beyond).toEqual({ x: 0, width: BAR.width });
  });

  it('keeps everything on the bar, and in the order of the numbers', () => {
    fc.assert(
      fc.property(
        number,
        number,
        number,
        fc.constantFrom('at_most', 'at_least'),
        fc.boolean(),
        (value, half, limit, bound, free) => {
          const [low, high] = [value - Math.abs(half), value + Math.abs(half)];
          const frame = barFrame({ value, low, high, limit, bound, free });
          const { band, beyond } = frame;
          for (const x of [frame.value, frame.edge, band.x, band.x + band.width, beyond.x + beyond.width]) {
            expect(x).toBeGreaterThanOrEqual(-1e-6);
            expect(x).toBeLessThanOrEqual(BAR.width + 1e-6);
          }
          if (value < limit) expect(frame.value).toBeLessThanOrEqual(frame.edge);
          if (value > limit) expect(frame.value).toBeGreaterThanOrEqual(frame.edge);
          expect(band.width).toBeGreaterThanOrEqual(6);
        },
      ),
    );
  });

  it('begins at nought, except where nought means nothing', () => {
    const held = { value: 12, low: 11, high: 13, limit: 14, bound: 'at_most' } as const;
    expect(barFrame(held).value).toBeGreaterThan(BAR.width * 0.6);
    expect(barFrame({ ...held, free: true }).value).toBeLessThan(BAR.width * 0.5);
  });

  it('marks the side of the limit that is not wanted', () => {
    const held = { value: 12, low: 11, high: 13, limit: 14 };
    const most = barFrame({ ...held, bound: 'at_most' });
    expect(most.beyond.x).toBeCloseTo(most.edge);
    const least = barFrame({ ...held, bound: 'at_least' });
    expect(least.beyond).toEqual({ x: 0, width: least.edge });
  });
});
