import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  contains,
  distance,
  distanceTo,
  flatten,
  isClosed,
  lengthOf,
  pointAt,
  selfIntersects,
  type Path,
} from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import type { EdgeName, PanelShape } from '../panel.ts';
import { sewn, turned } from './edges.ts';
import { goreFrame, hipSeamOf, waistCurveOf, type GoreHalves } from './goreFrame.ts';
import { goreShape, type GoreShape } from './goreShape.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(mm);

const allowances: fc.Arbitrary<Omit<GoreShape, keyof GoreHalves>> = fc.record({
  top: between(5, 40).map(sewn),
  hem: between(5, 40).map(turned),
  left: between(3, 30).map(sewn),
  right: between(3, 30).map(sewn),
  margin: between(0, 60),
});

const ring: fc.Arbitrary<GoreShape> = fc
  .tuple(between(80, 400), between(0.05, 0.7), between(300, 1200), allowances)
  .map(([halfTop, turn, length, beyond]) => ({
    ...beyond,
    halfTop,
    halfHem: mm(halfTop + turn * length),
    length,
    hip: null,
  }));

/** Waist to hip slopes at least as much as hip to hem, as on every fitted skirt. */
const fitted: fc.Arbitrary<GoreShape> = fc
  .tuple(between(40, 250), between(60, 230), between(0, 0.4), between(0, 0.5), between(400, 1100), allowances)
  .map(([halfTop, level, turn, steeper, length, beyond]) => {
    const half = mm(halfTop + (turn + steeper) * level);
    const gore: GoreHalves = {
      halfTop,
      halfHem: mm(half + turn * (length - level)),
      length,
      hip: { level, half, seam: level },
    };
    return {
      ...beyond,
      ...gore,
      hip: { level, half, seam: hipSeamOf([gore]) },
    };
  });

const edgeOf = (shape: PanelShape, name: EdgeName): Path =>
  shape.edges.find((edge) => edge.name === name)?.finished ?? [];
const every = (gores: fc.Arbitrary<GoreShape>, check: (gore: GoreShape, shape: PanelShape) => void) => () => {
  fc.assert(
    fc.property(gores, (gore) => {
      check(gore, goreShape(gore));
    }),
    { numRuns: 400 },
  );
};

describe.each([
  ['a panel that is a ring', ring],
  ['a fitted panel', fitted],
])('%s', (_, gores) => {
  test(
    'measures at waist and hem what was asked, along the curves',
    every(gores, ({ halfTop, halfHem }, shape) => {
      expect(lengthOf(edgeOf(shape, 'waist'))).toBeCloseTo(2 * halfTop, 4);
      expect(lengthOf(edgeOf(shape, 'hem'))).toBeCloseTo(2 * halfHem, 1);
    }),
  );

  test(
    'has two sides of one length, that of the seam above the hips and of what is below them',
    every(gores, ({ hip, length }, shape) => {
      const seam = hip ? hip.seam + length - hip.level : length;
      expect(lengthOf(edgeOf(shape, 'left'))).toBeCloseTo(seam, 4);
      expect(lengthOf(edgeOf(shape, 'right'))).toBeCloseTo(seam, 4);
    }),
  );

  test(
    'is closed, crosses nothing, and each outline holds the one inside it',
    every(gores, (_gore, shape) => {
      const finished = shape.edges.flatMap((edge) => edge.finished);
      for (const outline of [finished, shape.trimmed, shape.cut]) {
        expect(isClosed(outline)).toBe(true);
        expect(selfIntersects(outline)).toBe(false);
      }
      expect(flatten(finished, mm(1)).every((at) => contains(shape.trimmed, at))).toBe(true);
      expect(flatten(shape.trimmed, mm(1)).every((at) => contains(shape.cut, at))).toBe(true);
    }),
  );

  test(
    'has its allowances square to its seams',
    every(gores, (gore, shape) => {
      for (const [name, { depth }] of [
        ['left', gore.left],
        ['right', gore.right],
        ['hem', gore.hem],
      ] as const) {
        const seam = edgeOf(shape, name);
        const at = pointAt(seam, mm(0.5 * lengthOf(seam)));
        // The corner at the hip line is mitred: never less than the allowance, and exactly it between corners.
        expect(distanceTo(shape.trimmed, at)).toBeCloseTo(depth, 3);
      }
    }),
  );
});

test(
  'a ring’s cloth is half the sweep times the difference of the squares',
  every(ring, ({ halfTop, halfHem, length }, shape) => {
    const turn = (halfHem - halfTop) / length;
    const radius = halfTop / turn;
    const area = turn * ((radius + length) ** 2 - radius ** 2);
    expect(areaOf(shape.edges.flatMap((edge) => edge.finished)) / area).toBeCloseTo(1, 9);
  }),
);

test(
  'below the hip line every line to the hem is as long as the centre',
  every(fitted, (gore) => {
    const { at } = goreFrame(gore);
    for (const place of [-1, -0.6, 0, 0.3, 1])
      expect(distance(at(gore.hip?.level ?? 0, place), at(gore.length, place))).toBeCloseTo(
        gore.length - (gore.hip?.level ?? 0),
        6,
      );
  }),
);

test(
  'the waist is never lower at its seams than in the middle',
  every(fitted, (gore, shape) => {
    const waist = edgeOf(shape, 'waist');
    expect(pointAt(waist, mm(0)).y).toBeLessThanOrEqual(0.01);
    if (gore.hip) expect(waistCurveOf(gore, gore.hip).up).toBeGreaterThanOrEqual(0);
  }),
);

test('where the hips ask for no more than straight sides give, a fitted panel is a ring', () => {
  const [halfTop, halfHem, length, level] = [mm(60), mm(140), mm(750), mm(200)];
  const half = mm(halfTop + ((halfHem - halfTop) * level) / length);
  const gore: GoreHalves = { halfTop, halfHem, length, hip: { level, half, seam: level } };
  const { across, up } = waistCurveOf(gore, { level, half, seam: hipSeamOf([gore]) });
  const radius = (across ** 2 + up ** 2) / (2 * up);
  expect(radius).toBeCloseTo((halfTop * length) / (halfHem - halfTop), 3);
});

test('unlike panels side by side, fitted or not, have seams of one length, the top risen or level', () => {
  const narrow: GoreHalves = {
    halfTop: mm(55),
    halfHem: mm(130),
    length: mm(750),
    hip: { level: mm(190), half: mm(85), seam: mm(190) },
  };
  const wide: GoreHalves = {
    halfTop: mm(110),
    halfHem: mm(260),
    length: mm(750),
    hip: { level: mm(190), half: mm(170), seam: mm(190) },
  };
  const seam = hipSeamOf([narrow, wide]);
  const drawn = [narrow, wide].map((gore) =>
    goreShape({
      ...gore,
      hip: gore.hip && { ...gore.hip, seam },
      top: sewn(mm(12)),
      hem: turned(mm(20)),
      left: sewn(mm(15)),
      right: sewn(mm(6)),
      margin: mm(0),
      rise: { left: mm(-30), centre: mm(10), right: mm(40) },
    }),
  );
  for (const [name, rise] of [
    ['left', -30],
    ['right', 40],
  ] as const)
    for (const shape of drawn) expect(lengthOf(edgeOf(shape, name))).toBeCloseTo(seam + rise + 560, 4);
  for (const [i, { halfTop }] of [narrow, wide].entries())
    expect(lengthOf(drawn[i] ? edgeOf(drawn[i], 'waist') : [])).toBeCloseTo(2 * halfTop, 4);
});
