import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { areaOf, signedAreaOf } from './area.ts';
import { lengthOf, polyline, reversed } from './path.ts';
import { point } from './point.ts';
import { arc } from './segment.ts';
import { anyPanel, numbers, ringPanel, trapezoid } from './testing/panels.ts';
import { translate } from './transform.ts';

const seed = 61;

describe('area', () => {
  test('clockwise on the sheet is positive', () => {
    const square = polyline([point(0, 0), point(10, 0), point(10, 10), point(0, 10)], { closed: true });
    expect(signedAreaOf(square)).toBe(100);
    expect(signedAreaOf(reversed(square))).toBe(-100);
    expect(areaOf(reversed(square))).toBe(100);
    expect(areaOf([])).toBe(0);
  });

  test('an open path is closed by a straight line', () => {
    expect(areaOf(polyline([point(0, 0), point(10, 0), point(10, 10)]))).toBe(50);
    expect(areaOf([arc(point(7, 9), mm(10), radians(1), radians(Math.PI))])).toBeCloseTo(50 * Math.PI, 10);
  });

  test('a full circle in one arc', () => {
    expect(areaOf([arc(point(0, 0), mm(100), radians(2), radians(-2 * Math.PI))])).toBeCloseTo(
      Math.PI * 1e4,
      8,
    );
  });

  test('a trapezoid is its mean width times its height', () => {
    fc.assert(
      fc.property(numbers(1, 900), numbers(1, 900), numbers(1, 900), (top, bottom, length) => {
        expect(areaOf(trapezoid(top, bottom, length).flat())).toBeCloseTo(((top + bottom) / 2) * length, 6);
      }),
      { seed, numRuns: 300 },
    );
  });

  test('a ring sector is θ(R² − r²)/2, its edges θr, θR and twice R − r', () => {
    fc.assert(
      fc.property(numbers(20, 5000), numbers(50, 1500), numbers(0.01, 6.2), (inner, length, sweep) => {
        const outer = inner + length;
        const panel = ringPanel(inner, outer, sweep);
        const exact = (sweep * (outer * outer - inner * inner)) / 2;
        expect(areaOf(panel.flat()) / exact).toBeCloseTo(1, 10);
        expect(lengthOf(panel.flat())).toBeCloseTo(sweep * (inner + outer) + 2 * length, 7);
      }),
      { seed, numRuns: 500 },
    );
  });

  test('far from the corner of the sheet nothing is lost', () => {
    fc.assert(
      fc.property(anyPanel, (panel) => {
        const outline = panel.flat();
        expect(areaOf(translate(outline, 1e6, -1e6)) / areaOf(outline)).toBeCloseTo(1, 8);
      }),
      { seed, numRuns: 300 },
    );
  });
});
