import {
  distance,
  endOf,
  lengthOf,
  line,
  offsetOutline,
  point,
  pointAt,
  polyline,
  reverse,
  startOf,
  tangentAt,
  type Path,
  type Point,
} from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import type { EdgeName } from '../panel.ts';
import type { Allowances } from './edges.ts';

export type GoreEdges = Readonly<Record<EdgeName, Path>>;

/**
 * Raw edges of a panel with a risen top, edge by edge: its cloth above the line runs on along the sides, each place as near to
 * its side's way as it lies to the side. In the seam allowances it goes straight out, so that panels meet where they are sewn.
 */
export function risenRaw(edges: GoreEdges, { top, right, hem, left }: Allowances): Path[] {
  const { waist } = edges;
  const [leftEnd, rightEnd] = [pointAt(waist, mm(0)), pointAt(waist, lengthOf(waist))];
  const [onLeft, onRight] = [tangentAt(edges.left, lengthOf(edges.left)), tangentAt(edges.right, mm(0))];
  // Angles from straight up, towards the right.
  const [from, to] = [Math.atan2(onLeft.x, -onLeft.y), Math.atan2(-onRight.x, onRight.y)];
  const points = [leftEnd, ...waist.map(endOf)];
  const upFrom = ({ x, y }: Point, angle: number): Point =>
    point(x + top.depth * Math.sin(angle), y - top.depth * Math.cos(angle));
  const up = points.map((each, i) => upFrom(each, from + ((to - from) * i) / (points.length - 1)));
  const [first, last] = [upFrom(leftEnd, from), upFrom(rightEnd, to)];
  const corners = [
    point(first.x + left.depth * onLeft.y, first.y - left.depth * onLeft.x),
    point(last.x + right.depth * onRight.y, last.y - right.depth * onRight.x),
  ] as const;
  const [, rightRaw = [], hemRaw = [], leftRaw = []] = offsetOutline([
    { path: [line(first, last)], distance: mm(0) },
    { path: [line(last, rightEnd), ...edges.right], distance: right.depth },
    { path: edges.hem, distance: hem.depth },
    { path: [...edges.left, line(leftEnd, first)], distance: left.depth },
  ]);
  return [
    polyline([corners[0], ...up, corners[1]]),
    endingAt(corners[1], rightRaw.toReversed().map(reverse)).toReversed().map(reverse),
    hemRaw,
    endingAt(corners[0], leftRaw),
  ];
}

/** Two places nearer than this, mm, are one. */
const SAME = 1e-6;

/** A side with its last line drawn to the corner; a step there to the outline of a plainer top is left out. */
function endingAt(corner: Point, side: Path): Path {
  const kept = side.filter((each) => distance(startOf(each), corner) > SAME);
  return kept.map((each, i) => (i === kept.length - 1 ? line(startOf(each), corner) : each));
}
