import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { areaOf } from './area.ts';
import { boundsOf } from './bounds.ts';
import { isClosed, selfIntersects } from './check.ts';
import { contains } from './inside.ts';
import { distanceTo } from './nearest.ts';
import { offsetOutline } from './outline.ts';
import { lengthOf, pointAt, polyline, type Path } from './path.ts';
import { distance, point, type Point } from './point.ts';
import { arc, directionOn, endOf, line, startOf, type Segment } from './segment.ts';
import { anyPanel, gore, numbers, ringPanel, trapezoid, type Panel } from './testing/panels.ts';

const seed = 41;
const allowances = (panel: Panel, ...out: readonly number[]) =>
  panel.map((path, i) => ({ path, distance: mm(out[i % out.length] ?? 0) }));
const seam = numbers(0, 25);
const rounded = ({ x, y }: Point): Point => point(Math.round(x * 1e9) / 1e9, Math.round(y * 1e9) / 1e9);

/** The line or circle that carries a segment, as the distance of a point from it. */
const offCarrier = (segment: Segment, x: number, y: number): number => {
  if (segment.kind === 'arc') return distance(segment.centre, point(x, y)) - segment.radius;
  const { from, to } = segment;
  return ((x - from.x) * (to.y - from.y) - (y - from.y) * (to.x - from.x)) / distance(from, to);
};

