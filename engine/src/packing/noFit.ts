import { FillRule, minkowskiSum, union, type Path64 } from 'clipper2-ts';
import type { Corner, Outline } from './job.ts';
import { isConvex, tidied, twiceArea } from './polygon.ts';

/**
 * Where one polygon can't stand because of another: the positions of b's origin, seen from a's, at which their
 * insides overlap. Outlines of that region, holes clockwise. (The no-fit polygon; see Bennell and Oliveira, "The
 * geometry of nesting problems", 2008.)
 */
export interface NoFit {
  readonly outlines: readonly Outline[];
  readonly convex: boolean;
}

/** Whole-numbered, counter-clockwise, tidied outlines. */
export function noFitOf(a: Outline, b: Outline): NoFit {
  const back = b.map(({ x, y }) => ({ x: -x, y: -y }));
  if (isConvex(a) && isConvex(b)) return { outlines: [merged(a, back)], convex: true };
  const sweep = minkowskiSum(pathOf(back), pathOf(a), true);
  // The sweep goes along outlines only: where one lies wholly inside the other it leaves a hole that is none.
  const filled = [movedBy(a, back[0]), movedBy(back, a[0])];
  const outlines = union([...sweep, ...filled], FillRule.NonZero)
    .map((path) => inOrder(path))
    .filter((outline) => outline.length > 2 && !isSliver(outline));
  const [only] = outlines;
  return { outlines, convex: outlines.length === 1 && only !== undefined && isConvex(only) };
}

const pathOf = (outline: Outline): Path64 => outline.map(({ x, y }) => ({ x, y }));
const movedBy = (outline: Outline, by: Corner | undefined): Path64 =>
  outline.map(({ x, y }) => ({ x: x + (by?.x ?? 0), y: y + (by?.y ?? 0) }));

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

/** Minkowski sum of two convex outlines: their edges in the order of their directions. Exact. */
function merged(a: Outline, b: Outline): Corner[] {
  const from = (outline: Outline): number =>
    outline.reduce((best, { x, y }, i) => {
      const least = outline[best];
      return least && (y < least.y || (y === least.y && x < least.x)) ? i : best;
    }, 0);
  const edges = (outline: Outline, start: number): Corner[] =>
    outline.map((_, i) => {
      const p = outline[(start + i) % outline.length] ?? { x: 0, y: 0 };
      const q = outline[(start + i + 1) % outline.length] ?? { x: 0, y: 0 };
      return { x: q.x - p.x, y: q.y - p.y };
    });
  const [startA, startB] = [from(a), from(b)];
  const [one, other] = [edges(a, startA), edges(b, startB)];
  let x = (a[startA]?.x ?? 0) + (b[startB]?.x ?? 0);
  let y = (a[startA]?.y ?? 0) + (b[startB]?.y ?? 0);
  const corners: Corner[] = [];
  for (let i = 0, j = 0; i < one.length || j < other.length;) {
    corners.push({ x, y });
    const p = one[i];
    const q = other[j];
    const turn = p && q ? p.x * q.y - p.y * q.x : p ? 1 : -1;
    if (p && turn >= 0) {
      x += p.x;
      y += p.y;
      i++;
    }
    if (q && turn <= 0) {
      x += q.x;
      y += q.y;
      j++;
    }
  }
  return tidied(corners);
}
