// Outside source: clipper2-ts, areas of polygons cut by one another: an independent look at what lies on the table.
import { areaD, areaPathsD, differenceD, FillRule, intersectD, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flatten, lengthOf, type Path } from '../geometry/index.ts';
import { anyBody } from '../testing/bodies.ts';
import { anyCloth } from '../testing/cloths.ts';
import { anyCut } from '../testing/cuts.ts';
import { planOf } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { mm } from '../units/index.ts';
import type { ClothPlan, Lay } from './index.ts';
import { cuttable, skirts } from './testing/table.ts';

/** Arcs are flattened to this; a polygon's coordinates are whole steps of 10⁻⁴ mm. */
const FLAT = 0.002;
const STEP = 1e-4;

const polygon = (outline: Path): PathD => {
  const points = flatten(outline, mm(FLAT)).map(({ x, y }) => ({ x, y }));
  return areaD(points) < 0 ? points.toReversed() : points;
};
const areaCut = (paths: readonly PathD[]): number => Math.abs(areaPathsD([...paths]));
const box = (left: number, top: number, right: number, bottom: number): PathD => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

/** Area of pieces on one another, and of pieces off the cloth, in mm². */
function faults(lay: Lay, cloth: ClothPlan): { overlap: number; outside: number } {
  const pieces = lay.table.pieces.map(({ outline }) => polygon(outline));
  const { top, bottom } = cuttable(lay, cloth.fabric);
  const room = box(0, top, lay.table.along, bottom);
  let overlap = 0;
  for (const [i, a] of pieces.entries())
    for (const b of pieces.slice(i + 1))
      overlap = Math.max(overlap, areaCut(intersectD([a], [b], FillRule.NonZero, 4)));
  const outside = areaCut(differenceD(pieces, [room], FillRule.NonZero, 4));
  return { overlap, outside };
}

/** What a step, and the flattening of arcs, can leave along the whole way round a piece. */
const slack = (lay: Lay): number =>
  (FLAT + 2 * STEP) * Math.max(...lay.table.pieces.map(({ outline }) => lengthOf(outline)));

const check = (cloth: ClothPlan): void => {
  for (const lay of cloth.lays.filter(({ fits }) => fits)) {
    const { overlap, outside } = faults(lay, cloth);
    expect(overlap, lay.kind).toBeLessThan(slack(lay));
    expect(outside, lay.kind).toBeLessThan(slack(lay));
  }
};

describe('against an independent clipper', () => {
  test.each(Object.entries(skirts))(
    '%s: no piece on another, none off the cloth, in every lay that fits',
    (_, raw) => {
      check(planOf(raw).cloth);
    },
  );

  test('any skirt on any cloth', patience, () => {
    let laid = 0;
    fc.assert(
      fc.property(anyBody, anyCut, anyCloth, (body, cut, cloth) => {
        const plan = planOf({ body, cut, cloth });
        laid += plan.cloth.lays.filter(({ fits }) => fits).length;
        check(plan.cloth);
      }),
      { numRuns: runs(300) },
    );
    expect(laid).toBeGreaterThan(300);
  });

  test('it does see a piece that was moved onto its neighbour, or off the cloth', () => {
    const { cloth } = planOf({ cut: { kind: 'gathered', widths: 2 }, cloth: { lay: 'open' } });
    const lay = cloth.chosen;
    const table = { ...lay.table, along: mm(lay.table.along - 1) };
    expect(faults({ ...lay, table }, cloth).outside).toBeGreaterThan(slack(lay));
    const [first] = lay.table.pieces;
    const twice = { ...lay.table, pieces: first ? [first, first] : [] };
    expect(faults({ ...lay, table: twice }, cloth).overlap).toBeGreaterThan(slack(lay));
  });
});
