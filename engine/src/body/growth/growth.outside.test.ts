// Source: CDC/NCHS, CDC Growth Charts, United States (2000), stature for age, 24 to 240 months: L, M, S and percentiles P3 to P97.
import { describe, expect, test } from 'vitest';
import { numberIn, readCsv, sharedData, type CsvRow } from '../../testing/csv.ts';
import { mm } from '../../units/index.ts';
import { growthReferences, growthRows, type GrowthReference } from './reference.ts';
import { statureAt, zOf } from './stature.ts';

const file = sharedData('cdc-growth/statage.csv');
/** Standard normal deviates of the published percentiles. */
const percentiles = {
  P3: -1.880794,
  P5: -1.644854,
  P10: -1.281552,
  P25: -0.67449,
  P50: 0,
  P75: 0.67449,
  P90: 1.281552,
  P95: 1.644854,
  P97: 1.880794,
} as const;
const sexes: Readonly<Record<GrowthReference, number>> = { boys: 1, girls: 2 };

describe.skipIf(file === null)('the published growth charts', () => {
  const rows = readCsv(file ?? '');
  const of = (reference: GrowthReference) => rows.filter((row) => numberIn(row, 'Sex') === sexes[reference]);
  const value = (row: CsvRow, name: string) => numberIn(row, name) ?? NaN;

  test.each(growthReferences)('%s: every percentile at every published age, to 0.1 cm', (reference) => {
    const published = of(reference);
    expect(published).toHaveLength(218);
    const misses = published.flatMap((row) =>
      Object.entries(percentiles).map(([name, z]) =>
        Math.abs((statureAt(reference, value(row, 'Agemos'), z) ?? NaN) / 10 - value(row, name)),
      ),
    );
    const worst = Math.max(...misses);
    console.info(
      `${reference}: ${String(misses.length)} published heights, worst miss ${worst.toFixed(3)} cm`,
    );
    expect(misses).toHaveLength(218 * 9);
    expect(worst).toBeLessThan(0.03);
  });

  test.each(growthReferences)('%s: each row that is kept is a published one, rounded', (reference) => {
    const published = new Map(of(reference).map((row) => [value(row, 'Agemos'), row]));
    for (const { ageMonths, L, M, S } of growthRows[reference]) {
      const row = published.get(ageMonths) ?? {};
      expect(Math.abs(L - value(row, 'L'))).toBeLessThanOrEqual(0.000501);
      expect(Math.abs(M / 10 - value(row, 'M'))).toBeLessThanOrEqual(0.00501);
      expect(Math.abs(S - value(row, 'S'))).toBeLessThanOrEqual(0.00000501);
    }
  });

  test.each(growthReferences)(
    '%s: growth in a year, at P3, P50 and P97, within half a millimetre',
    (reference) => {
      const published = of(reference);
      for (const [at, row] of published.entries()) {
        const later = published[at + 12];
        if (!later) continue;
        for (const name of ['P3', 'P50', 'P97'] as const) {
          const on = (each: CsvRow) =>
            (statureAt(reference, value(each, 'Agemos'), percentiles[name]) ?? NaN) / 10;
          const grown = value(later, name) - value(row, name);
          expect(Math.abs(on(later) - on(row) - grown)).toBeLessThan(0.05);
        }
      }
    },
  );

  test.each(growthReferences)('%s: a published height has its percentile’s place', (reference) => {
    for (const row of of(reference))
      for (const [name, z] of Object.entries(percentiles)) {
        const found = zOf(reference, value(row, 'Agemos'), mm(value(row, name) * 10));
        expect(Math.abs((found ?? NaN) - z)).toBeLessThan(0.01);
      }
  });
});

test.each([
  [24, 84.98],
  [60.5, 107.96],
  [96.5, 127.83],
  [120.5, 138.21],
  [168.5, 160.48],
  [240, 163.34],
])('the middle girl of %d months is %d cm, to 0.03 cm', (age, height) => {
  expect(Math.abs((statureAt('girls', age, 0) ?? NaN) / 10 - height)).toBeLessThan(0.03);
});
