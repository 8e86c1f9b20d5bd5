import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { boundsOf } from './bounds.ts';
import { flatten } from './flatten.ts';
import { point } from './point.ts';
import { arc } from './segment.ts';
import { anySegment, ringPanel } from './testing/panels.ts';

describe('bounds', () => {
  test('a half circle on its side reaches its full radius', () => {
    const half = [arc(point(10, 20), mm(100), radians(-Math.PI / 2), radians(Math.PI))];
    const { left, right, top, bottom } = boundsOf(half);
    expect([left, right, top, bottom].map((each) => Math.round(each * 1e6) / 1e6)).toEqual([
      10, 110, -80, 120,
    ]);
  });

  test('a panel cut as a ring sector takes r(1 − cos θ/2) more depth of cloth than its length', () => {
    const [inner, length, sweep] = [600, 700, 1.1];
    const { height, width } = boundsOf(ringPanel(inner, inner + length, sweep).flat());
    expect(height).toBeCloseTo(length + inner * (1 - Math.cos(sweep / 2)), 9);
    expect(width).toBeCloseTo(2 * (inner + length) * Math.sin(sweep / 2), 9);
  });

  test('hold every point of a segment, and no more than they must', () => {
    fc.assert(
      fc.property(anySegment, (segment) => {
        const tolerance = 0.01;
        const box = boundsOf([segment]);
        const points = flatten([segment], mm(tolerance));
        const xs = points.map(({ x }) => x);
        const ys = points.map(({ y }) => y);
        for (const [low, high, all] of [
          [box.left, box.right, xs],
          [box.top, box.bottom, ys],
        ] as const) {
          expect(Math.min(...all) - low).toBeGreaterThan(-1e-9);
          expect(Math.min(...all) - low).toBeLessThan(tolerance);
          expect(high - Math.max(...all)).toBeGreaterThan(-1e-9);
          expect(high - Math.max(...all)).toBeLessThan(tolerance);
        }
      }),
      { seed: 5, numRuns: 1000 },
    );
  });

  test('of nothing are empty', () => {
    expect(boundsOf([]).width).toBe(0);
  });
});
