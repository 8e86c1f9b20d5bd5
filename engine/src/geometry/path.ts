import { mm, type Mm } from '../units/index.ts';
import { distance, point, type Point } from './point.ts';
import {
  directionOn,
  endOf,
  lengthOfSegment,
  line,
  partOf,
  pointOn,
  reverse,
  type Segment,
} from './segment.ts';

/** Lines and arcs, each beginning where the one before ends. An outline is a path that ends where it begins. */
export type Path = readonly Segment[];

/** Straight lines from point to point; `closed` adds the one back to the first. */
export function polyline(
  points: readonly Point[],
  { closed = false }: { readonly closed?: boolean } = {},
): Path {
  const path: Segment[] = [];
  let last: Point | undefined;
  for (const each of points) {
    if (last) path.push(line(last, each));
    last = each;
  }
  const first = points[0];
  if (closed && first && last && distance(first, last) > 0) path.push(line(last, first));
  return path;
}

export function lengthOf(path: Path): Mm {
  let sum = 0;
  for (const segment of path) sum += lengthOfSegment(segment);
  return mm(sum);
}

/** The same path travelled from its end to its start. */
export const reversed = (path: Path): Path => path.toReversed().map(reverse);

/** The segment `along` a path and the share of it; before the start and past the end count as the ends. */
function find(path: Path, along: Mm): { readonly segment: Segment; readonly share: number } | undefined {
  let left: number = along;
  let last: Segment | undefined;
  for (const segment of path) {
    const long = lengthOfSegment(segment);
    if (left < long) return { segment, share: Math.max(0, left / long) };
    left -= long;
    last = segment;
  }
  return last && { segment: last, share: 1 };
}

/** The point that lies `along` the path from its start; before the start and past the end, the ends. */
export function pointAt(path: Path, along: Mm): Point {
  const found = find(path, along);
  return found ? pointOn(found.segment, found.share) : point(0, 0);
}

/** The direction of travel, of length 1, `along` the path; at a corner, that of the segment which begins there. */
export function tangentAt(path: Path, along: Mm): Point {
  const found = find(path, along);
  return found ? directionOn(found.segment, found.share) : point(1, 0);
}

/** The part of the path between two distances along it, `from` ≤ `to`; what lies beyond the ends is left out. */
export function stretch(path: Path, from: Mm, to: Mm): Path {
  const parts: Segment[] = [];
  let passed = 0;
  for (const segment of path) {
    const long = lengthOfSegment(segment);
    const begin = Math.max(0, from - passed);
    const end = Math.min(long, to - passed);
    if (end > begin)
      parts.push(begin === 0 && end === long ? segment : partOf(segment, begin / long, end / long));
    passed += long;
  }
  return parts;
}

export const endOfPath = (path: Path): Point | undefined => {
  const last = path.at(-1);
  return last && endOf(last);
};