describe('seam allowances round a panel', () => {
  test('a rectangle with its own allowance on every edge', () => {
    const cut = offsetOutline(allowances(trapezoid(400, 400, 700), 30, 10, 20, 5));
    const corners = cut.flat().map((edge) => [startOf(edge), endOf(edge)].map(rounded));
    const [topLeft, topRight] = [point(-205, -30), point(210, -30)];
    const [bottomRight, bottomLeft] = [point(210, 720), point(-205, 720)];
    expect(corners).toEqual([
      [topLeft, topRight],
      [topRight, bottomRight],
      [bottomRight, bottomLeft],
      [bottomLeft, topLeft],
    ]);
  });

  test('a ring sector: arcs keep their centre, straight sides their slope, corners lie on both', () => {
    const [inner, outer, sweep] = [200, 900, 1.2];
    const edges = offsetOutline(allowances(ringPanel(inner, outer, sweep), 15, 10, 25, 10));
    const [waist, side, hem] = edges.map((edge) => edge[0]);
    expect(waist).toMatchObject({ kind: 'arc', radius: 185 });
    expect(hem).toMatchObject({ kind: 'arc', radius: 925 });
    expect(side?.kind).toBe('line');
    // The side line passes 10 mm from the centre: its corner at radius R lies asin(10 / R) beyond the old side.
    expect(hem && lengthOf([hem])).toBeCloseTo(925 * (sweep + 2 * Math.asin(10 / 925)), 9);
    expect(waist && lengthOf([waist])).toBeCloseTo(185 * (sweep + 2 * Math.asin(10 / 185)), 9);
    expect(side && lengthOf([side])).toBeCloseTo(Math.sqrt(925 ** 2 - 100) - Math.sqrt(185 ** 2 - 100), 9);
  });

  test('a turned hem of depth h is 4π·f·h longer at its raw edge than where it lands', () => {
    fc.assert(
      fc.property(numbers(0.05, 0.95), numbers(300, 1200), numbers(3, 100), (fraction, radius, depth) => {
        const panel = ringPanel(100, 100 + radius, 2 * Math.PI * fraction);
        const hemAt = (out: number): number =>
          lengthOf(offsetOutline(allowances(panel, 0, 0, out, 0))[2] ?? []);
        expect(hemAt(depth) - hemAt(-depth)).toBeCloseTo(4 * Math.PI * fraction * depth, 6);
      }),
      { seed, numRuns: 300 },
    );
  });

  test('every edge lies at its own distance from the old one, closed, in order', () => {
    fc.assert(
      fc.property(anyPanel, fc.tuple(seam, seam, seam, seam), (panel, out) => {
        const cut = offsetOutline(allowances(panel, ...out));
        const outline = cut.flat();
        expect(isClosed(outline, mm(1e-6))).toBe(true);
        expect(selfIntersects(outline)).toBe(false);
        expect(cut.map((edge) => edge.length)).toEqual(panel.map((edge) => edge.length));
        for (const [i, edge] of cut.entries())
          for (const [j, segment] of edge.entries()) {
            const old = panel[i]?.[j];
            if (!old) continue;
            expect(segment.kind).toBe(old.kind);
            for (const at of [startOf(segment), endOf(segment)]) {
              expect(Math.abs(offCarrier(old, at.x, at.y))).toBeCloseTo(out[i] ?? NaN, 5);
            }
          }
        expect(areaOf(outline)).toBeGreaterThanOrEqual(areaOf(panel.flat()) - 1e-4);
        for (const t of [0.1, 0.4, 0.6, 0.9]) {
          const seamLine = panel.flat();
          expect(contains(outline, pointAt(seamLine, mm(t * lengthOf(seamLine))))).toBe(true);
        }
      }),
      { seed, numRuns: 2000 },
    );
  });

  test('out and in again by the same allowances is the panel', () => {
    fc.assert(
      fc.property(anyPanel, fc.tuple(seam, seam, seam, seam), (panel, out) => {
        const cut = offsetOutline(allowances(panel, ...out));
        const back = offsetOutline(allowances(cut, ...out.map((each) => -each)));
        for (const [i, edge] of back.entries())
          for (const [j, segment] of edge.entries()) {
            const old = panel[i]?.[j];
            if (old) expect(distance(endOf(segment), endOf(old))).toBeLessThan(1e-4);
          }
      }),
      { seed, numRuns: 1000 },
    );
  });

  test('on a smooth hip curve the join stays smooth', () => {
    const panel = gore(150, 200, 320, 180, 700, 6);
    const [, side] = offsetOutline(allowances(panel, 10));
    expect(side).toHaveLength(2);
    const [curve, straight] = side ?? [];
    if (curve?.kind !== 'arc' || straight?.kind !== 'line') throw new Error('a curve and a straight side');
    expect(distance(directionOn(curve, 1), directionOn(straight, 0))).toBeLessThan(1e-9);
    expect(distance(endOf(curve), startOf(straight))).toBeLessThan(1e-9);
  });

  test('an inner corner, as at a slit, is met as well', () => {
    const ell = polyline(
      [point(0, 0), point(100, 0), point(100, 40), point(40, 40), point(40, 100), point(0, 100)],
      { closed: true },
    );
    const cut = offsetOutline(ell.map((each) => ({ path: [each], distance: mm(10) }))).flat();
    expect(areaOf(cut)).toBeCloseTo(120 * 60 + 60 * 60, 8);
  });

  test('edges in line with different allowances are joined by a square step, kept by the earlier edge', () => {
    const edges: Path[] = [
      [line(point(0, 0), point(100, 0))],
      [line(point(100, 0), point(200, 0))],
      [
        line(point(200, 0), point(200, 90)),
        line(point(200, 90), point(0, 90)),
        line(point(0, 90), point(0, 0)),
      ],
    ];
    const [first, second] = offsetOutline(allowances(edges, 10, 25, 0));
    expect(first).toEqual([line(point(0, -10), point(100, -10)), line(point(100, -10), point(100, -25))]);
    expect(second).toEqual([line(point(100, -25), point(200, -25))]);
  });

  test('a needle point is stepped off instead of running away', () => {
    const needle = polyline([point(0, 0), point(500, 10), point(0, 20)], { closed: true });
    const cut = offsetOutline(needle.map((each) => ({ path: [each], distance: mm(10) })));
    expect(boundsOf(cut.flat()).right).toBeLessThan(520);
    expect(isClosed(cut.flat())).toBe(true);
  });

  test('an arc too small to reach its neighbour is joined to it by a straight step', () => {
    const cut = offsetOutline(allowances(ringPanel(40, 700, 1), 30, 20, 20, 20));
    const [waist, , , other] = cut;
    expect(waist?.map((each) => each.kind)).toEqual(['arc', 'line']);
    expect(other?.map((each) => each.kind)).toEqual(['line', 'line']);
    expect(isClosed(cut.flat())).toBe(true);
    expect(selfIntersects(cut.flat())).toBe(false);
  });

  test('a full circle in one arc grows and shrinks', () => {
    const whole: Panel = [[arc(point(0, 0), mm(100), radians(0.5), radians(2 * Math.PI))]];
    expect(areaOf(offsetOutline(allowances(whole, 10)).flat())).toBeCloseTo(Math.PI * 110 ** 2, 6);
    expect(areaOf(offsetOutline(allowances(whole, -10)).flat())).toBeCloseTo(Math.PI * 90 ** 2, 6);
    expect(offsetOutline(allowances(whole, -101))).toEqual([[]]);
  });

  test('an edge that the move swallows comes back empty and its neighbours meet', () => {
    const snipped = polyline([point(0, 0), point(95, 0), point(100, 5), point(100, 100), point(0, 100)], {
      closed: true,
    });
    const cut = offsetOutline(snipped.map((each) => ({ path: [each], distance: mm(-20) })));
    expect(cut.map((edge) => edge.length)).toEqual([1, 0, 1, 1, 1]);
    expect(areaOf(cut.flat())).toBeCloseTo(60 * 60, 8);
    const waistGone = offsetOutline(allowances(ringPanel(20, 700, Math.PI / 2), 30, 0, 0, 0));
    expect(waistGone.map((edge) => edge.length)).toEqual([0, 1, 1, 1]);
    expect(areaOf(waistGone.flat())).toBeCloseTo((Math.PI * 700 ** 2) / 4, 6);
  });

  test('moved in past its middle, nothing is left', () => {
    expect(offsetOutline(allowances(trapezoid(100, 100, 20), -15))).toEqual([[], [], [], []]);
    expect(offsetOutline(allowances(trapezoid(100, 140, 100), -80))).toEqual([[], [], [], []]);
    expect(offsetOutline(allowances(ringPanel(200, 260, 1), -40))).toEqual([[], [], [], []]);
    expect(offsetOutline([])).toEqual([]);
  });

  test('moved by nothing, nothing moves', () => {
    fc.assert(
      fc.property(anyPanel, (panel) => {
        const same = offsetOutline(allowances(panel, 0)).flat();
        const old = panel.flat();
        expect(lengthOf(same)).toBeCloseTo(lengthOf(old), 6);
        for (const segment of same) expect(distanceTo(old, endOf(segment))).toBeLessThan(1e-6);
      }),
      { seed, numRuns: 300 },
    );
  });
});
