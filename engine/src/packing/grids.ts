import { depthUnder, gapTo, isCrossed, PER_EDGE } from './edges.ts';

/**
 * Squares laid over no-fit polygons, so that few edges are looked at for one place. All grids stand one after the other
 * in a few flat arrays, kept small, and one look touches little of them: a search asks some millions of times a second,
 * and waits for memory in much of that time.
 */
export interface Grids {
  /** Of each grid its HEAD, then its edges' numbers. */
  numbers: Float64Array;
  numbersUsed: number;
  /**
   * Of each grid, for each row where the list of edges begins that reach into it; then a word for each square. Its low 16
   * bits are where the list begins of the edges that can be the nearest there, the 15 above its level. If its sign is set,
   * one edge alone is the nearest in all of it and alone may run through it, and the low bits are that edge.
   */
  whole: Int32Array;
  wholeUsed: number;
  /** Lists of edges: how many, then which. Squares with the same edges share one. */
  lists: Uint16Array;
  listsUsed: number;
}

/** Squares to a side: more take longer to make than they save. */
export const SIDE = 20;

/** A square's level: outside, on an edge, or inside, and then all in it is deeper than (level − INSIDE) units. */
export const OUTSIDE = 0;
export const ON = 1;
export const INSIDE = 2;
export const MOST_LEVEL = 0x7fff;
export const MOST_IN_WORD = 0xffff;
export const ONE_EDGE = 0x80000000 | 0;

/**
 * What stands at the head of a grid's numbers: its left and low side, squares to a unit either way, the depth that a
 * level more means, where it begins in `whole` and in `lists`, and 1 if its polygon is convex.
 */
export const HEAD = { left: 0, low: 1, perX: 2, perY: 3, level: 4, whole: 5, lists: 6, convex: 7, size: 8 };

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
  const acrossX = (x - numbers[grid + HEAD.left]!) * numbers[grid + HEAD.perX]!;
  const acrossY = (y - numbers[grid + HEAD.low]!) * numbers[grid + HEAD.perY]!;
  if (!(acrossX >= 0 && acrossX <= SIDE && acrossY >= 0 && acrossY <= SIDE)) return 0;
  const column = acrossX === SIDE ? SIDE - 1 : acrossX | 0;
  const row = acrossY === SIDE ? SIDE - 1 : acrossY | 0;
  const rows = numbers[grid + HEAD.whole]! | 0;
  const word = whole[rows + SIDE + row * SIDE + column]!;
  const level = (word >> 16) & MOST_LEVEL;
  if (level === OUTSIDE) return 0;
  if ((level - INSIDE) * numbers[grid + HEAD.level]! >= enough) return Infinity;
  const edges = grid + HEAD.size;
  if (word < 0) {
    const depth = depthUnder(numbers, edges + PER_EDGE * (word & MOST_IN_WORD), x, y);
    return depth > 0 ? depth : 0;
  }
  const begin = numbers[grid + HEAD.lists]! | 0;
  const near = begin + (word & MOST_IN_WORD);
  if (numbers[grid + HEAD.convex] === 1) return depthInConvex(numbers, edges, lists, near, x, y);
  if (level === ON && !isInside(numbers, edges, lists, begin + whole[rows + row]!, x, y)) return 0;
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
    const depth = depthUnder(numbers, edges + PER_EDGE * lists[i]!, x, y);
    if (depth <= 0) return 0;
    if (depth < least) least = depth;
  }
  return least;
}
