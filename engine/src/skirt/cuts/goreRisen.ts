import {
  arc,
  endOf,
  lengthOf,
  line,
  point,
  pointAt,
  polyline,
  startOf,
  tangentAt,
  type Path,
  type Point,
} from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { EdgeName } from '../panel.ts';
import type { Allowances } from './edges.ts';

export type GoreEdges = Readonly<Record<EdgeName, Path>>;

/**
 * Raw edges of a panel with a risen top, edge by edge. The cloth above its line runs on along the sides, each place as near to its
 * side's way as it lies to the side; in the seam allowances it goes straight out, so that panels meet where they are sewn.
 * `radius` is that of the top line about the hem's apex; null where the panel is straight.
 */
export function risenRaw(
  { waist, right, hem, left }: GoreEdges,
  beyond: Allowances,
  radius: Mm | null,
): readonly [Path, Path, Path, Path] {
  const [leftEnd, rightEnd] = [pointAt(waist, mm(0)), pointAt(waist, lengthOf(waist))];
  const [onLeft, onRight] = [tangentAt(left, lengthOf(left)), tangentAt(right, mm(0))];
  // Angles from straight up, towards the right.
  const [from, to] = [Math.atan2(onLeft.x, -onLeft.y), Math.atan2(-onRight.x, onRight.y)];
  const { depth } = beyond.top;
  const up = [leftEnd, ...waist.map(endOf)].map(({ x, y }, i, { length }) => {
    const angle = from + ((to - from) * i) / (length - 1);
    return point(x + depth * Math.sin(angle), y - depth * Math.cos(angle));
  });
  const out = (at: Point, along: Point, by: number): Point => point(at.x + by * along.y, at.y - by * along.x);
  const rightSide = sideOf(right, beyond.right.depth);
  const leftSide = sideOf(left, beyond.left.depth);
  const [first, last] = [up[0] ?? leftEnd, up.at(-1) ?? rightEnd];
  const top = [out(first, onLeft, beyond.left.depth), out(last, onRight, beyond.right.depth)] as const;
  const bottom = [
    reached(leftSide.first, backwards(leftSide.firstAlong), beyond.hem.depth, beyond.left.depth, radius),
    reached(rightSide.last, rightSide.lastAlong, beyond.hem.depth, beyond.right.depth, radius),
  ] as const;
  return [
    polyline([top[0], ...up, top[1]]),
    polyline([top[1], ...rightSide.corners, bottom[1]]),
    [hemBetween(bottom[1], bottom[0], hem, radius)],
    polyline([bottom[0], ...leftSide.corners, top[0]]),
  ];
}

const backwards = ({ x, y }: Point): Point => point(-x, -y);

/** A side moved out: where its ends come to lie, the way it goes there, and its mitred corners between. */
function sideOf(side: Path, by: Mm) {
  const ways = side.map((each) => tangentAt([each], mm(0)));
  const normals = ways.map(({ x, y }) => point(y, -x));
  const none = point(0, 0);
  const [firstAlong, lastAlong] = [ways[0] ?? none, ways.at(-1) ?? none];
  const [start, end] = [pointAt(side, mm(0)), pointAt(side, lengthOf(side))];
  const moved = (at: Point, { x, y }: Point): Point => point(at.x + by * x, at.y + by * y);
  const corners = side.slice(1).map((each, i) => {
    const [one, other] = [normals[i] ?? none, normals[i + 1] ?? none];
    const share = 1 / (1 + one.x * other.x + one.y * other.y);
    return moved(startOf(each), point((one.x + other.x) * share, (one.y + other.y) * share));
  });
  const [firstNormal, lastNormal] = [normals[0] ?? none, normals.at(-1) ?? none];
  return { first: moved(start, firstNormal), last: moved(end, lastNormal), firstAlong, lastAlong, corners };
}

/** A raw side run on beyond the hem line, `aside` from its radius, to the raw hem. */
function reached(at: Point, way: Point, depth: Mm, aside: Mm, radius: Mm | null): Point {
  if (radius === null) return point(at.x + depth * way.x, at.y + depth * way.y);
  // Along a line that passes the apex at `aside`, as far as the raw hem is from it.
  const along = at.x * way.x + (at.y + radius) * way.y;
  const far = Math.sqrt((along + depth) ** 2 - aside ** 2) - along;
  return point(at.x + far * way.x, at.y + far * way.y);
}

function hemBetween(right: Point, left: Point, hem: Path, radius: Mm | null) {
  if (radius === null || hem[0]?.kind !== 'arc') return line(right, left);
  const angle = ({ x, y }: Point): number => Math.atan2(x, y + radius);
  const [to, from] = [angle(right), angle(left)];
  const reach = mm(Math.hypot(right.x, right.y + radius));
  return arc(point(0, -radius), reach, radians(Math.PI / 2 - to), radians(to - from));
}
