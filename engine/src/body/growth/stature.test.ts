import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../../testing/evenly.ts';
import { mm } from '../../units/index.ts';
import { growthReferences, growthRows } from './reference.ts';
import { deviationOf, heightAt, lmsAt, statureAt, zOf } from './stature.ts';

const anyReference = fc.constantFrom(...growthReferences);
const age = fc.double({ min: 24, max: 240, noNaN: true });
const deviation = evenly(-4, 4);

describe('the formula', () => {
  test('is M·(1 + L·S·z)^(1/L), written out', () => {
    for (const L of [-0.4, 0.3, 1, 2.2])
      for (const z of [-4, -1.88, 0, 0.5, 4])
        expect(heightAt({ L, M: mm(1278.3), S: 0.045 }, z)).toBeCloseTo(
          1278.3 * (1 + L * 0.045 * z) ** (1 / L),
          9,
        );
  });

  test('goes over into M·exp(S·z) as L goes to 0, from both sides, without a step', () => {
    for (const z of [-4, -1, 0, 1.88, 4]) {
      const limit = 1300 * Math.exp(0.045 * z);
      expect(heightAt({ L: 0, M: mm(1300), S: 0.045 }, z)).toBeCloseTo(limit, 9);
      for (const L of [1e-3, 1e-6, 1e-8, 1e-9, 1e-10, 1e-300])
        for (const sign of [-1, 1]) {
          const height = heightAt({ L: sign * L, M: mm(1300), S: 0.045 }, z) ?? NaN;
          // The first term of the difference, −M·L·S²z²/2, and a little.
          expect(Math.abs(height - limit)).toBeLessThan(1300 * L * (0.045 * z) ** 2 + 1e-6);
          expect(deviationOf({ L: sign * L, M: mm(1300), S: 0.045 }, mm(height))).toBeCloseTo(z, 6);
        }
    }
  });

  test('holds no height where 1 + L·S·z is not above 0', () => {
    expect(heightAt({ L: 2, M: mm(1700), S: 0.05 }, -10)).toBeNull();
    expect(heightAt({ L: 2, M: mm(1700), S: 0.05 }, -10.01)).toBeNull();
    expect(heightAt({ L: 2, M: mm(1700), S: 0.05 }, -9.99)).toBeGreaterThan(0);
  });
});

describe('the reference', () => {
  test.each(growthReferences)(
    '%s: every row holds one number of each kind, ages rising from 24 to 240',
    (reference) => {
      const ages = growthRows[reference].map(({ ageMonths }) => ageMonths);
      expect([ages[0], ages.at(-1)]).toEqual([24, 240]);
      expect(ages.toSorted((a, b) => a - b)).toEqual(ages);
      expect(new Set(ages).size).toBe(ages.length);
      for (const { L, M, S } of growthRows[reference]) {
        expect(L).toBeGreaterThan(-0.5);
        expect(L).toBeLessThan(2.5);
        expect(M).toBeGreaterThan(800);
        expect(M).toBeLessThan(1800);
        expect(S).toBeGreaterThan(0.039);
        expect(S).toBeLessThan(0.051);
      }
    },
  );

  test('between two of its ages L, M and S lie straight between them', () => {
    const [low, high] = growthRows.girls;
    const part = lmsAt('girls', ((low?.ageMonths ?? NaN) * 3 + (high?.ageMonths ?? NaN)) / 4);
    for (const name of ['L', 'M', 'S'] as const)
      expect(part?.[name]).toBeCloseTo((low?.[name] ?? NaN) * 0.75 + (high?.[name] ?? NaN) * 0.25, 9);
  });

  test('tells nothing outside 24 to 240 months, and both ends themselves', () => {
    for (const outside of [-1, 0, 23.999, 240.001, 1000, NaN, Infinity, -Infinity]) {
      expect(statureAt('girls', outside, 0)).toBeNull();
      expect(zOf('girls', outside, mm(1000))).toBeNull();
    }
    expect(statureAt('girls', 24, 0)).toBeCloseTo(849.8, 1);
    expect(statureAt('boys', 240, 0)).toBeCloseTo(1768.5, 1);
  });

  test('nobody of no height has a place', () => {
    for (const none of [0, -1, NaN]) expect(zOf('boys', 60, mm(none))).toBeNull();
  });
});

test('on every line of growth an older child is no shorter, and a month makes her taller until 14', () => {
  fc.assert(
    fc.property(anyReference, age, age, deviation, (reference, one, other, z) => {
      const [young, old] = [Math.min(one, other), Math.max(one, other)];
      const [before, after] = [statureAt(reference, young, z) ?? NaN, statureAt(reference, old, z) ?? NaN];
      expect(after).toBeGreaterThanOrEqual(before - 1e-9);
      if (old < 168 && old - young > 1) expect(after).toBeGreaterThan(before);
    }),
    { numRuns: 3000 },
  );
});

test('at every age more standard deviations are more height', () => {
  fc.assert(
    fc.property(anyReference, age, deviation, deviation, (reference, at, one, other) => {
      fc.pre(Math.abs(one - other) > 1e-6);
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(statureAt(reference, at, high)).toBeGreaterThan(statureAt(reference, at, low) ?? NaN);
    }),
    { numRuns: 2000 },
  );
});

test('a height has the place that it was made from', () => {
  fc.assert(
    fc.property(anyReference, age, deviation, (reference, at, z) => {
      const height = statureAt(reference, at, z);
      expect(height).not.toBeNull();
      expect(zOf(reference, at, height ?? mm(NaN))).toBeCloseTo(z, 9);
    }),
    { numRuns: 3000 },
  );
});
