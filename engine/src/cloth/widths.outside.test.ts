// Source: the Extension Service's fabric width conversion table, usually credited to Rutgers Cooperative Extension (attribution from
// memory); the numbers agree on two pages in 95 of 96 cells. Yards of cloth, by its width in inches (middles of the table's ranges).
import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../testing/requests.ts';

const widths = [35.5, 39, 41.5, 44.5, 50, 53, 59, 66];
/** Column that the others are compared with: 44–45 in. */
const USUAL = 3;
const table = [
  [1.75, 1.5, 1.5, 1.375, 1.25, 1.125, 1, 0.875],
  [2, 1.75, 1.75, 1.625, 1.5, 1.375, 1.25, 1.125],
  [2.25, 2, 2, 1.75, 1.625, 1.5, 1.375, 1.25],
  [2.5, 2.25, 2.25, 2.125, 1.75, 1.75, 1.625, 1.5],
  [2.875, 2.5, 2.5, 2.25, 2, 1.875, 1.75, 1.625],
  [3.125, 2.75, 2.75, 2.5, 2.25, 2, 1.875, 1.75],
  [3.375, 3, 2.875, 2.75, 2.375, 2.25, 2, 1.875],
  [3.75, 3.25, 3.125, 2.875, 2.625, 2.375, 2.25, 2.125],
  [4.25, 3.5, 3.375, 3.125, 2.75, 2.625, 2.375, 2.25],
  [4.5, 3.75, 3.625, 3.375, 3, 2.75, 2.625, 2.5],
  [4.75, 4, 3.875, 3.625, 3.25, 2.875, 2.75, 2.625],
  [5, 4.25, 4.125, 3.875, 3.375, 3.125, 2.875, 2.75],
];
const ratios = (row: readonly number[]) => row.map((yards) => yards / (row[USUAL] ?? NaN));
const column = (rows: readonly (readonly number[])[], at: number) =>
  rows.map((row) => row[at] ?? NaN).filter((value) => !Number.isNaN(value));
const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;

const bodies = [
  [24, 34, 26],
  [29, 36, 31],
  [36, 44, 34],
  [44, 52, 30],
  [50, 56, 36],
  [22, 23, 16],
] as const;
const cuts = [
  { kind: 'flared' },
  { kind: 'flared', fullness: 1.2 },
  { kind: 'gathered' },
  { kind: 'gathered', fullness: 2 },
  { kind: 'gathered', wholeWidths: false },
];

/** Yards of the lay that takes least; NaN where none fits. */
function yards(raw: RawRequest, width: number): number {
  const { lays } = planOf({ ...raw, cloth: { width: `${width} in` } }).cloth;
  const least = Math.min(...lays.filter(({ fits }) => fits).map(({ clothBefore }) => clothBefore.value));
  return Number.isFinite(least) ? least / 914.4 : NaN;
}
const ours = bodies.flatMap(([waist, hip, length]) =>
  cuts.map((cut) => {
    const body = { waist: `${waist} in`, hip: `${hip} in`, waistToHem: `${length} in` };
    return ratios(widths.map((width) => yards({ body, cut }, width)));
  }),
);

describe('the width conversion table', () => {
  test('rows grow downwards and never grow with the width', () => {
    for (const row of table) expect(row.toSorted((a, b) => b - a)).toEqual(row);
    for (const at of widths.keys()) {
      const down = column(table, at);
      expect(down.toSorted((a, b) => a - b)).toEqual(down);
      expect(new Set(down).size).toBe(down.length);
    }
  });

  test('is one of nearly constant area: every cell within 10 % of its row', () => {
    for (const row of table)
      for (const [at, share] of ratios(row).entries()) {
        const area = (share * (widths[at] ?? NaN)) / (widths[USUAL] ?? NaN);
        expect(area).toBeGreaterThan(0.9);
        expect(area).toBeLessThan(1.1);
      }
  });
});

// The table is for garments of many pieces, whose cloth runs with its width. A skirt of two large panels or of whole widths does
// not: its length stays until the next panel fits abreast, and then drops by as much as half. So single skirts are held to a band from
// 0.6 to 1.7 of the table (a halving against its nearest row, and a standstill over its whole span: 1 / 0.64), their mean to 30 %.
describe('skirts re-planned on the table’s widths', () => {
  test('all but a few of them fit on all widths', () => {
    const all = ours.flat();
    expect(all.filter(Number.isFinite).length / all.length).toBeGreaterThan(0.8);
  });

  test('each stays in a band about the table', () => {
    for (const row of ours)
      for (const [at, share] of row.entries()) {
        if (!Number.isFinite(share)) continue;
        const told = column(table.map(ratios), at);
        expect(share).toBeGreaterThan(0.6 * Math.min(...told));
        expect(share).toBeLessThan(1.7 * Math.max(...told));
      }
  });

  test('on the whole they save cloth with its width as the table does', () => {
    const rows = widths.map((width, at) => {
      const told = mean(column(table.map(ratios), at));
      const found = mean(column(ours, at));
      return { width, told, found };
    });
    console.table(rows);
    for (const { told, found } of rows) {
      expect(found / told).toBeGreaterThan(0.7);
      expect(found / told).toBeLessThan(1.3);
    }
  });
});
