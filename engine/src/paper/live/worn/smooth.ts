import { point, polyline, type Path, type Point } from '../../../geometry/index.ts';
import { fine } from './surface.ts';

const PIECES = 4;

export type Spot = readonly [x: number, y: number];

/** A smooth line through spots, closed: Catmull–Rom, as short straight pieces. */
export function smooth(spots: readonly Spot[]): Path {
  const count = spots.length;
  const at = (i: number): Spot => spots[(i + count) % count] ?? [0, 0];
  const points: Point[] = [];
  for (let i = 0; i < count; i++)
    for (let k = 0; k < PIECES; k++) {
      const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
      const on = (axis: 0 | 1): number => through(a[axis], b[axis], c[axis], d[axis], k / PIECES);
      points.push(point(fine(on(0)), fine(on(1))));
    }
  return polyline(points, { closed: true });
}

const through = (p: number, q: number, r: number, s: number, t: number): number =>
  0.5 * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - s) * t * t + (3 * q - p - 3 * r + s) * t * t * t);

/** The same outline on both sides of the middle: right side from the top down, then left side up; 0 is the middle. */
export const mirrored = (right: readonly Spot[]): Path =>
  smooth([...right, ...right.toReversed().flatMap(([x, y]): Spot[] => (x === 0 ? [] : [[-x, y]]))]);

export function oval(x: number, y: number, across: number, up: number): Path {
  const points = Array.from({ length: 36 }, (_, i) => {
    const angle = (i * Math.PI) / 18;
    return point(fine(x + across * Math.cos(angle)), fine(y + up * Math.sin(angle)));
  });
  return polyline(points, { closed: true });
}
