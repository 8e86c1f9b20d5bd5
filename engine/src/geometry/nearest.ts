import { mm, type Mm } from '../units/index.ts';
import type { Path } from './path.ts';
import { distance, type Point } from './point.ts';
import { pointOn, shareAt, type Segment } from './segment.ts';

/** The shortest way from a point to a segment. */
export function distanceToSegment(segment: Segment, from: Point): Mm {
  const share = shareAt(segment, from);
  if (segment.kind === 'arc' && share >= 0 && share <= 1)
    return mm(Math.abs(distance(segment.centre, from) - segment.radius));
  return distance(from, pointOn(segment, Math.min(1, Math.max(0, share))));
}

/** The shortest way from a point to a path; endless where the path is empty. */
export function distanceTo(path: Path, from: Point): Mm {
  let least = Infinity;
  for (const segment of path) least = Math.min(least, distanceToSegment(segment, from));
  return mm(least);
}
