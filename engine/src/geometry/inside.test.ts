import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { contains } from './inside.ts';
import { distanceTo } from './nearest.ts';
import { lengthOf, pointAt, polyline, reversed } from './path.ts';
import { point } from './point.ts';
import { arc, line } from './segment.ts';
import { anyPanel, numbers, ringPanel } from './testing/panels.ts';
import { mirrorX } from './transform.ts';

describe('contains', () => {
  test('a point of a ring sector is told by its radius and its angle', () => {
    fc.assert(
      fc.property(
        fc.tuple(numbers(50, 900), numbers(60, 900), numbers(0.05, 6.25)),
        numbers(0, 2500),
        numbers(-3.1, 3.1),
        ([inner, length, sweep], away, angle) => {
          const outline = ringPanel(inner, inner + length, sweep).flat();
          const at = point(away * Math.cos(Math.PI / 2 + angle), away * Math.sin(Math.PI / 2 + angle));
          fc.pre(distanceTo(outline, at) > 1e-3);
          expect(contains(outline, at)).toBe(
            away > inner && away < inner + length && Math.abs(angle) < sweep / 2,
          );
        },
      ),
      { seed: 12, numRuns: 3000 },
    );
  });

  test('level with its corners, too', () => {
    const outline = ringPanel(100, 300, Math.PI).flat();
    for (const [x, y, is] of [
      [0, 0, false],
      [0, 50, false],
      [0, 150, true],
      [-200, 0, true],
      [200, 1e-12, true],
      [0, 300.001, false],
      [-400, 0, false],
      [400, 0, false],
    ] as const)
      expect(contains(outline, point(x, y)), `${x}, ${y}`).toBe(is);
  });

  test('on the common chord of two half circles, lying and upright', () => {
    // So far out, the ends of the arcs round to the very level of the centre, and the chord runs through every point.
    const centre = point(1000, 1000);
    const halves = (start: number) =>
      [start, start + Math.PI].map((from) => arc(centre, mm(100), radians(from), radians(Math.PI)));
    for (const off of [-99, -1, 0, 1, 99]) {
      expect(contains(halves(0), point(1000 + off, 1000)), `lying, ${off}`).toBe(true);
      expect(contains(halves(Math.PI / 2), point(1000, 1000 + off)), `upright, ${off}`).toBe(true);
    }
    expect(contains(halves(0), point(1101, 1000))).toBe(false);
    expect(contains(halves(Math.PI / 2), point(1000, 899))).toBe(false);
  });

  test('on the chord between a rounded end and the rest, whichever side is round', () => {
    // A square of 200 with a half circle to its right, or to its left.
    const round = [
      arc(point(1000, 1000), mm(100), radians(-Math.PI / 2), radians(Math.PI)),
      ...polyline([point(1000, 1100), point(800, 1100), point(800, 900), point(1000, 900)]),
    ];
    for (const outline of [round, mirrorX(round, 1000), reversed(round), reversed(mirrorX(round, 1000))])
      for (const off of [-99, -1, 0, 1, 99])
        expect(contains(outline, point(1000, 1000 + off)), `${off}`).toBe(true);
  });

  test('a full circle in one arc holds its middle', () => {
    const whole = [arc(point(5, 5), mm(10), radians(0.3), radians(2 * Math.PI))];
    expect(contains(whole, point(5, 5))).toBe(true);
    expect(contains(whole, point(5, 16))).toBe(false);
  });

  test('the outline itself counts as in', () => {
    fc.assert(
      fc.property(anyPanel, numbers(0, 1), (panel, t) => {
        const outline = panel.flat();
        expect(contains(outline, pointAt(outline, mm(t * lengthOf(outline))))).toBe(true);
      }),
      { seed: 12, numRuns: 1000 },
    );
  });

  test('distance is measured to the nearest of all segments', () => {
    const path = [
      line(point(0, 0), point(100, 0)),
      arc(point(100, 50), mm(50), radians(-Math.PI / 2), radians(Math.PI)),
    ];
    expect(distanceTo(path, point(-30, 40))).toBe(50);
    expect(distanceTo(path, point(100, 50))).toBe(50);
    expect(distanceTo(path, point(170, 50))).toBe(20);
    expect(distanceTo(path, point(100, 130))).toBeCloseTo(30, 12);
    expect(distanceTo([], point(0, 0))).toBe(Infinity);
  });
});
