import type { Change, SkirtPlan, WrittenBand, WrittenRow } from '@ribbonwright/engine';
import { writtenGaps, writtenRows } from '@ribbonwright/engine';

/** One row of the list, from the hem up, and whether it touches the row below it. */
export interface ListedRow extends WrittenRow {
  readonly touches: boolean;
}

/** Bands as one list of rows. */
export const listed = (bands: readonly WrittenBand[]): ListedRow[] =>
  bands.flatMap((band) =>
    'touching' in band
      ? band.touching.map((row, i) => ({ ...row, touches: i > 0 }))
      : [{ ...band, touches: false }],
  );

/** The list as bands again. */
export function banded(rows: readonly ListedRow[]): WrittenBand[] {
  const bands: WrittenRow[][] = [];
  for (const { touches, ...row } of rows) {
    const last = bands.at(-1);
    if (touches && last) last.push(row);
    else bands.push([row]);
  }
  return bands.flatMap((band): WrittenBand[] => {
    const [only, ...others] = band;
    return only === undefined ? [] : [others.length === 0 ? only : { touching: band }];
  });
}

export const rowsOf = ({ request }: SkirtPlan): ListedRow[] =>
  listed(writtenRows(request.ribbons, request.measure));

/**
 * The changes that make these the rows of the skirt. Where gaps are kept by hand there is one fewer than the
 * bands: the lower ones stay, the uppermost is repeated for what came on.
 */
export function rowChanges(plan: SkirtPlan, rows: readonly ListedRow[]): Change[] {
  const bands = banded(rows);
  const changes: Change[] = [{ path: ['ribbons', 'rows'], value: bands }];
  const { ribbons, measure } = plan.request;
  if (ribbons.spacing !== 'by hand') return changes;
  const gaps = writtenGaps(ribbons, plan.ribbons.rows, measure);
  const between = Math.max(0, bands.length - 1);
  const value = Array.from({ length: between }, (_, i) => gaps[i] ?? gaps.at(-1) ?? '1 in');
  return [...changes, { path: ['ribbons', 'gaps'], value }];
}

export const withRow = (rows: readonly ListedRow[], at: number, row: ListedRow): ListedRow[] =>
  rows.with(at, row);

export const without = (rows: readonly ListedRow[], at: number): ListedRow[] =>
  grounded(rows.toSpliced(at, 1));

/** The same again, above. */
export function repeated(rows: readonly ListedRow[], at: number): ListedRow[] {
  const row = rows[at];
  return row ? rows.toSpliced(at + 1, 0, { ...row, touches: false }) : [...rows];
}

/** Changes places with its neighbour above (1) or below (−1). Which rows touch belongs to the place, not the ribbon. */
export function swapped(rows: readonly ListedRow[], at: number, by: 1 | -1): ListedRow[] {
  const [one, other] = [rows[at], rows[at + by]];
  if (!one || !other) return [...rows];
  return rows.with(at, { ...other, touches: one.touches }).with(at + by, { ...one, touches: other.touches });
}

/** The lowest row has none below it to touch. */
const grounded = (rows: readonly ListedRow[]): ListedRow[] =>
  rows.map((row, i) => (i === 0 ? { ...row, touches: false } : row));
