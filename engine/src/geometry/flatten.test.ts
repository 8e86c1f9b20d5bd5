import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { flatten } from './flatten.ts';
import { distanceTo } from './nearest.ts';
import { lengthOf, polyline } from './path.ts';
import { midpoint, point } from './point.ts';
import { arc, line } from './segment.ts';
import { anyPanel, numbers } from './testing/panels.ts';

describe('flatten', () => {
  test('points lie on the path and the middles of their chords within the tolerance', () => {
    fc.assert(
      fc.property(anyPanel, numbers(0.001, 2), (panel, tolerance) => {
        const path = panel.flat();
        const points = flatten(path, mm(tolerance));
        for (const [i, at] of points.entries()) {
          expect(distanceTo(path, at)).toBeLessThan(1e-6);
          const next = points[i + 1];
          if (next) expect(distanceTo(path, midpoint(at, next))).toBeLessThan(tolerance + 1e-6);
        }
        expect(lengthOf(polyline(points))).toBeLessThanOrEqual(lengthOf(path) + 1e-6);
      }),
      { seed: 9, numRuns: 300 },
    );
  });

  test('straight lines take no points but their ends; both ends of the path are there', () => {
    expect(flatten([line(point(0, 0), point(5, 0)), line(point(5, 0), point(5, 5))])).toEqual([
      point(0, 0),
      point(5, 0),
      point(5, 5),
    ]);
    expect(flatten([])).toEqual([]);
  });

  test('a full circle of radius 100 mm at 0.05 mm takes 100 chords', () => {
    // 2π / (2·acos(1 − 0.05/100)) = 99.3
    expect(flatten([arc(point(0, 0), mm(100), radians(0), radians(2 * Math.PI))])).toHaveLength(101);
  });

  test('a speck smaller than the tolerance keeps a few points', () => {
    expect(flatten([arc(point(0, 0), mm(0.01), radians(0), radians(2 * Math.PI))])).toHaveLength(5);
  });
});
