import { mm, type Mm } from '../units/index.ts';
import { intersections } from './intersect.ts';
import { endOfPath, type Path } from './path.ts';
import { distance, type Point } from './point.ts';
import { endOf, startOf } from './segment.ts';
import { SAME } from './tolerance.ts';

/** Neighbours that join smoothly share more than a point to within this: their rounding is not a crossing. */
const CORNER = mm(0.01);

/** Whether every segment begins where the one before ends, and the first where the last ends. */
export function isClosed(path: Path, tolerance: Mm = SAME): boolean {
  let end = endOfPath(path);
  for (const segment of path) {
    if (end && distance(end, startOf(segment)) > tolerance) return false;
    end = endOf(segment);
  }
  return path.length > 0;
}

/** Whether a closed outline crosses or touches itself anywhere but at the corners of neighbours. */
export function selfIntersects(outline: Path): boolean {
  const last = outline.length - 1;
  for (const [i, a] of outline.entries()) {
    if (a.kind === 'arc' && Math.abs(a.sweep) > 2 * Math.PI + 1e-9) return true;
    for (let j = i + 1; j <= last; j += 1) {
      const b = outline[j];
      if (!b) continue;
      const corners: Point[] = [];
      if (j === i + 1) corners.push(endOf(a));
      if (i === 0 && j === last) corners.push(startOf(a));
      for (const at of intersections(a, b))
        if (corners.every((corner) => distance(corner, at) > CORNER)) return true;
    }
  }
  return false;
}
