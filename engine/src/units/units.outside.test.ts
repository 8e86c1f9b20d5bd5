// Source: international inch and yard of 1959 (NIST Handbook 44, appendix C); shop steps of 0.1 m and 1/8 yd, common practice.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import {
  add,
  centimetres,
  inches,
  longest,
  metres,
  mm,
  MM_PER_INCH,
  MM_PER_YARD,
  parseLength,
  roundTo,
  yards,
} from './index.ts';

const TENTH_METRE = mm(100);
const EIGHTH_YARD = inches(4.5);

describe('the international inch', () => {
  test('an inch is 25.4 mm, a foot 0.3048 m, a yard 0.9144 m and 36 in', () => {
    expect(inches(1)).toBe(25.4);
    expect(inches(12)).toBeCloseTo(metres(0.3048), 9);
    expect(yards(1)).toBeCloseTo(914.4, 9);
    expect(MM_PER_YARD / MM_PER_INCH).toBe(36);
    for (const text of ['1 yd', '3 ft', '36 in', '0.9144 m', '91.44 cm', '914.4 mm'])
      expect(parseLength(text)).toMatchObject({ ok: true, value: expect.closeTo(914.4, 9) as number });
  });

  test('inches to millimetres and back is where it began, for every sixteenth to 100 yards', () => {
    for (let sixteenths = 0; sixteenths <= 57_600; sixteenths++)
      expect(inches(sixteenths / 16) / MM_PER_INCH).toBeCloseTo(sixteenths / 16, 10);
  });
});

describe('shop lengths', () => {
  test('1.301 m is cut as 1.4 m, 1.3 m as 1.3 m', () => {
    expect(roundTo(metres(1.301), TENTH_METRE, 'up')).toBeCloseTo(1400, 9);
    expect(roundTo(metres(1.3), TENTH_METRE, 'up')).toBeCloseTo(1300, 9);
    expect(roundTo(centimetres(130), TENTH_METRE, 'up')).toBeCloseTo(1300, 9);
    expect(roundTo(add(...Array.from({ length: 13 }, () => metres(0.1))), TENTH_METRE, 'up')).toBeCloseTo(
      1300,
      9,
    );
  });

  test('2.26 yd is cut as 2 3/8 yd', () => {
    expect(roundTo(yards(2.26), EIGHTH_YARD, 'up')).toBeCloseTo(yards(2.375), 9);
  });

  test('the shop never cuts less than was asked, and never a whole step more', () => {
    fc.assert(
      fc.property(evenly(0, 100_000).map(mm), fc.constantFrom(TENTH_METRE, EIGHTH_YARD), (needed, step) => {
        const cut = roundTo(needed, step, 'up');
        expect(longest(cut, mm(needed - 0.001))).toBe(cut);
        expect(cut - needed).toBeLessThan(step);
      }),
      { numRuns: 2000 },
    );
  });
});
