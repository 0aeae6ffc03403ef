import { expect, it } from 'vitest';
import { drawingOf, hashOf, LARGEST, pathOf } from './drawing.ts';

it('has the hash that the server gives', async () => {
  // The same drawing and hash as in server/clearance/src/drawing.rs.
  expect(
    await hashOf([
      [0, 1000, 500, 20],
      [7, 7],
    ]),
  ).toBe('a00917019d0674267ccacbc88006d8b590ef01f9807033afe9e7c66ba3217063');
});

it('places points in the box, whatever the width of the pad', () => {
  const stroke = [
    { x: 0, y: 0 },
    { x: 150, y: 75 },
  ];
  expect(drawingOf([stroke], 300)).toEqual([[0, 0, 500, 250]]);
  expect(drawingOf([stroke], 150)).toEqual([[0, 0, 1000, 500]]);
  expect(drawingOf([[{ x: 400, y: -9 }], []], 300)).toEqual([[1000, 0]]);
  expect(drawingOf([], 300)).toBeUndefined();
});

it('leaves out points that tell nothing, and keeps corners', () => {
  const points = [0, 10, 20, 30].map((x) => ({ x, y: x }));
  expect(drawingOf([[...points, { x: 30, y: 100 }]], 100)).toEqual([[0, 0, 300, 300, 300, 1000]]);
});

it('keeps even a page of scribble within what the server keeps', () => {
  const scribble = Array.from({ length: 30 }, (_, s) =>
    Array.from({ length: 200 }, (_, i) => ({
      x: 150 + 140 * Math.sin(i * (1.1 + s / 50)),
      y: 150 + 140 * Math.cos(i * 0.7 + s),
    })),
  );
  const made = drawingOf(scribble, 300) ?? [];
  expect(made.length).toBeGreaterThan(0);
  expect(JSON.stringify(made).length).toBeLessThanOrEqual(LARGEST);
});

it('draws strokes and dots, in a box that holds just them', () => {
  expect(
    pathOf([
      [100, 200, 300, 250],
      [400, 210],
    ]),
  ).toEqual({ path: 'M100 200L300 250M400 210L400 210', box: '88 188 324 74' });
});
