import { mm, type Mm } from '../units/index.ts';
import type { Path } from './path.ts';
import { endOf, startOf, type Arc } from './segment.ts';

export interface Bounds {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

const QUARTER = Math.PI / 2;

/** Whether the arc passes the end of its circle at `quarter` quarter turns from +x. */
function passes({ start, sweep }: Arc, quarter: number): boolean {
  const low = Math.min(start, start + sweep) / QUARTER;
  const high = Math.max(start, start + sweep) / QUARTER;
  return quarter + 4 * Math.ceil((low - quarter) / 4) <= high;
}

/** The smallest upright rectangle round a path; exact for arcs. An empty path has an empty one at the origin. */
export function boundsOf(path: Path): Bounds {
  if (path.length === 0)
    return { left: mm(0), top: mm(0), right: mm(0), bottom: mm(0), width: mm(0), height: mm(0) };
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  const take = (x: number, y: number): void => {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  };
  for (const segment of path) {
    const from = startOf(segment);
    const to = endOf(segment);
    take(from.x, from.y);
    take(to.x, to.y);
    if (segment.kind === 'line') continue;
    const { centre, radius } = segment;
    if (passes(segment, 0)) take(centre.x + radius, to.y);
    if (passes(segment, 1)) take(to.x, centre.y + radius);
    if (passes(segment, 2)) take(centre.x - radius, to.y);
    if (passes(segment, 3)) take(to.x, centre.y - radius);
  }
  return {
    left: mm(left),
    top: mm(top),
    right: mm(right),
    bottom: mm(bottom),
    width: mm(right - left),
    height: mm(bottom - top),
  };
}
