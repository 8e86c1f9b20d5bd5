import { cellAt, cellsOf, enter, type Cells } from './cells.ts';
import { depthBetween, type Overlaps } from './overlaps.ts';
import type { Problem } from './problem.ts';
import { startWeights } from './weights.ts';

/**
 * Pieces on the strip as the search moves them, which may overlap meanwhile. Everything lies in flat arrays that are
 * written in place: a search tries a million places a second. Pieces that may be moved come first, fixed ones after.
 */
export interface Layout {
  readonly problem: Problem;
  readonly overlaps: Overlaps;
  /** End of the strip: no piece that may be moved reaches past it. */
  end: number;
  /** Of each piece, its shape and the place of its origin. */
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Of each piece, at 4 · piece: left, low, right and high side of the box around it. What lies beside it needs no closer look. */
  readonly boxes: Int32Array;
  /** Of each pair, at i · pieces + j: how dear its overlap is, and how deep. Symmetric. */
  readonly weight: Float64Array;
  /** What a weight begins at: pieces that are large give way less, so the small ones go first. */
  readonly start: Float64Array;
  readonly depth: Float64Array;
  /** Of each piece, all its depths together. */
  readonly sum: Float64Array;
  readonly cells: Cells;
  /** Room for the neighbours that are looked at. */
  readonly near: Int32Array;
  /** Places tried so far. */
  tried: number;
}

/** Sides of boxes stand no farther out, so that they are whole numbers of 32 bits and differences of theirs too. */
const FAR = 2 ** 30;

/** Overlaps below this are none while the search goes on: a few millionths of the strip's width. */
const HAIR = 2;

export function emptyLayout(problem: Problem, overlaps: Overlaps, farthest: number): Layout {
  const count = problem.pieces.length;
  const start = startWeights(problem);
  return {
    problem,
    overlaps,
    end: farthest,
    shape: new Int32Array(count),
    x: new Float64Array(count),
    y: new Float64Array(count),
    boxes: new Int32Array(4 * count),
    weight: start.slice(),
    start,
    depth: new Float64Array(count * count),
    sum: new Float64Array(count),
    cells: cellsOf(problem, farthest),
    near: new Int32Array(count),
    tried: 0,
  };
}

/** Puts a piece somewhere without looking at what it overlaps. */
export function put(layout: Layout, piece: number, shape: number, x: number, y: number): void {
  layout.shape[piece] = shape;
  layout.x[piece] = x;
  layout.y[piece] = y;
  const { boxes, overlaps } = layout;
  const { bodies } = overlaps;
  const left = x + bodies[4 * shape]!;
  const right = x + bodies[4 * shape + 2]!;
  boxes[4 * piece] = within(left);
  boxes[4 * piece + 1] = within(y + bodies[4 * shape + 1]!);
  boxes[4 * piece + 2] = within(right);
  boxes[4 * piece + 3] = within(y + bodies[4 * shape + 3]!);
  enter(layout.cells, piece, left, right);
}

const within = (side: number): number => (side < -FAR ? -FAR : side > FAR ? FAR : side) | 0;

/** Whether a piece's box reaches into one of that left, low, right and high side: one question, not four that are hard to foresee. */
const reachesInto = (
  boxes: Int32Array,
  piece: number,
  left: number,
  low: number,
  right: number,
  high: number,
): boolean =>
  ((right - 1 - boxes[4 * piece]!) |
    (high - 1 - boxes[4 * piece + 1]!) |
    (boxes[4 * piece + 2]! - 1 - left) |
    (boxes[4 * piece + 3]! - 1 - low)) >=
  0;

/** How deep shape `shape` at (x, y) lies in piece `other`: `enough` or more may be told as Infinity. */
export function depthOf(
  layout: Layout,
  other: number,
  shape: number,
  x: number,
  y: number,
  enough: number,
): number {
  const fromX = x - layout.x[other]!;
  const fromY = y - layout.y[other]!;
  const depth = depthBetween(layout.overlaps, layout.shape[other]!, shape, fromX, fromY, enough);
  return depth <= HAIR ? 0 : depth;
}

