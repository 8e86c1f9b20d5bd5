import { FillRule, union, type Path64 } from 'clipper2-ts';
import type { Corner, Outline } from './job.ts';
import { isConvex, side, tidied, twiceArea } from './polygon.ts';
import { turnedSolid, type Solid } from './solid.ts';

/**
 * Where one polygon can't stand because of another: the positions of b's origin, seen from a's, at which their
 * insides overlap. Outlines of that region, holes clockwise. (The no-fit polygon; see Bennell and Oliveira, "The
 * geometry of nesting problems", 2008.)
 */
export interface NoFit {
  readonly outlines: readonly Outline[];
  readonly convex: boolean;
}

export function noFitOf(a: Solid, b: Solid): NoFit {
  const back = turnedSolid(b, 2);
  if (a.reflex === 0 && back.reflex === 0)
    return { outlines: [tidied(summed(a.outline, back.outline))], convex: true };
  const [whole, parted] = a.reflex < back.reflex ? [back, a] : [a, back];
  // Ways that fold back over themselves are straightened first: clipper2-ts 2.0.1 loses a notch beside one.
  const sums = parted.parts.map((part): Path64 => tidied(summed(whole.outline, part)));
  const outlines = union(sums, FillRule.NonZero)
    .map((path) => inOrder(path))
    .filter((outline) => outline.length > 2 && !isSliver(outline));
  const [only] = outlines;
  return { outlines, convex: outlines.length === 1 && only !== undefined && isConvex(only) };
}

/** Tidied without losing which way round it runs: holes stay holes. */
function inOrder(path: Path64): Corner[] {
  const outline = path.map(({ x, y }) => ({ x, y }));
  const corners = tidied(outline);
  return twiceArea(outline) < 0 ? corners.toReversed() : corners;
}

/** Corners of a union are rounded to whole units, which can leave cracks that are none: narrower than this. */
const CRACK = 20;

function isSliver(outline: Outline): boolean {
  const round = outline.reduce((sum, { x, y }, i) => {
    const next = outline[(i + 1) % outline.length] ?? { x, y };
    return sum + Math.sqrt((next.x - x) ** 2 + (next.y - y) ** 2);
  }, 0);
  return Math.abs(twiceArea(outline)) <= CRACK * round;
}

/**
 * The way round both: along each edge of the first from the corner of the second that reaches farthest out of it, and
 * at each corner round the second to the next. Of two convex outlines that is their Minkowski sum, corner by corner and
 * exact. Where the first turns right the way runs back over itself, and what it winds round more often than not is the
 * sum (convolution; Guibas, Ramshaw and Stolfi 1983): the second must be convex.
 */
function summed(first: Outline, second: Outline): Corner[] {
  const path: Corner[] = [];
  const count = second.length;
  const reaching = first.map((from, i) => farthest(second, from, first[(i + 1) % first.length] ?? from));
  for (const [i, from] of first.entries()) {
    const to = reaching[i] ?? 0;
    const last = reaching[(i + first.length - 1) % first.length] ?? 0;
    const before = first[(i + first.length - 1) % first.length] ?? from;
    const way = side(before, from, first[(i + 1) % first.length] ?? from) >= 0 ? 1 : count - 1;
    for (let at = last; ; at = (at + way) % count) {
      const corner = second[at] ?? { x: 0, y: 0 };
      path.push({ x: from.x + corner.x, y: from.y + corner.y });
      if (at === to) break;
    }
  }
  return path;
}

/** Which corner of a convex outline lies farthest to the right of a way: of two, the one that the way leads to. */
function farthest(outline: Outline, from: Corner, to: Corner): number {
  const count = outline.length;
  const out = { x: to.y - from.y, y: from.x - to.x };
  const reach = ({ x, y }: Corner): number => x * out.x + y * out.y;
  const along = ({ x, y }: Corner): number => x * (to.x - from.x) + y * (to.y - from.y);
  let best = 0;
  for (let at = 1; at < count; at++) {
    const corner = outline[at] ?? { x: 0, y: 0 };
    const known = outline[best] ?? corner;
    const more = reach(corner) - reach(known);
    if (more > 0 || (more === 0 && along(corner) > along(known))) best = at;
  }
  return best;
}
