import { mm, radians, type Mm } from '../units/index.ts';
import { signedAreaOf } from './area.ts';
import { carriersMeet } from './carrier.ts';
import { offsetRadius, offsetSegment } from './offset.ts';
import type { Path } from './path.ts';
import { distance, midpoint, type Point } from './point.ts';
import {
  angleOf,
  arc,
  endOf,
  lengthOfSegment,
  line,
  shareAt,
  startOf,
  wrapped,
  type Segment,
} from './segment.ts';
import { SAME } from './tolerance.ts';

/** One edge of an outline and how far it moves: outward where positive, inward where negative. */
export interface OffsetEdge {
  readonly path: Path;
  readonly distance: Mm;
}

/**
 * A corner that lengthens an edge may reach this many times the larger distance from where it was; beyond it
 * (edges that go on nearly straight with different distances, needles sharper than 11°) a straight step joins
 * the two. A corner that only shortens both is met however far it is.
 */
const MITRE_LIMIT = 10;

interface Side {
  readonly edge: number;
  readonly from: Point;
  readonly to: Point;
  readonly moved: Segment;
  readonly reach: Mm;
}

/** Where two moved neighbours meet: the meeting of their carriers nearest to the old corner, if near enough. */
function cornerOf(before: Side, after: Side): Point | undefined {
  const end = endOf(before.moved);
  const start = startOf(after.moved);
  if (distance(end, start) <= SAME) return end;
  const corner = midpoint(before.to, after.from);
  const limit = MITRE_LIMIT * Math.max(before.reach, after.reach) + distance(before.to, after.from);
  let least = Infinity;
  let nearest: Point | undefined;
  for (const at of carriersMeet(before.moved, after.moved)) {
    const away = distance(at, corner);
    const lengthens = shareAt(before.moved, at) > 1 || shareAt(after.moved, at) < 0;
    if (away >= least || (lengthens && away > limit)) continue;
    least = away;
    nearest = at;
  }
  return nearest;
}

/** The segment lengthened or shortened to new ends; nothing where that turns it round. */
function trimmed(segment: Segment, start: Point | undefined, end: Point | undefined): Segment | undefined {
  if (segment.kind === 'line') {
    const from = start ?? segment.from;
    const to = end ?? segment.to;
    const dx = segment.to.x - segment.from.x;
    const dy = segment.to.y - segment.from.y;
    return (to.x - from.x) * dx + (to.y - from.y) * dy <= 0 ? undefined : line(from, to);
  }
  const last = segment.start + segment.sweep;
  const first = start
    ? segment.start + wrapped(angleOf(segment.centre, start) - segment.start)
    : segment.start;
  const final = end ? last + wrapped(angleOf(segment.centre, end) - last) : last;
  const sweep = final - first;
  if (sweep * segment.sweep <= 0) return undefined;
  return arc(segment.centre, segment.radius, radians(first), radians(sweep));
}

function sidesOf(edges: readonly OffsetEdge[], outward: 1 | -1): readonly Side[] {
  const sides: Side[] = [];
  for (const [edge, { path, distance: out }] of edges.entries())
    for (const segment of path) {
      const left = mm(out * outward);
      const isGone = segment.kind === 'arc' && offsetRadius(segment, left) <= SAME;
      if (isGone || lengthOfSegment(segment) <= SAME) continue;
      sides.push({
        edge,
        from: startOf(segment),
        to: endOf(segment),
        moved: offsetSegment(segment, left),
        reach: mm(Math.abs(out)),
      });
    }
  return sides;
}

/**
 * A closed outline, given as consecutive edges, with each edge moved by its own distance: positive is
 * outward, whichever way the outline runs. Exact: lines stay lines, arcs stay arcs about their centres.
 *
 * Neighbours are lengthened or shortened to where they meet (mitred corners). Where they do not meet (edges
 * in line, an arc too small to reach its neighbour), a straight step at the end of the earlier edge joins
 * them. Returned edge by edge in the same order, end to end; an edge that the move swallows comes back empty
 * and its neighbours meet one another. That the new outline does not cross itself elsewhere (a slit narrower
 * than its allowances) is for `selfIntersects`.
 */
export function offsetOutline(edges: readonly OffsetEdge[]): Path[] {
  const outward = signedAreaOf(edges.flatMap(({ path }) => path)) < 0 ? -1 : 1;
  let sides = sidesOf(edges, outward);
  for (;;) {
    const paths: Segment[][] = edges.map(() => []);
    let swallowed: Side | undefined;
    const last = sides.at(-1);
    let corner = last && sides[0] && cornerOf(last, sides[0]);
    for (const [i, side] of sides.entries()) {
      const next = sides[(i + 1) % sides.length] ?? side;
      const end = cornerOf(side, next);
      const segment = trimmed(side.moved, corner, end);
      if (!segment) {
        swallowed = side;
        break;
      }
      paths[side.edge]?.push(segment);
      if (!end) paths[side.edge]?.push(line(endOf(segment), startOf(next.moved)));
      corner = end;
    }
    // Moved in past its own middle, an outline comes out the other way round: nothing of it is left.
    if (!swallowed) return signedAreaOf(paths.flat()) * outward > 0 ? paths : edges.map(() => []);
    sides = sides.filter((side) => side !== swallowed);
  }
}
