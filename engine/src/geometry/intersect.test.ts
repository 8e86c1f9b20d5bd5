import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { intersections, pathIntersections } from './intersect.ts';
import { distanceToSegment } from './nearest.ts';
import { polyline } from './path.ts';
import { distance, point } from './point.ts';
import { arc, directionOn, line, pointOn, shareAt } from './segment.ts';
import { anySegment, numbers } from './testing/panels.ts';

const circle = (x: number, y: number, radius: number) =>
  arc(point(x, y), mm(radius), radians(0), radians(2 * Math.PI));

describe('intersections', () => {
  test('of two lines', () => {
    expect(intersections(line(point(0, 0), point(10, 10)), line(point(0, 10), point(10, 0)))).toEqual([
      point(5, 5),
    ]);
    expect(intersections(line(point(0, 0), point(4, 4)), line(point(0, 10), point(10, 0)))).toEqual([]);
  });

  test('of a chord and its circle, in order along the chord', () => {
    const [first, second] = intersections(line(point(200, 60), point(-200, 60)), circle(0, 0, 100));
    expect(first?.x).toBeCloseTo(80, 10);
    expect(second?.x).toBeCloseTo(-80, 10);
  });

  test('of two circles', () => {
    const found = intersections(circle(0, 0, 50), circle(60, 0, 50));
    expect(found.map(({ y }) => Math.round(y)).sort((a, b) => a - b)).toEqual([-40, 40]);
    expect(intersections(circle(0, 0, 50), circle(0, 0, 60))).toEqual([]);
    expect(intersections(circle(0, 0, 50), circle(200, 0, 60))).toEqual([]);
    expect(intersections(circle(0, 0, 500), circle(20, 0, 60))).toEqual([]);
  });

  test('a touch is one point', () => {
    expect(intersections(line(point(-9, 30), point(9, 30)), circle(0, 0, 30))).toHaveLength(1);
    expect(intersections(circle(0, 0, 30), circle(50, 0, 20))).toHaveLength(1);
    expect(intersections(circle(0, 0, 30), circle(-10, 0, 20))).toHaveLength(1);
  });

  test('a touch is one point wherever the circle lies, whatever its rounding', () => {
    fc.assert(
      fc.property(
        numbers(10, 2000),
        numbers(-900, 900),
        numbers(-3, 3),
        numbers(10, 2000),
        (radius, x, angle, other) => {
          const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
          const at = point(x + radius * ux, 70 + radius * uy);
          const tangent = line(
            point(at.x - 500 * uy, at.y + 500 * ux),
            point(at.x + 500 * uy, at.y - 500 * ux),
          );
          expect(intersections(tangent, circle(x, 70, radius))).toHaveLength(1);
          const beside = circle(x + (radius + other) * ux, 70 + (radius + other) * uy, other);
          expect(intersections(beside, circle(x, 70, radius))).toHaveLength(1);
        },
      ),
      { seed: 3, numRuns: 1000 },
    );
  });

  test('segments along one another share the ends of what is common', () => {
    const on = intersections(line(point(0, 0), point(10, 0)), line(point(6, 0), point(20, 0)));
    expect(on).toEqual([point(6, 0), point(10, 0)]);
    const a = arc(point(0, 0), mm(100), radians(0), radians(1));
    const b = arc(point(0, 0), mm(100), radians(2), radians(-1.5));
    expect(intersections(a, b).map((at) => shareAt(a, at).toFixed(6))).toEqual(['0.500000', '1.000000']);
  });

  test('each lies on both, and it matters not who comes first', () => {
    fc.assert(
      fc.property(anySegment, anySegment, (a, b) => {
        const found = intersections(a, b);
        for (const at of found) {
          expect(distanceToSegment(a, at)).toBeLessThanOrEqual(1e-6);
          expect(distanceToSegment(b, at)).toBeLessThanOrEqual(1e-6);
        }
        expect(intersections(b, a)).toHaveLength(found.length);
      }),
      { seed: 3, numRuns: 3000 },
    );
  });

  test('a segment through a point of another meets it there', () => {
    fc.assert(
      fc.property(anySegment, numbers(0, 1), numbers(-3, 3), (segment, t, angle) => {
        const at = pointOn(segment, t);
        const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
        const way = directionOn(segment, t);
        // Laid along a line, it shares the ends of what is common instead.
        fc.pre(segment.kind === 'arc' || Math.abs(ux * way.y - uy * way.x) > 1e-6);
        const through = line(
          point(at.x - 300 * ux, at.y - 300 * uy),
          point(at.x + 300 * ux, at.y + 300 * uy),
        );
        const away = intersections(segment, through).map((each) => distance(each, at));
        // A touch is found to √(8·R·10⁻⁹): 3 µm on these circles.
        expect(Math.min(...away)).toBeLessThan(3e-3);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });

  test('a corner that both paths pass counts once, and points come in order along the first', () => {
    const square = polyline([point(0, 0), point(10, 0), point(10, 10), point(0, 10)], { closed: true });
    expect(pathIntersections([line(point(20, 20), point(-5, -5))], square)).toEqual([
      point(10, 10),
      point(0, 0),
    ]);
    expect(pathIntersections([line(point(5, 20), point(5, -20))], square)).toEqual([
      point(5, 10),
      point(5, 0),
    ]);
  });
});
