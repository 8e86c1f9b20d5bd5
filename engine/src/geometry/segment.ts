import { mm, radians, type Mm, type Radians } from '../units/index.ts';
import { between, distance, point, type Point } from './point.ts';

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/**
 * A piece of a circle. Angles are measured from +x towards +y; as y points down, a positive sweep runs
 * clockwise on the sheet. `sweep` is signed, at most a full turn either way. `radius` is finite and below a
 * hundred kilometres, where the last digit of an angle comes near SAME: an edge flatter than that is a line.
 */
export interface Arc {
  readonly kind: 'arc';
  readonly centre: Point;
  readonly radius: Mm;
  readonly start: Radians;
  readonly sweep: Radians;
}

export type Segment = Line | Arc;

export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });

export const arc = (centre: Point, radius: Mm, start: Radians, sweep: Radians): Arc => ({
  kind: 'arc',
  centre,
  radius,
  start,
  sweep,
});

export const angleOf = (from: Point, to: Point): number => Math.atan2(to.y - from.y, to.x - from.x);

/** The same angle between −π and π. */
export function wrapped(angle: number): number {
  if (angle >= -Math.PI && angle <= Math.PI) return angle;
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

const onCircle = (of: Arc, angle: number): Point =>
  point(of.centre.x + of.radius * Math.cos(angle), of.centre.y + of.radius * Math.sin(angle));

export const startOf = (segment: Segment): Point =>
  segment.kind === 'line' ? segment.from : onCircle(segment, segment.start);

export const endOf = (segment: Segment): Point =>
  segment.kind === 'line' ? segment.to : onCircle(segment, segment.start + segment.sweep);

/** The same segment travelled the other way. */
export const reverse = (segment: Segment): Segment =>
  segment.kind === 'line'
    ? line(segment.to, segment.from)
    : arc(
        segment.centre,
        segment.radius,
        radians(segment.start + segment.sweep),
        radians(segment.sweep * -1),
      );

export const lengthOfSegment = (segment: Segment): Mm =>
  segment.kind === 'line' ? distance(segment.from, segment.to) : mm(segment.radius * Math.abs(segment.sweep));

/** The point at share `t` of the segment's length, from its start (0) to its end (1). */
export const pointOn = (segment: Segment, t: number): Point =>
  segment.kind === 'line'
    ? between(segment.from, segment.to, t)
    : onCircle(segment, segment.start + segment.sweep * t);

/** The direction of travel, of length 1, at share `t` of the segment. */
export function directionOn(segment: Segment, t: number): Point {
  if (segment.kind === 'arc') {
    const angle = segment.start + segment.sweep * t + (segment.sweep < 0 ? -1 : 1) * (Math.PI / 2);
    return point(Math.cos(angle), Math.sin(angle));
  }
  const long = distance(segment.from, segment.to);
  if (long === 0) return point(1, 0);
  return point((segment.to.x - segment.from.x) / long, (segment.to.y - segment.from.y) / long);
}

/** The part of the segment from share `from` to share `to` of its length. */
export const partOf = (segment: Segment, from: number, to: number): Segment =>
  segment.kind === 'line'
    ? line(pointOn(segment, from), pointOn(segment, to))
    : arc(
        segment.centre,
        segment.radius,
        radians(segment.start + segment.sweep * from),
        radians(segment.sweep * (to - from)),
      );

/**
 * The share of the segment's length at which it passes nearest to `at`; below 0 or above 1 where that is
 * beyond its ends.
 */
export function shareAt(segment: Segment, at: Point): number {
  if (segment.kind === 'line') {
    const dx = segment.to.x - segment.from.x;
    const dy = segment.to.y - segment.from.y;
    const square = dx * dx + dy * dy;
    return square === 0 ? 0 : ((at.x - segment.from.x) * dx + (at.y - segment.from.y) * dy) / square;
  }
  if (segment.sweep === 0) return 0;
  // Measured from the middle of the arc, so that what lies beyond it is told from the nearer end.
  const middle = segment.start + segment.sweep / 2;
  return 0.5 + wrapped(angleOf(segment.centre, at) - middle) / segment.sweep;
}
