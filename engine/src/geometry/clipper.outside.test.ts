// Outside source: clipper2-ts, areas of polygons moved out and in with mitred joins.
import { areaD, EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import { areaOf } from './area.ts';
import { flatten } from './flatten.ts';
import { offsetOutline } from './outline.ts';
import { lengthOf, polyline, type Path } from './path.ts';
import { point } from './point.ts';
import { anyPanel, anyStraightPanel, numbers, type Panel } from './testing/panels.ts';

const seed = 22;
/** Its coordinates are whole steps of 10⁻⁴ mm: an area is known to a step times the way round. */
const STEP = 1e-4;
const MITRE_LIMIT = 100;

const inflated = (outline: Path, by: number, tolerance: number): number => {
  const points: PathD = flatten(outline, mm(tolerance)).map(({ x, y }) => ({ x, y }));
  points.pop();
  const path = areaD(points) < 0 ? points.toReversed() : points;
  return inflatePathsD([path], by, JoinType.Miter, EndType.Polygon, MITRE_LIMIT, 4).reduce(
    (sum, each) => sum + areaD(each),
    0,
  );
};
const moved = (panel: Panel, by: number): number =>
  areaOf(offsetOutline(panel.map((path) => ({ path, distance: mm(by) }))).flat());

describe('against an independent offsetter', () => {
  test('trapezoids, out and in', () => {
    fc.assert(
      fc.property(anyStraightPanel, numbers(-30, 60), (panel, by) => {
        const off = Math.abs(moved(panel, by) - inflated(panel.flat(), by, 0.01));
        expect(off).toBeLessThan(2 * STEP * lengthOf(panel.flat()));
      }),
      { seed, numRuns: 3000 },
    );
  });

  test('polygons of many corners, hollow ones too', () => {
    const star = fc.array(numbers(150, 400), { minLength: 5, maxLength: 12 }).map((radii) =>
      polyline(
        radii.map((radius, i) => {
          const angle = (2 * Math.PI * i) / radii.length;
          return point(radius * Math.cos(angle), radius * Math.sin(angle));
        }),
        { closed: true },
      ),
    );
    fc.assert(
      fc.property(star, numbers(-10, 10), (outline, by) => {
        const off = Math.abs(moved([outline], by) - inflated(outline, by, 0.01));
        expect(off).toBeLessThan(2 * STEP * lengthOf(outline));
      }),
      { seed, numRuns: 3000 },
    );
  });

  // Inwards only: outwards it lengthens the last chord where the arc itself goes on; that way back is in outline.test.ts.
  test('panels with arcs, flattened for the offsetter to 0.005 mm', { timeout: 30_000 }, () => {
    const flat = 5e-3;
    fc.assert(
      fc.property(anyPanel, numbers(-30, 0), (panel, by) => {
        const off = Math.abs(moved(panel, by) - inflated(panel.flat(), by, flat));
        expect(off).toBeLessThan((2 * STEP + flat) * lengthOf(panel.flat()));
      }),
      { seed, numRuns: 1000 },
    );
  });
});
