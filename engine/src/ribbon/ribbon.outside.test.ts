// Source: by geometry, a ribbon of width w along an arc of inner radius R and angle θ has edges that differ by θ·w, w/R of its length.
import { describe, expect, test } from 'vitest';
import { figures } from '../figure/index.ts';
import { areaOf, lengthOf, sagitta, type Path } from '../geometry/index.ts';
import { ringBy } from '../testing/shapes.ts';
import type { Apex, PanelShape } from '../skirt/index.ts';
import { mm } from '../units/index.ts';
import { alongHem } from '../skirt/index.ts';
import { curveOf } from './flat.ts';

const { length } = figures<'test.width'>();

/** A panel that is a part of a circle about its apex, long enough for a row at either radius. */
function circlePart(share: number, waistRadius: number, skirtLength: number): PanelShape & { apex: Apex } {
  const halfSweep = Math.PI * share;
  const shape = ringBy({
    halfTop: mm(halfSweep * waistRadius),
    halfHem: mm(halfSweep * (waistRadius + skirtLength)),
    length: mm(skirtLength),
    topAllowance: mm(20),
    hemAllowance: mm(20),
    margin: mm(0),
    sideSeam: mm(6),
  });
  if (!shape.apex) throw new Error('a ring has an apex');
  return { ...shape, apex: shape.apex };
}
/** The row whose inner, upper edge lies on `inner`. */
function rowAt(shape: PanelShape & { apex: Apex }, inner: number, width: number) {
  const at = mm(shape.apex.hemRadius - inner - width);
  return {
    lower: alongHem(shape, at),
    upper: alongHem(shape, mm(at + width)),
    curve: curveOf(shape.apex, { at, width: mm(width) }, length(mm(width), 'test.width')),
  };
}
const radiusOf = (path: Path): number => (path[0]?.kind === 'arc' ? path[0].radius : NaN);

describe('a ribbon on a curve', () => {
  test.each([
    [25, 400, 6.25],
    [25, 1000, 2.5],
    [50, 600, 8.3],
  ])('%d mm of ribbon on a radius of %d mm: the outer edge is %d %% longer', (width, radius, percent) => {
    const { curve, lower, upper } = rowAt(circlePart(0.1, 200, 1200), radius, width);
    expect(radiusOf(upper)).toBeCloseTo(radius, 9);
    expect(curve.share.value * 100).toBeCloseTo(percent, 1);
    expect((lengthOf(lower) / lengthOf(upper) - 1) * 100).toBeCloseTo(percent, 1);
  });

  test('a 25 mm ribbon round a quarter circle has 39.27 mm to lose, whatever the radius', () => {
    for (const radius of [400, 700, 1000]) {
      const { curve, lower, upper } = rowAt(circlePart(0.25, 200, 1200), radius, 25);
      expect(lengthOf(lower) - lengthOf(upper)).toBeCloseTo(39.27, 2);
      expect(curve.takeUp.value).toBeCloseTo(39.27, 2);
    }
  });

  test.each([0.1, 0.25, 0.4])('over %d of a circle it is 2π times that share times the width', (share) => {
    const { lower, upper } = rowAt(circlePart(share, 300, 900), 600, 16);
    expect(lengthOf(lower) - lengthOf(upper)).toBeCloseTo(2 * Math.PI * share * 16, 6);
  });

  test('inner and outer edge are arcs of their own radius and one angle', () => {
    const share = 0.2;
    const { lower, upper } = rowAt(circlePart(share, 300, 900), 600, 16);
    expect(lengthOf(upper)).toBeCloseTo(2 * Math.PI * share * 600, 6);
    expect(lengthOf(lower)).toBeCloseTo(2 * Math.PI * share * 616, 6);
  });
});

test('laid straight across a panel it leaves the level line by R − √(R² − (c/2)²)', () => {
  const shape = circlePart(0.1, 300, 900);
  const [row] = rowAt(shape, 600, 16).upper;
  if (row?.kind !== 'arc') throw new Error('a row on a ring is an arc');
  const chord = 2 * 600 * Math.sin((0.1 * 2 * Math.PI) / 2);
  const deepest = 600 - 600 * Math.cos((0.1 * 2 * Math.PI) / 2);
  expect(sagitta(mm(600), mm(chord))).toBeCloseTo(deepest, 9);
  // The cloth between a chord and its arc is a circular segment: r²(θ − sin θ)/2.
  const angle = 0.1 * 2 * Math.PI;
  expect(areaOf([row])).toBeCloseTo((600 ** 2 * (angle - Math.sin(angle))) / 2, 3);
});
