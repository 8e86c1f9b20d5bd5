import type { Corner, Outline } from './job.ts';

/** Twice the area, positive counter-clockwise (y upwards). */
export function twiceArea(outline: Outline): number {
  let sum = 0;
  let before = outline[outline.length - 1];
  if (!before) return 0;
  for (const corner of outline) {
    sum += before.x * corner.y - corner.x * before.y;
    before = corner;
  }
  return sum;
}

export interface Box {
  readonly left: number;
  readonly low: number;
  readonly right: number;
  readonly high: number;
}

export function boxOf(outline: Outline): Box {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of outline) {
    left = Math.min(left, x);
    low = Math.min(low, y);
    right = Math.max(right, x);
    high = Math.max(high, y);
  }
  return { left, low, right, high };
}

/** Positive where c lies to the left of the way from a to b. Exact for whole numbers below 2²⁵. */
export const side = (a: Corner, b: Corner, c: Corner): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Counter-clockwise, without repeated corners and corners on the way between their neighbours. */
export function tidied(outline: Outline): Corner[] {
  const corners = twiceArea(outline) < 0 ? outline.toReversed() : [...outline];
  for (let i = 0, kept = 0; corners.length > 2 && kept <= corners.length;) {
    const count = corners.length;
    const last = corners[(i + count - 1) % count];
    const corner = corners[i % count];
    const next = corners[(i + 1) % count];
    if (last && corner && next && side(last, corner, next) === 0) {
      corners.splice(i % count, 1);
      kept = 0;
    } else {
      i++;
      kept++;
    }
  }
  return corners;
}

/** Whether a tidied, counter-clockwise outline turns left at every corner. */
export const isConvex = (outline: Outline): boolean =>
  outline.every((corner, i) => {
    const next = outline[(i + 1) % outline.length];
    const after = outline[(i + 2) % outline.length];
    return next !== undefined && after !== undefined && side(corner, next, after) > 0;
  });

/** Convex hull, counter-clockwise (Andrew 1979). */
export function hullOf(outline: Outline): Corner[] {
  const sorted = outline.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const half = (corners: readonly Corner[]): Corner[] => {
    const kept: Corner[] = [];
    for (const corner of corners) {
      for (;;) {
        const b = kept[kept.length - 1];
        const a = kept[kept.length - 2];
        if (!a || !b || side(a, b, corner) > 0) break;
        kept.pop();
      }
      kept.push(corner);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

/** Whether no two edges of an outline cross or touch but at the corners they share. */
export function isSimple(outline: Outline): boolean {
  const edges = outline.map((from, i) => ({ from, to: outline[(i + 1) % outline.length] ?? from }));
  return edges.every((one, i) =>
    edges.every((other, j) => {
      if (j <= i) return true;
      if (j === i + 1) return !foldsBack(one.from, one.to, other.to);
      if (i === 0 && j === edges.length - 1) return !foldsBack(other.from, other.to, one.to);
      return !meet(one.from, one.to, other.from, other.to);
    }),
  );
}

/** Whether the way from b to c runs back over the way from a to b. */
const foldsBack = (a: Corner, b: Corner, c: Corner): boolean =>
  side(a, b, c) === 0 && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0;

function meet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [p, q, r, s] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (p * q < 0 && r * s < 0) return true;
  const within = (u: Corner, v: Corner, w: Corner): boolean =>
    Math.min(u.x, v.x) <= w.x &&
    w.x <= Math.max(u.x, v.x) &&
    Math.min(u.y, v.y) <= w.y &&
    w.y <= Math.max(u.y, v.y);
  return (
    (p === 0 && within(a, b, c)) ||
    (q === 0 && within(a, b, d)) ||
    (r === 0 && within(c, d, a)) ||
    (s === 0 && within(c, d, b))
  );
}

/** Whether a corner lies inside an outline; on its edge counts as either. */
export function isWithin(outline: Outline, { x, y }: Corner): boolean {
  let inside = false;
  let before = outline[outline.length - 1];
  for (const corner of outline) {
    if (before && corner.y > y !== before.y > y) {
      const across = corner.x + ((y - corner.y) * (before.x - corner.x)) / (before.y - corner.y);
      if (x < across) inside = !inside;
    }
    before = corner;
  }
  return inside;
}
