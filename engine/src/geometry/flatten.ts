import { mm, type Mm } from '../units/index.ts';
import type { Path } from './path.ts';
import type { Point } from './point.ts';
import { pointOn, type Arc } from './segment.ts';

/** Thinner than a chalk line or a cut by far. */
const FLAT = mm(0.05);

/** Chords that keep within `tolerance` of an arc: each of angle 2·acos(1 − tolerance / radius) at most. */
function chordsOf({ radius, sweep }: Arc, tolerance: Mm): number {
  if (radius <= tolerance) return Math.max(1, Math.ceil((2 * Math.abs(sweep)) / Math.PI));
  // 2·asin(√(t / 2R)) is half of 2·acos(1 − t / R), without its loss of digits on large circles.
  const most = 4 * Math.asin(Math.sqrt(tolerance / (2 * radius)));
  return Math.max(1, Math.ceil(Math.abs(sweep) / most));
}

/**
 * Points along a path, both its ends included, that straight lines join with no more than `tolerance` (> 0)
 * between them and the path. They lie on the path. A closed path ends with the point it began with.
 */
export function flatten(path: Path, tolerance: Mm = FLAT): Point[] {
  const points: Point[] = [];
  for (const segment of path) {
    if (points.length === 0) points.push(pointOn(segment, 0));
    const count = segment.kind === 'arc' ? chordsOf(segment, tolerance) : 1;
    for (let i = 1; i <= count; i += 1) points.push(pointOn(segment, i / count));
  }
  return points;
}
