// A mark drawn with a finger, as it is signed and sent: strokes in a box of 1000 by 1000. Makes the compact
// form and its hash; knows nothing of pads or screens.

/** Strokes in the order they were drawn, each x, y, x, y ... from the top left corner. */
export type Drawing = number[][];

export interface Point {
  x: number;
  y: number;
}

/** The server's limit, in bytes of the form that is hashed. */
export const LARGEST = 4096;
const SIDE = 1000;

/** RFC 8785 of lists of whole numbers is what JSON.stringify writes. */
function text(drawing: Drawing): string {
  return JSON.stringify(drawing);
}

/** How far a point is from the line between two others. */
function off(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  if (length === 0) return Math.hypot(point.x - from.x, point.y - from.y);
  return Math.abs(dy * (point.x - from.x) - dx * (point.y - from.y)) / length;
}

/** The stroke with fewer points, none of which was further off than this. */
function thinned(points: Point[], tolerance: number): Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 3) return points;
  let [worst, at] = [0, 0];
  for (let i = 1; i < points.length - 1; i += 1) {
    const far = off(points[i] as Point, first, last);
    if (far > worst) [worst, at] = [far, i];
  }
  if (worst <= tolerance) return [first, last];
  return [
    ...thinned(points.slice(0, at + 1), tolerance).slice(0, -1),
    ...thinned(points.slice(at), tolerance),
  ];
}

/** What was drawn on a pad of some width, small enough to keep; nothing when nothing was drawn. */
export function drawingOf(strokes: Point[][], width: number): Drawing | undefined {
  const drawn = strokes.filter((one) => one.length > 0);
  if (drawn.length === 0 || width <= 0) return undefined;
  const place = (value: number) => Math.min(SIDE, Math.max(0, Math.round((value * SIDE) / width)));
  const whole = drawn.map((one) => one.map(({ x, y }) => ({ x: place(x), y: place(y) })));
  let made: Drawing = [];
  // A long drawing loses detail before it loses strokes; only a page of scribble loses its last ones.
  for (let tolerance = 1; tolerance <= 64; tolerance *= 2) {
    made = whole.map((one) => thinned(one, tolerance).flatMap(({ x, y }) => [x, y]));
    if (text(made).length <= LARGEST) return made;
  }
  while (text(made).length > LARGEST) made.pop();
  return made.length > 0 ? made : undefined;
}

/** SHA-256 of the drawing, hex: what the statement says of it. */
export async function hashOf(drawing: Drawing): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text(drawing)));
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The drawing as an SVG path, and the box that holds just it. */
export function pathOf(drawing: Drawing): { path: string; box: string } {
  const path = drawing
    .map((stroke) => {
      const pairs: string[] = [];
      for (let i = 0; i < stroke.length; i += 2) pairs.push(`${stroke[i]} ${stroke[i + 1]}`);
      // A dot is a line to itself: round ends make it show.
      return `M${pairs.length > 1 ? pairs.join('L') : `${pairs[0]}L${pairs[0]}`}`;
    })
    .join('');
  const all = drawing.flat();
  const xs = all.filter((_, i) => i % 2 === 0);
  const ys = all.filter((_, i) => i % 2 === 1);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const pad = 12;
  const size = (values: number[], from: number) => Math.max(...values) - from + 2 * pad;
  return { path, box: `${left - pad} ${top - pad} ${size(xs, left)} ${size(ys, top)}` };
}
