import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { isClosed, selfIntersects } from './check.ts';
import { polyline } from './path.ts';
import { point } from './point.ts';
import { arc, line } from './segment.ts';
import { anyPanel, ringPanel } from './testing/panels.ts';

const square = polyline([point(0, 0), point(10, 0), point(10, 10), point(0, 10)], { closed: true });

describe('checks', () => {
  test('an outline is closed when every segment begins where the last one ended', () => {
    expect(isClosed(square)).toBe(true);
    expect(isClosed(square.slice(1))).toBe(false);
    expect(isClosed([line(point(0, 0), point(10, 0)), line(point(10, 0.4), point(0, 0))], mm(0.5))).toBe(
      true,
    );
    expect(isClosed([line(point(0, 0), point(10, 0)), line(point(10, 0.4), point(0, 0))], mm(0.3))).toBe(
      false,
    );
    expect(isClosed([])).toBe(false);
  });

  test('every panel is closed and does not cross itself', () => {
    fc.assert(
      fc.property(anyPanel, (panel) => {
        expect(isClosed(panel.flat(), mm(1e-6))).toBe(true);
        expect(selfIntersects(panel.flat())).toBe(false);
      }),
      { seed: 8, numRuns: 1000 },
    );
  });

  test('a bow tie crosses itself, and so does a ring of more than a turn', () => {
    const tie = polyline([point(0, 0), point(10, 10), point(10, 0), point(0, 10)], { closed: true });
    expect(selfIntersects(tie)).toBe(true);
    expect(selfIntersects(ringPanel(100, 200, 2 * Math.PI + 0.2).flat())).toBe(true);
    expect(selfIntersects([arc(point(0, 0), mm(5), radians(0), radians(2 * Math.PI))])).toBe(false);
  });

  test('a side that folds back on its neighbour crosses it, a half moon does not', () => {
    const fold = polyline([point(0, 0), point(10, 0), point(4, 0), point(4, 8)], { closed: true });
    expect(selfIntersects(fold)).toBe(true);
    const moon = [arc(point(0, 0), mm(10), radians(0), radians(Math.PI)), line(point(-10, 0), point(10, 0))];
    expect(selfIntersects(moon)).toBe(false);
  });
});
