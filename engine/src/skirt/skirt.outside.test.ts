// Sources: published tutorials' figures for casings and elastic; hem excess 4π·f·h and the ring sector r = a/φ, φ = (b − a)/s, by geometry.
import { describe, expect, test } from 'vitest';
import { draftOf } from '../testing/drafts.ts';
import { arc, chordWithin, lengthOf, point, type Path } from '../geometry/index.ts';
import { inches, mm, radians } from '../units/index.ts';
import { ringBy } from '../testing/shapes.ts';
import { straightSideExcess } from './cuts/straightShape.ts';
import type { PanelShape } from './panel.ts';

describe('casing and elastic', () => {
  test.each([
    ['1 in', 1.5],
    ['3/4 in', 1.25],
  ])('%s elastic takes a casing of %d in', (elasticWidth, depth) => {
    const { skirt } = draftOf({ waist: { elasticWidth } });
    expect(skirt.waist.topAllowance.value).toBeCloseTo(inches(depth), 9);
  });

  test('a 30 in waist: 2 in off and ½ in to join is 28½ in of elastic', () => {
    const { skirt } = draftOf({ body: { waist: '30 in', hip: '36 in' } });
    expect(skirt.waist.elastic?.cut.value).toBeCloseTo(inches(30 - 2 + 0.5), 9);
  });

  test('a share of the waist, unlike a flat 2 in, leaves an 18 in child’s waist loose enough', () => {
    const { skirt } = draftOf({ body: { waist: '18 in', hip: '20 in', waistToHem: '14 in', age: 3 } });
    expect(skirt.waist.elastic?.cut.value).toBeGreaterThan(inches(18 - 2 + 0.5));
  });
});

/** A skirt of two panels that together are a share of a circle. */
const circlePart = (share: number, hem: number, casing: number): PanelShape => {
  const halfSweep = (Math.PI * share) / 2;
  const r = 300;
  const length = 700;
  return ringBy({
    halfTop: mm(halfSweep * r),
    halfHem: mm(halfSweep * (r + length)),
    length: mm(length),
    topAllowance: mm(casing),
    hemAllowance: mm(hem),
    margin: mm(0),
    sideSeam: mm(3),
  });
};
const along = (shape: PanelShape, radius: number): Path =>
  chordWithin(shape.trimmed, [
    arc(point(0, -(shape.apex?.waistRadius ?? 0)), mm(radius), radians(1.5 * Math.PI), radians(-2 * Math.PI)),
  ])[0] ?? [];

describe('turned edges of a part of a circle', () => {
  test.each([
    [0.25, 3.142],
    [0.5, 6.283],
    [0.75, 9.425],
    [1, 12.566],
  ])(
    '%d of a circle: a hem has %d times its depth too much where it lands, a casing as much too little',
    (share, times) => {
      const depth = 25.4;
      const shape = circlePart(share, depth, depth);
      const { waistRadius, hemRadius } = shape.apex ?? { waistRadius: 0, hemRadius: 0 };
      const hem = 2 * (lengthOf(along(shape, hemRadius + depth)) - lengthOf(along(shape, hemRadius - depth)));
      const casing =
        2 * (lengthOf(along(shape, waistRadius + depth)) - lengthOf(along(shape, waistRadius - depth)));
      expect(hem / depth).toBeCloseTo(times, 3);
      expect(casing / depth).toBeCloseTo(times, 3);
    },
  );

  test('a 1 in hem on a full circle has 12.57 in to lose, however long the skirt', () => {
    const shape = circlePart(1, 25.4, 25.4);
    const { hemRadius } = shape.apex ?? { hemRadius: 0 };
    const excess = 2 * (lengthOf(along(shape, hemRadius + 25.4)) - lengthOf(along(shape, hemRadius - 25.4)));
    expect(excess / 25.4).toBeCloseTo(12.57, 2);
  });
});

describe('a flared panel as a piece of a ring', () => {
  test('top a, bottom b, side s: the angle is (b − a)/s, the inner radius a over the angle', () => {
    const { skirt } = draftOf({
      body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' },
      cut: { hemAtFold: '24 in' },
    });
    const [a, b, s] = [2 * inches(13.5), 2 * inches(24), inches(31)];
    const angle = (b - a) / s;
    const { apex } = skirt.panels[0].shape;
    expect(2 * (apex?.halfSweep ?? NaN)).toBeCloseTo(angle, 9);
    expect(apex?.waistRadius).toBeCloseTo(a / angle, 6);
  });

  test('left straight, its side is longer than its centre by √(L² + f²) − L', () => {
    // 31 in long with 4 in of flare at the fold: 31.257 in of side.
    expect(straightSideExcess(inches(31), inches(4)) / 25.4).toBeCloseTo(Math.sqrt(31 ** 2 + 4 ** 2) - 31, 9);
    expect(straightSideExcess(inches(31), inches(4)) / 25.4).toBeCloseTo(0.257, 3);
  });
});
