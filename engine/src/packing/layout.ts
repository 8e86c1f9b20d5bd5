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
  /** Of each piece, the box around it: what lies beside it needs no closer look. */
  readonly boxLeft: Float64Array;
  readonly boxLow: Float64Array;
  readonly boxRight: Float64Array;
  readonly boxHigh: Float64Array;
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

/**
 * Movable pieces by where their left side is, in slots as wide as the widest of them: only those of the same slot and
 * the two beside it can overlap.
 */
interface Cells {
  readonly size: number;
  readonly room: number;
  readonly count: Int32Array;
  readonly members: Int32Array;
  readonly cellOf: Int32Array;
  readonly slotOf: Int32Array;
}

/** Room in all cells together; pieces past the last of them share it. */
const MOST_SLOTS = 1e7;

/** Overlaps below this are none while the search goes on: a few millionths of the strip's width. */
const HAIR = 2;

export function emptyLayout(problem: Problem, overlaps: Overlaps, farthest: number): Layout {
  const { pieces, movable } = problem;
  const count = pieces.length;
  const widths = problem.shapes.filter(({ item }) => item >= 0).map(({ body }) => body.right - body.left);
  const size = Math.max(1, ...widths);
  const room = Math.max(1, movable);
  const cells = Math.min(Math.ceil(farthest / size) + 4, Math.max(8, Math.floor(MOST_SLOTS / room)));
  const start = startWeights(problem);
  return {
    problem,
    overlaps,
    end: farthest,
    shape: new Int32Array(count),
    x: new Float64Array(count),
    y: new Float64Array(count),
    boxLeft: new Float64Array(count),
    boxLow: new Float64Array(count),
    boxRight: new Float64Array(count),
    boxHigh: new Float64Array(count),
    weight: start.slice(),
    start,
    depth: new Float64Array(count * count),
    sum: new Float64Array(count),
    cells: {
      size,
      room,
      count: new Int32Array(cells),
      members: new Int32Array(cells * room),
      cellOf: new Int32Array(count).fill(-1),
      slotOf: new Int32Array(count),
    },
    near: new Int32Array(count),
    tried: 0,
  };
}

function cellAt({ cells, problem }: Layout, shape: number, x: number): number {
  const cell = Math.floor((x + problem.left[shape]!) / cells.size) + 1;
  return cell < 1 ? 1 : cell > cells.count.length - 2 ? cells.count.length - 2 : cell;
}

function takeOut({ cells }: Layout, piece: number): void {
  const cell = cells.cellOf[piece]!;
  if (cell < 0) return;
  const last = cells.count[cell]! - 1;
  const moved = cells.members[cell * cells.room + last]!;
  const slot = cells.slotOf[piece]!;
  cells.members[cell * cells.room + slot] = moved;
  cells.slotOf[moved] = slot;
  cells.count[cell] = last;
  cells.cellOf[piece] = -1;
}

/** Puts a piece somewhere without looking at what it overlaps. */
export function put(layout: Layout, piece: number, shape: number, x: number, y: number): void {
  layout.shape[piece] = shape;
  layout.x[piece] = x;
  layout.y[piece] = y;
  const { bodies } = layout.overlaps;
  layout.boxLeft[piece] = x + bodies[4 * shape]!;
  layout.boxLow[piece] = y + bodies[4 * shape + 1]!;
  layout.boxRight[piece] = x + bodies[4 * shape + 2]!;
  layout.boxHigh[piece] = y + bodies[4 * shape + 3]!;
  if (piece >= layout.problem.movable) return;
  takeOut(layout, piece);
  const { cells } = layout;
  const cell = cellAt(layout, shape, x);
  const slot = cells.count[cell]!;
  cells.members[cell * cells.room + slot] = piece;
  cells.slotOf[piece] = slot;
  cells.cellOf[piece] = cell;
  cells.count[cell] = slot + 1;
}

/** How deep shape `shape` at (x, y) lies in piece `other`; their boxes overlap. */
export function depthOf(layout: Layout, other: number, shape: number, x: number, y: number): number {
  const [atX, atY] = [layout.x[other]!, layout.y[other]!];
  const depth = depthBetween(layout.overlaps, layout.shape[other]!, shape, x - atX, y - atY);
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
  const { cells, weight, problem, boxLeft, boxLow, boxRight, boxHigh } = layout;
  const { bodies } = layout.overlaps;
  const count = boxLeft.length;
  const row = piece * count;
  const left = x + bodies[4 * shape]!;
  const low = y + bodies[4 * shape + 1]!;
  const right = x + bodies[4 * shape + 2]!;
  const high = y + bodies[4 * shape + 3]!;
  const { members, room } = cells;
  const cell = cellAt(layout, shape, x);
  let loss = 0;
  for (let c = cell - 1; c <= cell + 1; c++) {
    const from = c * room;
    const to = from + cells.count[c]!;
    for (let k = from; k < to; k++) {
      const other = members[k]!;
      if (boxLeft[other]! >= right || boxRight[other]! <= left) continue;
      if (boxLow[other]! >= high || boxHigh[other]! <= low || other === piece) continue;
      const depth = depthOf(layout, other, shape, x, y);
      if (depth === 0) continue;
      loss += weight[row + other]! * depth;
      if (loss >= bound) return loss;
    }
  }
  for (let other = problem.movable; other < count; other++) {
    if (boxLeft[other]! >= right || boxRight[other]! <= left) continue;
    if (boxLow[other]! >= high || boxHigh[other]! <= low) continue;
    const depth = depthOf(layout, other, shape, x, y);
    if (depth === 0) continue;
    loss += weight[row + other]! * depth;
    if (loss >= bound) return loss;
  }
  return loss;
}

/** Pieces whose boxes overlap that of a piece if it lay there, written into `layout.near`; how many. */
export function nearOf(layout: Layout, piece: number, shape: number, x: number, y: number): number {
  const { cells, problem, boxLeft, boxLow, boxRight, boxHigh, near } = layout;
  const { bodies } = layout.overlaps;
  const left = x + bodies[4 * shape]!;
  const low = y + bodies[4 * shape + 1]!;
  const right = x + bodies[4 * shape + 2]!;
  const high = y + bodies[4 * shape + 3]!;
  let count = 0;
  const cell = cellAt(layout, shape, x);
  for (let c = cell - 1; c <= cell + 1; c++)
    for (let k = 0; k < cells.count[c]!; k++) near[count++] = cells.members[c * cells.room + k]!;
  for (let other = problem.movable; other < boxLeft.length; other++) near[count++] = other;
  let kept = 0;
  for (let i = 0; i < count; i++) {
    const other = near[i]!;
    if (boxLeft[other]! >= right || boxRight[other]! <= left) continue;
    if (boxLow[other]! >= high || boxHigh[other]! <= low || other === piece) continue;
    near[kept++] = other;
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
    const deep = depthOf(layout, other, shape, x, y);
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
