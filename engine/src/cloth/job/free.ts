import { boundsOf, flatten, type Path } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';

/** An upright rectangle of cloth that nothing is cut from. */
export interface Free {
  readonly x: Mm;
  readonly y: Mm;
  readonly along: Mm;
  readonly across: Mm;
}

/** Cloth that is shorter or narrower than this is a rag. Common practice, no source. */
export const RAG = 100;
const GRID = 5;
/** Of a square: what binary fractions lose is no square more. */
const HAIR = 1e-9;
/** On a long table squares are larger, so that there are never more than these. */
const MOST_CELLS = 400_000;

interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The largest rectangle that is free of all outlines, in whole squares of 5 mm (larger ones on a long table): never
 * larger than the truth; at the edges of the room exact. Null where it is a rag.
 */
export function freeRectangle(room: Room, outlines: readonly Path[]): Free | null {
  const { left, right, top, bottom } = room;
  if (right - left < RAG || bottom - top < RAG) return null;
  const rows = Math.ceil((bottom - top) / GRID - HAIR);
  const step = Math.max(GRID, ((right - left) * rows) / MOST_CELLS);
  const columns = Math.ceil((right - left) / step - HAIR);
  const taken = new Uint8Array(rows * columns);
  const grid = { left, top, step, rows, columns, taken };
  for (const outline of outlines) take(grid, outline);
  const best = largest(grid);
  if (!best) return null;
  const [x, y] = [left + best.column * step, top + best.row * GRID];
  // The last squares may reach beyond the edges.
  const along = Math.min(best.columns * step, right - x);
  const across = Math.min(best.rows * GRID, bottom - y);
  return along < RAG || across < RAG ? null : { x: mm(x), y: mm(y), along: mm(along), across: mm(across) };
}

interface Grid {
  readonly left: number;
  readonly top: number;
  readonly step: number;
  readonly rows: number;
  readonly columns: number;
  readonly taken: Uint8Array;
}

/** Marks every square that an outline reaches into: those its edges pass, and those whose column's middle lies inside. */
function take(grid: Grid, outline: Path): void {
  const { left, top, step, rows, columns, taken } = grid;
  const corners = flatten(outline);
  const bounds = boundsOf(outline);
  const first = Math.max(0, Math.floor((bounds.left - left) / step + HAIR));
  const last = Math.min(columns - 1, Math.ceil((bounds.right - left) / step - HAIR) - 1);
  const mark = (column: number, from: number, to: number): void => {
    const low = Math.max(0, Math.floor((from - top) / GRID + HAIR));
    const high = Math.min(rows - 1, Math.ceil((to - top) / GRID - HAIR) - 1);
    for (let row = low; row <= high; row++) taken[row * columns + column] = 1;
  };
  for (let column = first; column <= last; column++) {
    const from = left + column * step;
    const to = from + step;
    const crossings: number[] = [];
    let a = corners.at(-1);
    for (const b of corners) {
      if (a && Math.max(a.x, b.x) > from + HAIR && Math.min(a.x, b.x) < to - HAIR) {
        const at = (x: number, p: typeof b, q: typeof b): number =>
          p.x === q.x
            ? p.y
            : p.y +
              ((q.y - p.y) * (Math.min(Math.max(x, Math.min(p.x, q.x)), Math.max(p.x, q.x)) - p.x)) /
                (q.x - p.x);
        const ends = a.x === b.x ? [a.y, b.y] : [at(from, a, b), at(to, a, b)];
        mark(column, Math.min(...ends), Math.max(...ends));
      }
      const middle = from + step / 2;
      if (a && a.x > middle !== b.x > middle)
        crossings.push(a.y + ((b.y - a.y) * (middle - a.x)) / (b.x - a.x));
      a = b;
    }
    crossings.sort((p, q) => p - q);
    for (let i = 0; i + 1 < crossings.length; i += 2) mark(column, crossings[i] ?? 0, crossings[i + 1] ?? 0);
  }
}

interface Found {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** The largest free rectangle, by the columns of free squares that stand on each row. */
function largest({ rows, columns, step, taken }: Grid): Found | null {
  const height = new Int32Array(columns + 1);
  const open = new Int32Array(columns + 1);
  let best: Found | null = null;
  let most = 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++)
      height[column] = taken[row * columns + column] === 1 ? 0 : (height[column] ?? 0) + 1;
    let count = 0;
    for (let column = 0; column <= columns; column++) {
      const here = height[column] ?? 0;
      while (count > 0 && (height[open[count - 1] ?? 0] ?? 0) >= here) {
        const high = height[open[--count] ?? 0] ?? 0;
        const from = count === 0 ? 0 : (open[count - 1] ?? 0) + 1;
        const area = high * GRID * (column - from) * step;
        if (area <= most || high * GRID < RAG || (column - from) * step < RAG) continue;
        most = area;
        best = { column: from, row: row - high + 1, columns: column - from, rows: high };
      }
      open[count++] = column;
    }
  }
  return best;
}
