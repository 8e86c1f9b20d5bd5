import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { isClosed } from './check.ts';
import { lengthOf, pointAt, polyline, reversed, stretch, tangentAt } from './path.ts';
import { distance, point } from './point.ts';
import { arc, line } from './segment.ts';
import { anyPanel, numbers } from './testing/panels.ts';

const seed = 54;
/** Across 100, round a quarter of radius 50, down 100. */
const hook = [
  line(point(0, 0), point(100, 0)),
  arc(point(100, 50), mm(50), radians(-Math.PI / 2), radians(Math.PI / 2)),
  line(point(150, 50), point(150, 150)),
];

describe('paths', () => {
  test('a closed polyline comes back to its first point, once', () => {
    const corners = [point(0, 0), point(300, 0), point(300, 400)];
    expect(polyline(corners)).toHaveLength(2);
    expect(lengthOf(polyline(corners, { closed: true }))).toBe(1200);
    expect(polyline([...corners, point(0, 0)], { closed: true })).toHaveLength(3);
    expect(polyline([])).toEqual([]);
  });

  test('distance along is measured round the bend', () => {
    expect(lengthOf(hook)).toBeCloseTo(200 + 25 * Math.PI, 10);
    const bend = pointAt(hook, mm(100 + 12.5 * Math.PI));
    expect(bend.x).toBeCloseTo(100 + 50 * Math.SQRT1_2, 10);
    expect(bend.y).toBeCloseTo(50 - 50 * Math.SQRT1_2, 10);
    expect(tangentAt(hook, mm(100 + 12.5 * Math.PI)).x).toBeCloseTo(Math.SQRT1_2, 10);
    expect(tangentAt(hook, mm(20))).toEqual(point(1, 0));
  });

  test('before the start and past the end are the ends', () => {
    expect(pointAt(hook, mm(-5))).toEqual(point(0, 0));
    expect(pointAt(hook, mm(5000))).toEqual(point(150, 150));
    expect(tangentAt(hook, mm(5000))).toEqual(point(0, 1));
    expect(pointAt([], mm(5))).toEqual(point(0, 0));
    expect(tangentAt([], mm(5))).toEqual(point(1, 0));
  });

  test('a stretch begins and ends where it is measured, and is as long', () => {
    fc.assert(
      fc.property(anyPanel, numbers(0, 1), numbers(0, 1), (panel, s, t) => {
        const path = panel.flat();
        const whole = lengthOf(path);
        const [from, to] = [mm(Math.min(s, t) * whole), mm(Math.max(s, t) * whole)];
        const part = stretch(path, from, to);
        expect(lengthOf(part)).toBeCloseTo(to - from, 6);
        if (to - from < 1e-3) return;
        expect(distance(pointAt(part, mm(0)), pointAt(path, from))).toBeLessThan(1e-6);
        expect(distance(pointAt(part, lengthOf(part)), pointAt(path, to))).toBeLessThan(1e-6);
      }),
      { seed, numRuns: 500 },
    );
  });

  test('travelled the other way, the same points come in the other order', () => {
    fc.assert(
      fc.property(anyPanel, numbers(0, 1), (panel, t) => {
        const path = panel.flat();
        const whole = lengthOf(path);
        const back = reversed(path);
        expect(isClosed(back, mm(1e-6))).toBe(true);
        expect(distance(pointAt(back, mm((1 - t) * whole)), pointAt(path, mm(t * whole)))).toBeLessThan(1e-6);
      }),
      { seed, numRuns: 300 },
    );
  });
});
