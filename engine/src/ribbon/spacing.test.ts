import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm, type Mm } from '../units/index.ts';
import { byHand, fitBands, roomNeeded, type SpacingWish } from './spacing.ts';

const HAIR = 1e-6;
const marks = fc.constantFrom(inches(1 / 16), inches(1 / 8), inches(1 / 4), mm(1), mm(2), mm(5));
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(mm);

const wishes = (growth: fc.Arbitrary<number>): fc.Arbitrary<SpacingWish> =>
  fc.record({
    heights: fc.array(between(3, 80), { minLength: 1, maxLength: 12 }),
    growth,
    lowest: between(0, 200),
    highest: between(0, 1200),
    mark: marks,
  });
const anyGrowth = fc.oneof(fc.constant(1), fc.double({ min: 0.4, max: 2.5, noNaN: true }));

const isOnMark = (length: number, mark: Mm): boolean =>
  Math.abs(length / mark - Math.round(length / mark)) < HAIR;
const topsOf = (lower: readonly Mm[], heights: readonly Mm[]): number[] =>
  lower.map((at, i) => at + (heights[i] ?? NaN));

describe('bands between two limits', () => {
  test('keep within them, never overlap, and every lower edge is on a mark', () => {
    fc.assert(
      fc.property(wishes(anyGrowth), (wish) => {
        const { lower, gaps } = fitBands(wish) ?? { lower: [], gaps: [] };
        const tops = topsOf(lower, wish.heights);
        for (const at of lower) expect(isOnMark(at, wish.mark)).toBe(true);
        for (const [i, gap] of gaps.entries()) {
          expect(gap).toBeGreaterThanOrEqual(-HAIR * wish.mark);
          expect(gap).toBeCloseTo((lower[i + 1] ?? NaN) - (tops[i] ?? NaN), 6);
        }
        if (lower.length === 0) return;
        expect(lower[0]).toBeGreaterThanOrEqual(wish.lowest - HAIR * wish.mark);
        expect(tops.at(-1)).toBeLessThanOrEqual(wish.highest + HAIR * wish.mark);
        expect(lower.length).toBe(wish.heights.length);
        expect(gaps.length).toBe(wish.heights.length - 1);
      }),
      { numRuns: 5000 },
    );
  });

  test('equal gaps differ by one mark at most, however wide each band', () => {
    fc.assert(
      fc.property(wishes(fc.constant(1)), (wish) => {
        const { gaps } = fitBands(wish) ?? { gaps: [] };
        if (gaps.length === 0) return;
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(wish.mark + HAIR);
      }),
      { numRuns: 5000 },
    );
  });

  test('the outermost bands reach as near to both limits as a mark allows', () => {
    fc.assert(
      fc.property(wishes(anyGrowth), (wish) => {
        const { lower } = fitBands(wish) ?? { lower: [] };
        if (lower.length === 0) return;
        expect((lower[0] ?? NaN) - wish.lowest).toBeLessThan(wish.mark);
        if (lower.length > 1)
          expect(wish.highest - (topsOf(lower, wish.heights).at(-1) ?? NaN)).toBeLessThan(wish.mark);
      }),
      { numRuns: 2000 },
    );
  });

  test('growing gaps are each 1¼ times the one below, within a mark', () => {
    const growing = fc.record({
      heights: fc
        .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 3, max: 8 }))
        .map(([marksHigh, count]) => Array.from({ length: count }, () => inches(marksHigh / 8))),
      growth: fc.constantFrom(1.25, 1 / 1.25),
      lowest: between(20, 80),
      highest: between(400, 900),
      mark: fc.constant(inches(1 / 8)),
    });
    fc.assert(
      fc.property(growing, (wish) => {
        const { gaps } = fitBands(wish) ?? { gaps: [] };
        const sum = gaps.reduce((all, gap) => all + gap, 0);
        const weights = gaps.map((_, i) => wish.growth ** i);
        const all = weights.reduce((total, weight) => total + weight, 0);
        for (const [i, gap] of gaps.entries())
          expect(Math.abs(gap - (sum * (weights[i] ?? NaN)) / all)).toBeLessThanOrEqual(wish.mark + HAIR);
      }),
      { numRuns: 2000 },
    );
  });

  test('do not fit exactly where their marks do not', () => {
    const fits = (highest: number) =>
      fitBands({
        heights: [inches(1), inches(1), inches(1)],
        growth: 1,
        lowest: inches(2),
        highest: inches(highest),
        mark: inches(1 / 8),
      });
    expect(fits(5)?.gaps).toEqual([0, 0]);
    expect(fits(4.99)).toBeNull();
    expect(fits(5.25)?.gaps.map((gap) => gap / 25.4)).toEqual([
      expect.closeTo(1 / 8, 9),
      expect.closeTo(1 / 8, 9),
    ]);
  });

  test('do not fit exactly where there is less room than they are told to need', () => {
    fc.assert(
      fc.property(wishes(anyGrowth), (wish) => {
        const room = wish.highest - wish.lowest;
        const needed = roomNeeded(wish.heights, wish.lowest, wish.mark);
        fc.pre(Math.abs(room - needed) > HAIR * wish.mark * 2);
        expect(fitBands(wish) === null).toBe(room < needed);
      }),
      { numRuns: 3000 },
    );
  });

  test('none need no room, one takes the lowest place', () => {
    const room = { growth: 1, lowest: mm(51), highest: mm(51 + 16 + 2), mark: mm(2) };
    expect(fitBands({ ...room, heights: [] })).toEqual({ lower: [], gaps: [] });
    expect(fitBands({ ...room, heights: [mm(16)] })).toEqual({ lower: [52], gaps: [] });
  });
});

describe('gaps by hand', () => {
  const wished = fc.array(fc.tuple(between(3, 80), between(0, 150)), { minLength: 1, maxLength: 12 });

  test('are kept to half a mark, on marks, without overlaps', () => {
    fc.assert(
      fc.property(wished, between(0, 200), marks, (bands, lowest, mark) => {
        const heights = bands.map(([height]) => height);
        const wish = bands.slice(1).map(([, gap]) => gap);
        const { lower, gaps } = byHand(heights, wish, lowest, mark);
        for (const at of lower) expect(isOnMark(at, mark)).toBe(true);
        expect(Math.abs((lower[0] ?? NaN) - lowest)).toBeLessThanOrEqual(mark / 2 + HAIR);
        for (const [i, gap] of gaps.entries()) {
          // What is a millionth of a mark above one counts as on it, as everywhere; the rest is binary fractions.
          expect(gap).toBeGreaterThanOrEqual(-HAIR * mark - 1e-9);
          const asked = wish[i] ?? NaN;
          // A gap of less than half a mark may have to open to the next mark, or bands would overlap.
          const most = asked < mark / 2 ? mark : mark / 2;
          expect(Math.abs(gap - asked)).toBeLessThanOrEqual(most + HAIR);
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('on marks are kept exactly', () => {
    const { lower, gaps } = byHand(
      [inches(0.5), inches(1), inches(0.5)],
      [inches(1), inches(2)],
      inches(2),
      inches(1 / 8),
    );
    expect(lower.map((at) => at / 25.4)).toEqual([2, 3.5, 6.5].map((at) => expect.closeTo(at, 9) as number));
    expect(gaps.map((gap) => gap / 25.4)).toEqual([1, 2].map((gap) => expect.closeTo(gap, 9) as number));
  });
});
