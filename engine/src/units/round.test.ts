import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { inches, mm, yards, type Mm } from './mm.ts';
import { roundTo, stepsIn } from './round.ts';

const marks = fc.constantFrom(inches(1 / 16), inches(1 / 8), inches(1 / 4), mm(1), mm(2), mm(5));
const lengths = evenly(0, 20_000).map(mm);

/** A thousandth of a millimetre is below any mark and above what binary fractions lose. */
const HAIR = 0.001;

describe('rounding to a mark', () => {
  test('up is never less, down never more, nearest never further than half a mark', () => {
    fc.assert(
      fc.property(lengths, marks, (length, mark) => {
        const up = roundTo(length, mark, 'up');
        const down = roundTo(length, mark, 'down');
        expect(up).toBeGreaterThanOrEqual(length - HAIR);
        expect(up).toBeLessThan(length + mark);
        expect(down).toBeLessThanOrEqual(length + HAIR);
        expect(down).toBeGreaterThan(length - mark);
        expect(Math.abs(roundTo(length, mark, 'nearest') - length)).toBeLessThanOrEqual(mark / 2 + HAIR);
      }),
      { numRuns: 2000 },
    );
  });

  test('what lies on a mark stays, in every direction', () => {
    fc.assert(
      fc.property(fc.nat(5000), marks, (count, mark) => {
        const on: Mm = mm(count * mark);
        for (const direction of ['up', 'down', 'nearest'] as const) {
          expect(stepsIn(on, mark, direction)).toBe(count);
          expect(roundTo(roundTo(on, mark, direction), mark, direction)).toBe(roundTo(on, mark, direction));
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('sums of inch fractions that are whole marks stay whole marks', () => {
    const third = inches(0.1);
    expect(stepsIn(mm(third + third + third), inches(0.1), 'up')).toBe(3);
    expect(stepsIn(mm(yards(1) + inches(4.5)), inches(4.5), 'up')).toBe(9);
  });
});
