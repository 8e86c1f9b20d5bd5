import type { Problem } from './problem.ts';

/**
 * Which pieces may lie near which place. The strip is parted along its length; a piece is a member of every cell in
 * which something that overlaps it may have its left side, so that for one place one cell is looked at.
 */
export interface Cells {
  readonly size: number;
  /** No piece that may be moved is wider. */
  readonly reach: number;
  readonly count: Int32Array;
  readonly members: Int32Array[];
  /** Of each piece, the cells that it is a member of; none where last is before first. */
  readonly first: Int32Array;
  readonly last: Int32Array;
}

/** Cells to the widest piece: with more of them a piece is a member of more than it saves. */
const TO_THE_WIDEST = 4;
/** What lies past the last cell is a member of that. */
const MOST_CELLS = 1e5;

const NOBODY = new Int32Array(0);

export function cellsOf({ shapes, pieces }: Problem, farthest: number): Cells {
  const widths = shapes.filter(({ item }) => item >= 0).map(({ body }) => body.right - body.left);
  const reach = Math.max(1, ...widths);
  const size = reach / TO_THE_WIDEST;
  const cells = Math.min(MOST_CELLS, Math.ceil((farthest + reach) / size) + 1);
  return {
    size,
    reach,
    count: new Int32Array(cells),
    members: new Array<Int32Array>(cells).fill(NOBODY),
    first: new Int32Array(pieces.length),
    last: new Int32Array(pieces.length).fill(-1),
  };
}

/** The cell of a place along the strip. */
export function cellAt({ size, count }: Cells, left: number): number {
  const cell = Math.floor(left / size);
  return cell < 0 ? 0 : cell >= count.length ? count.length - 1 : cell;
}

/** Makes a piece a member of the cells that belong to where it lies, and no longer of those it was one of. */
export function enter(cells: Cells, piece: number, left: number, right: number): void {
  leave(cells, piece);
  const from = cellAt(cells, left - cells.reach);
  const to = cellAt(cells, right);
  for (let cell = from; cell <= to; cell++) add(cells, cell, piece);
  cells.first[piece] = from;
  cells.last[piece] = to;
}

function leave({ first, last, count, members }: Cells, piece: number): void {
  for (let cell = first[piece]!; cell <= last[piece]!; cell++) {
    const own = members[cell]!;
    own[own.indexOf(piece)] = own[--count[cell]!]!;
  }
}

function add({ count, members }: Cells, cell: number, piece: number): void {
  const many = count[cell]!;
  let own = members[cell]!;
  if (many === own.length) {
    own = new Int32Array(Math.max(8, 2 * many));
    own.set(members[cell]!);
    members[cell] = own;
  }
  own[many] = piece;
  count[cell] = many + 1;
}
