import { mm, type Mm } from '../units/index.ts';
import { point } from './point.ts';
import { arc, directionOn, line, type Arc, type Segment } from './segment.ts';

/** Radius of the parallel of an arc; negative where the distance reaches past the centre. */
export const offsetRadius = (of: Arc, distance: Mm): Mm =>
  mm(of.sweep < 0 ? of.radius - distance : of.radius + distance);

/**
 * The parallel of a segment at `distance`, positive to the left of travel as seen on the sheet: a line drawn
 * to the right moves up, an arc that runs clockwise (positive sweep) grows.
 *
 * An arc moved past its own centre is no parallel any more; it shrinks to the centre and stays there.
 */
export function offsetSegment(segment: Segment, distance: Mm): Segment {
  if (segment.kind === 'arc')
    return arc(
      segment.centre,
      mm(Math.max(0, offsetRadius(segment, distance))),
      segment.start,
      segment.sweep,
    );
  const along = directionOn(segment, 0);
  const dx = along.y * distance;
  const dy = -along.x * distance;
  return line(point(segment.from.x + dx, segment.from.y + dy), point(segment.to.x + dx, segment.to.y + dy));
}
