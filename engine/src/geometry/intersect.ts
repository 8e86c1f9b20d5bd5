import { carriersMeet } from './carrier.ts';
import { distanceToSegment } from './nearest.ts';
import type { Path } from './path.ts';
import { distance, type Point } from './point.ts';
import { endOf, shareAt, startOf, type Segment } from './segment.ts';
import { SAME } from './tolerance.ts';

function addNew(found: Point[], at: Point): void {
  for (const each of found) if (distance(each, at) <= SAME) return;
  found.push(at);
}

const liesOn = (segment: Segment, at: Point): boolean => distanceToSegment(segment, at) <= SAME;

function gather(a: Segment, b: Segment, found: Point[]): void {
  // An end that rests on the other segment counts, however flat the angle or parallel the two are.
  for (const at of [startOf(a), endOf(a)]) if (liesOn(b, at)) addNew(found, at);
  for (const at of [startOf(b), endOf(b)]) if (liesOn(a, at)) addNew(found, at);
  for (const at of carriersMeet(a, b)) if (liesOn(a, at) && liesOn(b, at)) addNew(found, at);
}

const inOrderAlong = (segment: Segment, found: Point[]): Point[] =>
  found.length < 2 ? found : found.sort((p, q) => shareAt(segment, p) - shareAt(segment, q));

/**
 * The points that two segments share, ends included, to a millionth of a millimetre, in order along `a`.
 * Where they run along one another, the ends of the common part.
 */
export function intersections(a: Segment, b: Segment): Point[] {
  const found: Point[] = [];
  gather(a, b, found);
  return inOrderAlong(a, found);
}

/** The points that two paths share, in order along `a`; a corner that both pass counts once. */
export function pathIntersections(a: Path, b: Path): Point[] {
  const all: Point[] = [];
  for (const first of a) {
    const found: Point[] = [];
    for (const second of b) gather(first, second, found);
    for (const at of inOrderAlong(first, found)) addNew(all, at);
  }
  return all;
}
