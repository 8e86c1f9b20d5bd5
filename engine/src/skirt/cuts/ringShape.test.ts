import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arc,
  areaOf,
  chordWithin,
  contains,
  distanceTo,
  flatten,
  isClosed,
  lengthOf,
  line,
  point,
  pointAt,
  selfIntersects,
  signedAreaOf,
  tangentAt,
  type Path,
} from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { PanelShape } from '../panel.ts';
import { ringBy, type Marked } from '../../testing/shapes.ts';
import { waistRadius } from './ringShape.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(mm);

/** Up to half a circle for each panel, with an apex that lies above the casing. */
const measures: fc.Arbitrary<Marked> = fc
  .tuple(
    between(150, 900),
    between(0.02, 1.5),
    between(250, 1400),
    between(5, 60),
    between(5, 120),
    between(0, 100),
    between(3, 30),
  )
  .map(([halfTop, sweep, length, topAllowance, hemAllowance, margin, sideSeam]) => ({
    halfTop,
    halfHem: mm(halfTop + sweep * length),
    length,
    topAllowance,
    hemAllowance,
    margin,
    sideSeam,
  }));

const every =
  (check: (drawn: Marked, shape: PanelShape) => void, numRuns = 2000) =>
  () => {
    fc.assert(
      fc.property(measures, (drawn) => {
        check(drawn, ringBy(drawn));
      }),
      { numRuns },
    );
  };
const finishedOf = (shape: PanelShape): Path => shape.edges.flatMap(({ finished }) => finished);
const edgeOf = (shape: PanelShape, name: string): Path =>
  shape.edges.find((edge) => edge.name === name)?.finished ?? [];
const apexOf = (shape: PanelShape) => {
  if (!shape.apex) throw new Error('a ring has an apex');
  return shape.apex;
};
/** The part of a circle about the apex that lies on the cloth. */
const along = (shape: PanelShape, radius: number): Path =>
  chordWithin(shape.trimmed, [
    arc(point(0, -apexOf(shape).waistRadius), mm(radius), radians(1.5 * Math.PI), radians(-2 * Math.PI)),
  ])[0] ?? [];

describe('a panel whose hem hangs level', () => {
  test(
    'quarter marks are arc lengths: waist and hem measure what was asked',
    every(({ halfTop, halfHem }, shape) => {
      const { waistRadius: r, hemRadius } = apexOf(shape);
      expect(lengthOf(along(shape, r))).toBeCloseTo(2 * halfTop, 4);
      expect(lengthOf(along(shape, hemRadius))).toBeCloseTo(2 * halfHem, 4);
    }),
  );

  test(
    'every line from waist to hem is as long as the centre',
    every(({ length }, shape) => {
      const { waistRadius: r, halfSweep } = apexOf(shape);
      const outline = finishedOf(shape);
      const apex = point(0, -r);
      for (const share of [-0.9, -0.5, 0, 0.3, 0.8]) {
        const angle = Math.PI / 2 + share * (halfSweep - Math.asin(30 / r));
        const far = point(apex.x + 1e5 * Math.cos(angle), apex.y + 1e5 * Math.sin(angle));
        expect(lengthOf(chordWithin(outline, [line(apex, far)])[0] ?? [])).toBeCloseTo(length, 4);
      }
    }, 500),
  );

  test(
    'its sides are equal, so front and back join',
    every((_, shape) => {
      expect(lengthOf(edgeOf(shape, 'right'))).toBeCloseTo(lengthOf(edgeOf(shape, 'left')), 6);
    }),
  );

  test(
    'waist and hem meet the raw sides at a right angle',
    every((_, shape) => {
      const [top, right, hem, left] = shape.trimmed;
      if (!top || !right || !hem || !left) throw new Error('a ring has four edges');
      for (const [before, after] of [
        [top, right],
        [right, hem],
        [hem, left],
        [left, top],
      ] as const) {
        const out = tangentAt([before], lengthOf([before]));
        const into = tangentAt([after], mm(0));
        expect(out.x * into.x + out.y * into.y).toBeCloseTo(0, 6);
      }
    }),
  );

  test(
    'its seam lies the allowance inside the raw side, measured square to it, at both ends',
    every(({ sideSeam }, shape) => {
      for (const name of ['right', 'left']) {
        const [raw] = name === 'right' ? shape.trimmed.slice(1, 2) : shape.trimmed.slice(3, 4);
        const seam = edgeOf(shape, name);
        if (!raw) throw new Error('a ring has four edges');
        for (const share of [0, 0.5, 1])
          expect(distanceTo([raw], pointAt(seam, mm(share * lengthOf(seam))))).toBeCloseTo(sideSeam, 4);
      }
    }),
  );

  test(
    'a hem of depth h has 2·h·θ too much where it lands, a casing of depth d 2·d·θ too little',
    every((s, shape) => {
      const { waistRadius: r, hemRadius, halfSweep } = apexOf(shape);
      const [top, , hem] = shape.trimmed;
      if (!top || !hem) throw new Error('a ring has four edges');
      const sweep = 2 * halfSweep;
      fc.pre(s.hemAllowance < s.length && s.topAllowance < s.length);
      expect(lengthOf([hem]) - lengthOf(along(shape, hemRadius - s.hemAllowance))).toBeCloseTo(
        2 * s.hemAllowance * sweep,
        3,
      );
      expect(lengthOf(along(shape, r + s.topAllowance)) - lengthOf([top])).toBeCloseTo(
        2 * s.topAllowance * sweep,
        3,
      );
    }),
  );

  test(
    'its cloth is that of a ring: half the sweep times the difference of the squares',
    every((s, shape) => {
      const { waistRadius: r, hemRadius, halfSweep } = apexOf(shape);
      const outer = hemRadius + s.hemAllowance;
      const ring = (to: number): number => halfSweep * (to ** 2 - (r - s.topAllowance) ** 2);
      expect(areaOf(shape.trimmed) / ring(outer)).toBeCloseTo(1, 9);
      expect(areaOf(shape.cut) / ring(outer + s.margin)).toBeCloseTo(1, 9);
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
      expect(flatten(finishedOf(shape), mm(1)).every((at) => contains(shape.trimmed, at))).toBe(true);
      expect(flatten(shape.trimmed, mm(1)).every((at) => contains(shape.cut, at))).toBe(true);
    }, 500),
  );

  test('the less the flare, the further the apex: it tends to a rectangle', () => {
    const apex = [100, 10, 1, 0.1].map((flare) => waistRadius(mm(300), mm(300 + flare), mm(800)));
    expect(apex.map((r) => Math.round(r))).toEqual([2400, 24_000, 240_000, 2_400_000]);
  });
});
