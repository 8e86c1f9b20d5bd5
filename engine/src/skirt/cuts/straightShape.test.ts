import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  contains,
  distanceTo,
  endOf,
  flatten,
  isClosed,
  lengthOf,
  point,
  selfIntersects,
  signedAreaOf,
  startOf,
  type Path,
} from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { straightBy, type Marked } from '../../testing/shapes.ts';
import { straightSideExcess } from './straightShape.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(mm);

/** Panels as makers draft them; hem and casing never deeper than the skirt is long. */
const measures: fc.Arbitrary<Marked> = fc
  .tuple(
    between(90, 900),
    between(0, 500),
    between(250, 1400),
    between(5, 90),
    between(5, 120),
    between(0, 100),
    between(3, 30),
  )
  .map(([halfTop, flare, length, topAllowance, hemAllowance, margin, sideSeam]) => ({
    halfTop,
    halfHem: mm(halfTop + flare),
    length,
    topAllowance,
    hemAllowance,
    margin,
    sideSeam,
  }));

const every = (check: (drawn: Marked, shape: ReturnType<typeof straightBy>) => void) => () => {
  fc.assert(
    fc.property(measures, (drawn) => {
      check(drawn, straightBy(drawn));
    }),
    { numRuns: 2000 },
  );
};
const finishedOf = (shape: ReturnType<typeof straightBy>): Path =>
  shape.edges.flatMap(({ finished }) => finished);
const edgeOf = (shape: ReturnType<typeof straightBy>, name: string): Path =>
  shape.edges.find((edge) => edge.name === name)?.finished ?? [];

describe('a panel with straight edges', () => {
  test(
    'its sides are equal, so front and back join',
    every((_, shape) => {
      expect(lengthOf(edgeOf(shape, 'right'))).toBeCloseTo(lengthOf(edgeOf(shape, 'left')), 6);
    }),
  );

  test(
    'its seam lies the allowance inside the raw side, measured square to it',
    every(({ sideSeam }, shape) => {
      for (const name of ['right', 'left'])
        for (const segment of edgeOf(shape, name)) {
          // A corner of the raw outline may be nearer than its side where the fold turns: measured from the middle.
          const middle = point(
            (startOf(segment).x + endOf(segment).x) / 2,
            (startOf(segment).y + endOf(segment).y) / 2,
          );
          expect(distanceTo(shape.trimmed, middle)).toBeCloseTo(sideSeam, 6);
        }
    }),
  );

  test(
    'the side is longer than the centre by √(L² + f²) − L',
    every(({ halfTop, halfHem, length }, shape) => {
      const flare = mm(halfHem - halfTop);
      const side = lengthOf(edgeOf(shape, 'right'));
      expect(side - length).toBeCloseTo(straightSideExcess(length, flare), 6);
      expect(straightSideExcess(length, flare)).toBeCloseTo(Math.sqrt(length ** 2 + flare ** 2) - length, 9);
    }),
  );

  test(
    'turned over their folds, casing and hem land on the sides of the skirt',
    every(({ length, topAllowance, hemAllowance, halfHem, halfTop }, shape) => {
      const rawHem = length + hemAllowance;
      for (const [raw, fold] of [
        [-topAllowance, 0],
        [rawHem, length],
      ] as const)
        for (const depth of [0, 0.3, 0.7, 1]) {
          const y = fold + (raw - fold) * depth;
          const onTheSkirt = 2 * fold - y;
          const half = halfTop + ((halfHem - halfTop) * onTheSkirt) / length;
          for (const x of [half, -half]) expect(distanceTo(shape.trimmed, point(x, y))).toBeLessThan(1e-6);
        }
    }),
  );

  test(
    'its cloth is body, casing, hem and margin, and nothing else',
    every((s, shape) => {
      const slope = (s.halfHem - s.halfTop) / s.length;
      const body = (s.halfTop + s.halfHem) * s.length;
      const casing = (2 * s.halfTop + slope * s.topAllowance) * s.topAllowance;
      const hem = (2 * s.halfHem - slope * s.hemAllowance) * s.hemAllowance;
      expect(areaOf(shape.trimmed)).toBeCloseTo(body + casing + hem, 3);
      const more = areaOf(shape.cut) - areaOf(shape.trimmed);
      expect(more).toBeGreaterThanOrEqual(-1e-6);
      expect(more).toBeLessThanOrEqual(2 * s.halfHem * s.margin + 1e-3);
    }),
  );

  test(
    'no outline crosses itself; each runs clockwise and comes back to where it began',
    every((_, shape) => {
      for (const outline of [finishedOf(shape), shape.trimmed, shape.cut]) {
        expect(isClosed(outline)).toBe(true);
        expect(selfIntersects(outline)).toBe(false);
        expect(signedAreaOf(outline)).toBeGreaterThan(0);
      }
    }),
  );

  test(
    'the cut cloth holds the trimmed cloth, which holds the finished panel',
    every((_, shape) => {
      expect(flatten(finishedOf(shape)).every((at) => contains(shape.trimmed, at))).toBe(true);
      expect(flatten(shape.trimmed).every((at) => contains(shape.cut, at))).toBe(true);
    }),
  );

  test('without flare it is a rectangle', () => {
    const shape = straightBy({
      halfTop: mm(300),
      halfHem: mm(300),
      length: mm(800),
      topAllowance: mm(30),
      hemAllowance: mm(20),
      margin: mm(25),
      sideSeam: mm(6),
    });
    expect(areaOf(shape.trimmed)).toBeCloseTo(600 * 850, 6);
    expect(areaOf(shape.cut)).toBeCloseTo(600 * 875, 6);
    expect(areaOf(finishedOf(shape))).toBeCloseTo(588 * 800, 6);
    expect(straightSideExcess(mm(800), mm(0))).toBe(0);
  });
});
