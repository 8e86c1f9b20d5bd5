import type { Outline } from './job.ts';
import { noFitOf } from './noFit.ts';
import type { Shape } from './shapes.ts';

/**
 * A no-fit polygon as the search reads it: numbers only. For a convex one, of each edge its direction, its line's
 * constant and one over its length; for any other, of each edge its beginning, its direction and one over its
 * length squared.
 */
interface Edges {
  readonly convex: boolean;
  readonly count: number;
  readonly numbers: Float64Array;
  /** Corners, as x, y, x, y …: where two pieces touch at a corner of either. */
  readonly corners: Float64Array;
}

/** How deep pieces of two shapes lie in one another. */
export interface Overlaps {
  readonly shapes: number;
  /** Of each shape, at 4 · shape: left, low, right and high side of its box. */
  readonly bodies: Float64Array;
  readonly outlines: readonly Outline[];
  readonly edges: (Edges | undefined)[];
}

export function overlapsOf(shapes: readonly Shape[]): Overlaps {
  const count = shapes.length;
  return {
    shapes: count,
    bodies: Float64Array.from(
      shapes.flatMap(({ body: { left, low, right, high } }) => [left, low, right, high]),
    ),
    outlines: shapes.map(({ outline }) => outline),
    edges: new Array<Edges | undefined>(count * count).fill(undefined),
  };
}

/** Worked out when a pair meets for the first time; the pair the other way round is its mirror image. */
export function edgesOf(overlaps: Overlaps, a: number, b: number): Edges {
  const { shapes, edges } = overlaps;
  const known = edges[a * shapes + b];
  if (known) return known;
  const { outlines, convex } = noFitOf(overlaps.outlines[a] ?? [], overlaps.outlines[b] ?? []);
  const found = read(outlines, convex);
  edges[a * shapes + b] = found;
  edges[b * shapes + a] =
    a === b
      ? found
      : read(
          outlines.map((outline) => outline.map(({ x, y }) => ({ x: -x, y: -y }))),
          convex,
        );
  return found;
}

function read(outlines: readonly Outline[], convex: boolean): Edges {
  const corners: number[] = [];
  const numbers: number[] = [];
  for (const outline of outlines)
    for (const [i, p] of outline.entries()) {
      const q = outline[(i + 1) % outline.length] ?? p;
      const dx = q.x - p.x;
      const dy = q.y - p.y;
      corners.push(p.x, p.y);
      if (convex) numbers.push(dx, dy, dx * p.y - dy * p.x, 1 / Math.sqrt(dx * dx + dy * dy));
      else numbers.push(p.x, p.y, dx, dy, 1 / (dx * dx + dy * dy));
    }
  return {
    convex,
    count: corners.length / 2,
    numbers: Float64Array.from(numbers),
    corners: Float64Array.from(corners),
  };
}

/**
 * Least distance by which a piece must move to be clear of another: 0 where it is. (x, y) is its origin seen from the
 * other's. Whole numbers: whether it is 0 is decided exactly.
 */
export function depthIn({ convex, count, numbers }: Edges, x: number, y: number): number {
  return convex ? depthInConvex(numbers, count, x, y) : depthInAny(numbers, count, x, y);
}

function depthInConvex(numbers: Float64Array, count: number, x: number, y: number): number {
  let least = Infinity;
  for (let i = 0, at = 0; i < count; i++, at += 4) {
    const inside = numbers[at]! * y - numbers[at + 1]! * x - numbers[at + 2]!;
    if (inside <= 0) return 0;
    const depth = inside * numbers[at + 3]!;
    if (depth < least) least = depth;
  }
  return least;
}

function depthInAny(numbers: Float64Array, count: number, x: number, y: number): number {
  let inside = false;
  for (let i = 0, at = 0; i < count; i++, at += 5) {
    const fromY = numbers[at + 1]!;
    const dy = numbers[at + 3]!;
    if (fromY > y !== fromY + dy > y) {
      // Left of the edge or right of it: whole numbers, so exact.
      const turn = numbers[at + 2]! * (y - fromY) - dy * (x - numbers[at]!);
      if (dy > 0 ? turn > 0 : turn < 0) inside = !inside;
    }
  }
  if (!inside) return 0;
  let least = Infinity;
  for (let i = 0, at = 0; i < count; i++, at += 5) {
    const px = x - numbers[at]!;
    const py = y - numbers[at + 1]!;
    const dx = numbers[at + 2]!;
    const dy = numbers[at + 3]!;
    const share = (px * dx + py * dy) * numbers[at + 4]!;
    const t = share < 0 ? 0 : share > 1 ? 1 : share;
    const gapX = px - t * dx;
    const gapY = py - t * dy;
    const gap = gapX * gapX + gapY * gapY;
    if (gap < least) least = gap;
  }
  return Math.sqrt(least);
}

/**
 * The shortest way out of an overlap: its direction, of length 1, goes into `way`. (x, y) overlaps, as `depthIn` says.
 */
export function wayOut({ convex, count, numbers }: Edges, x: number, y: number, way: Float64Array): number {
  return convex ? wayOutOfConvex(numbers, count, x, y, way) : wayOutOfAny(numbers, count, x, y, way);
}

function wayOutOfConvex(
  numbers: Float64Array,
  count: number,
  x: number,
  y: number,
  way: Float64Array,
): number {
  let least = Infinity;
  let nearest = 0;
  for (let i = 0, at = 0; i < count; i++, at += 4) {
    const depth = (numbers[at]! * y - numbers[at + 1]! * x - numbers[at + 2]!) * numbers[at + 3]!;
    if (depth < least) {
      least = depth;
      nearest = at;
    }
  }
  way[0] = numbers[nearest + 1]! * numbers[nearest + 3]!;
  way[1] = -numbers[nearest]! * numbers[nearest + 3]!;
  return least;
}

function wayOutOfAny(numbers: Float64Array, count: number, x: number, y: number, way: Float64Array): number {
  let least = Infinity;
  for (let i = 0, at = 0; i < count; i++, at += 5) {
    const px = x - numbers[at]!;
    const py = y - numbers[at + 1]!;
    const dx = numbers[at + 2]!;
    const dy = numbers[at + 3]!;
    const share = (px * dx + py * dy) * numbers[at + 4]!;
    const t = share < 0 ? 0 : share > 1 ? 1 : share;
    const gapX = t * dx - px;
    const gapY = t * dy - py;
    const gap = gapX * gapX + gapY * gapY;
    if (gap < least) {
      least = gap;
      if (t === share) {
        // Of an edge its own direction: the gap may be too small to tell it.
        const length = Math.sqrt(numbers[at + 4]!);
        way[0] = dy * length;
        way[1] = -dx * length;
      } else {
        way[0] = gapX;
        way[1] = gapY;
      }
    }
  }
  const depth = Math.sqrt(least);
  const length = Math.sqrt(way[0]! * way[0]! + way[1]! * way[1]!);
  way[0] = way[0]! / length;
  way[1] = way[1]! / length;
  return depth;
}
