import { gapTo, gridOf, MIXED, OUTSIDE, type Grid } from './grid.ts';
import type { NoFit } from './noFit.ts';

/**
 * A no-fit polygon as the search reads it: numbers only. For a convex one, of each edge its direction, its line's
 * constant and one over its length; for any other, of each edge its beginning, its direction and one over its
 * length squared.
 */
export interface Edges {
  readonly convex: boolean;
  readonly count: number;
  readonly numbers: Float64Array;
  /** Corners, as x, y, x, y …: where two pieces touch at a corner of either. */
  readonly corners: Float64Array;
  /** Of one that is not convex, once it has been asked often enough: a grid takes as long to make as some hundred looks without. */
  grid: Grid | null;
  asked: number;
}

/** How often a no-fit polygon is asked before a grid is laid over it. */
const OFTEN = 100;

export function edgesOf({ outlines, convex }: NoFit): Edges {
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
    grid: null,
    asked: 0,
  };
}

/**
 * Least distance by which a piece must move to be clear of another: 0 where it is. (x, y) is its origin seen from the
 * other's. Whole numbers: whether it is 0 is decided exactly.
 */
export function depthIn(edges: Edges, x: number, y: number): number {
  const { convex, count, numbers, grid } = edges;
  if (convex) return depthInConvex(numbers, count, x, y);
  if (grid) return depthOnGrid(numbers, grid, x, y);
  if (++edges.asked === OFTEN && count > 0) edges.grid = gridOf(numbers);
  return depthInAny(numbers, x, y);
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

function depthInAny(numbers: Float64Array, x: number, y: number): number {
  let inside = false;
  let least = Infinity;
  for (let at = 0; at < numbers.length; at += 5) {
    if (isCrossed(numbers, at, x, y)) inside = !inside;
    const gap = gapTo(numbers, at, x, y);
    if (gap < least) least = gap;
  }
  return inside ? Math.sqrt(least) : 0;
}

function depthOnGrid(numbers: Float64Array, grid: Grid, x: number, y: number): number {
  const column = Math.min(grid.side - 1, Math.floor((x - grid.left) * grid.perX));
  const row = Math.min(grid.side - 1, Math.floor((y - grid.low) * grid.perY));
  if (column < 0 || row < 0) return 0;
  const square = row * grid.side + column;
  const kind = grid.kind[square]!;
  if (kind === OUTSIDE) return 0;
  if (kind === MIXED && !isInside(numbers, grid, row, x, y)) return 0;
  const { nearEdges } = grid;
  let least = Infinity;
  for (let i = grid.nearFrom[square]!, to = grid.nearFrom[square + 1]!; i < to; i++) {
    const gap = gapTo(numbers, 5 * nearEdges[i]!, x, y);
    if (gap < least) least = gap;
  }
  return Math.sqrt(least);
}

function isInside(numbers: Float64Array, grid: Grid, row: number, x: number, y: number): boolean {
  const { rowEdges } = grid;
  let inside = false;
  for (let i = grid.rowFrom[row]!, to = grid.rowFrom[row + 1]!; i < to; i++)
    if (isCrossed(numbers, 5 * rowEdges[i]!, x, y)) inside = !inside;
  return inside;
}

/** Whether a level line from the place to the right runs through an edge. Whole numbers, so exact. */
function isCrossed(numbers: Float64Array, at: number, x: number, y: number): boolean {
  const fromY = numbers[at + 1]!;
  const dy = numbers[at + 3]!;
  if (fromY > y === fromY + dy > y) return false;
  const turn = numbers[at + 2]! * (y - fromY) - dy * (x - numbers[at]!);
  return dy > 0 ? turn > 0 : turn < 0;
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
  let nearest = 0;
  for (let i = 0, at = 0; i < count; i++, at += 5) {
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
  const perLength = numbers[nearest + 4]!;
  const share = (px * dx + py * dy) * perLength;
  const depth = Math.sqrt(least);
  if (share >= 0 && share <= 1) {
    // Straight out of an edge, by its own direction: the gap may be too small to tell it.
    way[0] = dy * Math.sqrt(perLength);
    way[1] = -dx * Math.sqrt(perLength);
  } else {
    const end = share < 0 ? 0 : 1;
    way[0] = (end * dx - px) / depth;
    way[1] = (end * dy - py) / depth;
  }
  return depth;
}
