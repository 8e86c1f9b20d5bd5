import type { NoFit } from './noFit.ts';

/** A no-fit polygon as the search reads it: numbers only. Its inside is on the left of each edge. */
export interface Edges {
  readonly convex: boolean;
  /** Of each edge PER_EDGE numbers: where it begins, x and y; its direction, x and y; one over its length squared, and over its length. */
  readonly numbers: Float64Array;
  /** How often it was asked, and which of the grids is its own; −1 for none. */
  asked: number;
  grid: number;
}

export const PER_EDGE = 6;

export function edgesOf({ outlines, convex }: NoFit): Edges {
  const numbers = outlines.flatMap((outline) =>
    outline.flatMap((p, i) => {
      const q = outline[(i + 1) % outline.length] ?? p;
      const dx = q.x - p.x;
      const dy = q.y - p.y;
      const squared = dx * dx + dy * dy;
      return [p.x, p.y, dx, dy, 1 / squared, 1 / Math.sqrt(squared)];
    }),
  );
  return { convex, numbers: Float64Array.from(numbers), asked: 0, grid: -1 };
}

/**
 * Least distance by which a piece must move to be clear of another: 0 where it is. (x, y) is its origin seen from the
 * other's. Whole numbers: whether it is 0 is decided exactly.
 */
export function depthIn({ numbers }: Edges, x: number, y: number): number {
  let inside = false;
  let least = Infinity;
  for (let at = 0; at < numbers.length; at += PER_EDGE) {
    if (isCrossed(numbers, at, x, y)) inside = !inside;
    const gap = gapTo(numbers, at, x, y);
    if (gap < least) least = gap;
  }
  return inside ? Math.sqrt(least) : 0;
}

/** Whether a level line from the place to the right runs through an edge. Whole numbers, so exact. */
export function isCrossed(numbers: Float64Array, at: number, x: number, y: number): boolean {
  const fromY = numbers[at + 1]!;
  const dy = numbers[at + 3]!;
  if (fromY > y === fromY + dy > y) return false;
  const turn = numbers[at + 2]! * (y - fromY) - dy * (x - numbers[at]!);
  return dy > 0 ? turn > 0 : turn < 0;
}

/** How far a place lies to the left of an edge's line: no more than 0 where it is on its outer side. The sign is exact. */
export function depthUnder(numbers: Float64Array, at: number, x: number, y: number): number {
  const turn = numbers[at + 2]! * (y - numbers[at + 1]!) - numbers[at + 3]! * (x - numbers[at]!);
  return turn * numbers[at + 5]!;
}

/** Squared distance of a place to the edge whose numbers begin there. */
export function gapTo(numbers: Float64Array, at: number, x: number, y: number): number {
  const px = x - numbers[at]!;
  const py = y - numbers[at + 1]!;
  const dx = numbers[at + 2]!;
  const dy = numbers[at + 3]!;
  const share = (px * dx + py * dy) * numbers[at + 4]!;
  const t = share < 0 ? 0 : share > 1 ? 1 : share;
  const gapX = px - t * dx;
  const gapY = py - t * dy;
  return gapX * gapX + gapY * gapY;
}

/**
 * The shortest way out of an overlap: its direction, of length 1, goes into `way`. (x, y) overlaps, as `depthIn` says.
 */
export function wayOut({ numbers }: Edges, x: number, y: number, way: Float64Array): number {
  let least = Infinity;
  let nearest = 0;
  for (let at = 0; at < numbers.length; at += PER_EDGE) {
    const gap = gapTo(numbers, at, x, y);
    if (gap < least) {
      least = gap;
      nearest = at;
    }
  }
  const px = x - numbers[nearest]!;
  const py = y - numbers[nearest + 1]!;
  const dx = numbers[nearest + 2]!;
  const dy = numbers[nearest + 3]!;
  const share = (px * dx + py * dy) * numbers[nearest + 4]!;
  const depth = Math.sqrt(least);
  if (share >= 0 && share <= 1) {
    // Straight out of an edge, by its own direction: the gap may be too small to tell it.
    way[0] = dy * numbers[nearest + 5]!;
    way[1] = -dx * numbers[nearest + 5]!;
  } else {
    const end = share < 0 ? 0 : 1;
    way[0] = (end * dx - px) / depth;
    way[1] = (end * dy - py) / depth;
  }
  return depth;
}