/** Weighted overlap of a piece if it lay there; stops counting at `bound`. */
export function lossAt(
  layout: Layout,
  piece: number,
  shape: number,
  x: number,
  y: number,
  bound: number,
): number {
  layout.tried++;
  const { cells, weight, boxes, overlaps } = layout;
  const { bodies } = overlaps;
  const row = piece * layout.shape.length;
  const side = x + bodies[4 * shape]!;
  const left = within(side);
  const low = y + bodies[4 * shape + 1]!;
  const right = within(x + bodies[4 * shape + 2]!);
  const high = y + bodies[4 * shape + 3]!;
  const cell = cellAt(cells, side);
  const members = cells.members[cell]!;
  const many = cells.count[cell]!;
  let loss = 0;
  for (let i = 0; i < many; i++) {
    const other = members[i]!;
    if (!reachesInto(boxes, other, left, low, right, high) || other === piece) continue;
    const dear = weight[row + other]!;
    const depth = depthOf(layout, other, shape, x, y, (bound - loss) / dear);
    if (depth === 0) continue;
    loss += dear * depth;
    if (loss >= bound) return loss;
  }
  return loss;
}

/** Pieces whose boxes overlap that of a piece if it lay there, written into `layout.near`; how many. */
export function nearOf(layout: Layout, piece: number, shape: number, x: number, y: number): number {
  const { cells, boxes, near, overlaps } = layout;
  const { bodies } = overlaps;
  const side = x + bodies[4 * shape]!;
  const left = within(side);
  const low = y + bodies[4 * shape + 1]!;
  const right = within(x + bodies[4 * shape + 2]!);
  const high = y + bodies[4 * shape + 3]!;
  const cell = cellAt(cells, side);
  const members = cells.members[cell]!;
  const many = cells.count[cell]!;
  let kept = 0;
  for (let i = 0; i < many; i++) {
    const other = members[i]!;
    if (reachesInto(boxes, other, left, low, right, high) && other !== piece) near[kept++] = other;
  }
  return kept;
}

/** Looks up anew what a piece overlaps where it lies. */
export function remeasure(layout: Layout, piece: number): void {
  const { depth, sum } = layout;
  const count = layout.shape.length;
  const row = piece * count;
  if (sum[piece]! > 0) {
    for (let other = 0; other < count; other++) {
      const was = depth[row + other]!;
      if (was === 0) continue;
      depth[row + other] = 0;
      depth[other * count + piece] = 0;
      // Sums are made anew, not taken off: rounding would leave a trace that is never 0.
      resum(layout, other);
    }
  }
  const shape = layout.shape[piece]!;
  const x = layout.x[piece]!;
  const y = layout.y[piece]!;
  let total = 0;
  const many = nearOf(layout, piece, shape, x, y);
  for (let i = 0; i < many; i++) {
    const other = layout.near[i]!;
    const deep = depthOf(layout, other, shape, x, y, Infinity);
    if (deep === 0) continue;
    depth[row + other] = deep;
    depth[other * count + piece] = deep;
    sum[other] = sum[other]! + deep;
    total += deep;
  }
  sum[piece] = total;
}

function resum({ depth, sum }: Layout, piece: number): void {
  const count = sum.length;
  let total = 0;
  for (let at = piece * count, end = at + count; at < end; at++) total += depth[at]!;
  sum[piece] = total;
}

/** Looks up what all pieces overlap. */
export function measureAll(layout: Layout): void {
  layout.depth.fill(0);
  layout.sum.fill(0);
  for (let piece = 0; piece < layout.problem.movable; piece++) remeasure(layout, piece);
}

/** All depths together; each pair counted twice, and pairs of a movable and a fixed piece once. */
export function totalDepth({ sum, problem }: Layout): number {
  let total = 0;
  for (let piece = 0; piece < problem.movable; piece++) total += sum[piece]!;
  return total;
}

/** What is kept of a layout to come back to. */
export interface Snapshot {
  readonly end: number;
  readonly total: number;
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export const snapshot = (layout: Layout): Snapshot => ({
  end: layout.end,
  total: totalDepth(layout),
  shape: layout.shape.slice(),
  x: layout.x.slice(),
  y: layout.y.slice(),
});

export function restore(layout: Layout, { end, shape, x, y }: Snapshot): void {
  layout.end = end;
  for (let piece = 0; piece < layout.problem.movable; piece++)
    put(layout, piece, shape[piece]!, x[piece]!, y[piece]!);
  measureAll(layout);
}

/** End of the last piece. */
export function lengthOf({ problem, shape, x }: Layout | (Snapshot & { readonly problem: Problem })): number {
  let end = problem.fixedEnd;
  for (let piece = 0; piece < problem.movable; piece++)
    end = Math.max(end, x[piece]! + problem.right[shape[piece]!]!);
  return end;
}
