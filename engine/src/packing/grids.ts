import { gapTo, isCrossed, PER_EDGE } from './edges.ts';

/**
 * Squares laid over no-fit polygons, so that few edges are looked at for one place. All grids stand one after the other
 * in a few flat arrays, and one look touches little of them: a search asks some millions of times a second.
 */
export interface Grids {
  /** Of each grid its left and low side, and squares to a unit either way; then its edges' numbers. */
  numbers: Float64Array;
  numbersUsed: number;
  /**
   * Of each grid where its numbers begin and whether its polygon is convex; of each row where the list of edges begins
   * that reach into it; of each square OUTSIDE, ON or how deep everything in it is at least, and where the list of edges
   * begins that can be the nearest there.
   */
  whole: Int32Array;
  wholeUsed: number;
  /** Lists of edges: how many, then which. */
  lists: Uint16Array;
  listsUsed: number;
}

/** Squares to a side: more take longer to make than they save. */
export const SIDE = 20;
/** What a square is that is not all inside: outside, or on an edge. */
export const OUTSIDE = -2;
export const ON = -1;

export const ROWS = 2;
export const SQUARES = ROWS + SIDE;
export const PER_GRID = SQUARES + 2 * SIDE * SIDE;
export const CORNER = 4;

export const noGrids = (): Grids => ({
  numbers: new Float64Array(0),
  numbersUsed: 0,
  whole: new Int32Array(0),
  wholeUsed: 0,
  lists: new Uint16Array(0),
  listsUsed: 0,
});

/** As `depthIn`, by the grid that begins there. `enough` or more may be told as Infinity, if that is seen at once. */
export function depthOnGrid(grids: Grids, grid: number, x: number, y: number, enough: number): number {
  const { numbers, whole, lists } = grids;
  const corner = whole[grid]!;
  const acrossX = (x - numbers[corner]!) * numbers[corner + 2]!;
  const acrossY = (y - numbers[corner + 1]!) * numbers[corner + 3]!;
  if (!(acrossX >= 0 && acrossX <= SIDE && acrossY >= 0 && acrossY <= SIDE)) return 0;
  const column = acrossX === SIDE ? SIDE - 1 : acrossX | 0;
  const row = acrossY === SIDE ? SIDE - 1 : acrossY | 0;
  const square = grid + SQUARES + 2 * (row * SIDE + column);
  const deep = whole[square]!;
  if (deep === OUTSIDE) return 0;
  if (deep >= enough) return Infinity;
  const edges = corner + CORNER;
  const near = whole[square + 1]!;
  if (whole[grid + 1] === 1) return depthInConvex(numbers, edges, lists, near, x, y);
  if (deep === ON && !isInside(numbers, edges, lists, whole[grid + ROWS + row]!, x, y)) return 0;
  let least = Infinity;
  for (let i = near + 1, end = i + lists[near]!; i < end; i++) {
    const gap = gapTo(numbers, edges + PER_EDGE * lists[i]!, x, y);
    if (gap < least) least = gap;
  }
  return Math.sqrt(least);
}

function isInside(
  numbers: Float64Array,
  edges: number,
  lists: Uint16Array,
  list: number,
  x: number,
  y: number,
): boolean {
  let inside = false;
  for (let i = list + 1, end = i + lists[list]!; i < end; i++)
    if (isCrossed(numbers, edges + PER_EDGE * lists[i]!, x, y)) inside = !inside;
  return inside;
}

/** Outside a convex polygon a place is on the outer side of one of its nearest edges; inside, lines are as near as edges. */
function depthInConvex(
  numbers: Float64Array,
  edges: number,
  lists: Uint16Array,
  list: number,
  x: number,
  y: number,
): number {
  let least = Infinity;
  for (let i = list + 1, end = i + lists[list]!; i < end; i++) {
    const at = edges + PER_EDGE * lists[i]!;
    const turn = numbers[at + 2]! * (y - numbers[at + 1]!) - numbers[at + 3]! * (x - numbers[at]!);
    if (turn <= 0) return 0;
    const depth = turn * numbers[at + 5]!;
    if (depth < least) least = depth;
  }
  return least;
}
