import { depthOf, nearOf, type Layout } from './layout.ts';
import { wayBetween } from './overlaps.ts';

/**
 * Lines on which a piece touches others that it overlaps: of each the direction out, of length 1, and how far along it
 * the line lies from the strip's corner. The piece's origin stands on it or beyond, and it is clear of that neighbour.
 */
export interface Lines {
  readonly outX: Float64Array;
  readonly outY: Float64Array;
  readonly at: Float64Array;
  count: number;
}

/** How many lines are looked at for one piece. */
const MOST_LINES = 24;

export const noLines = (): Lines => ({
  outX: new Float64Array(MOST_LINES),
  outY: new Float64Array(MOST_LINES),
  at: new Float64Array(MOST_LINES),
  count: 0,
});

/** Room for one way out. */
const way = new Float64Array(2);

/** Adds the lines of all that a piece would overlap if it lay there. */
export function addLines(
  layout: Layout,
  piece: number,
  shape: number,
  x: number,
  y: number,
  lines: Lines,
): void {
  const { near, overlaps } = layout;
  const many = nearOf(layout, piece, shape, x, y);
  for (let i = 0; i < many && lines.count < lines.at.length; i++) {
    const other = near[i]!;
    if (depthOf(layout, other, shape, x, y, Infinity) === 0) continue;
    const fromX = x - layout.x[other]!;
    const fromY = y - layout.y[other]!;
    const depth = wayBetween(overlaps, layout.shape[other]!, shape, fromX, fromY, way);
    addLine(lines, way[0]!, way[1]!, way[0]! * x + way[1]! * y + depth);
  }
}

/** Adds a line that is not among them yet. */
export function addLine(lines: Lines, outX: number, outY: number, at: number): void {
  for (let i = 0; i < lines.count; i++)
    if (
      Math.abs(lines.outX[i]! - outX) < 1e-6 &&
      Math.abs(lines.outY[i]! - outY) < 1e-6 &&
      Math.abs(lines.at[i]! - at) < 1
    )
      return;
  lines.outX[lines.count] = outX;
  lines.outY[lines.count] = outY;
  lines.at[lines.count] = at;
  lines.count++;
}
