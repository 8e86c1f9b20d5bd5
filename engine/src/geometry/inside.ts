import { distanceTo } from './nearest.ts';
import { endOfPath, type Path } from './path.ts';
import { distance, type Point } from './point.ts';
import { endOf } from './segment.ts';
import { SAME } from './tolerance.ts';

/**
 * Times that an outline goes round a point that does not lie on it.
 *
 * The crossing count of the polygon of chords, and one turn more for each arc that has the point between
 * itself and its chord. Both read the same cross product and break its tie the same way (a point on a chord
 * counts as a hair to the right of it, and a hair below), so that they never disagree.
 */
function turnsRound(outline: Path, at: Point): number {
  let turns = 0;
  // Each chord begins at the very point where the last one ended: a rounding apart, a crossing could slip between.
  let to = endOfPath(outline) ?? at;
  for (const segment of outline) {
    const from = to;
    to = endOf(segment);
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const cross = dx * (at.y - from.y) - dy * (at.x - from.x);
    if (from.y <= at.y) {
      if (to.y > at.y && cross > 0) turns += 1;
    } else if (to.y <= at.y && cross < 0) turns -= 1;
    if (segment.kind === 'arc' && distance(segment.centre, at) < segment.radius) {
      const whole = Math.abs(segment.sweep) >= 2 * Math.PI;
      const side = cross || -dy || dx;
      if (whole || side * segment.sweep < 0) turns += Math.sign(segment.sweep);
    }
  }
  return turns;
}

/** Whether a closed outline holds a point. What lies on the outline, to a millionth of a millimetre, is in. */
export const contains = (outline: Path, at: Point): boolean =>
  distanceTo(outline, at) <= SAME || turnsRound(outline, at) !== 0;
