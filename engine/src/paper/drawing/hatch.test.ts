import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arc, areaOf, contains, distance, point, polyline } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import { DOT_RADIUS, HATCH_SPACING, hatch } from './hatch.ts';
import { rectanglePath } from './make.ts';

const lengthOfLines = (of: ReturnType<typeof hatch>) =>
  of.lines.reduce((sum, { a, b }) => sum + distance(a, b), 0);

describe('hatching', () => {
  // Parallel lines d apart cover an area A with A / d of line, on average over where they begin (Cavalieri).
  test('lines a spacing apart are as long as the area over the spacing', () => {
    const ring = [arc(point(0, 0), mm(60), radians(0), radians(2 * Math.PI))];
    const hole = rectanglePath(-20, -20, 40, 40);
    const expected = (areaOf(ring) - areaOf(hole)) / HATCH_SPACING;
    expect(lengthOfLines(hatch([ring, hole], 'diagonal')) / expected).toBeCloseTo(1, 2);
    expect(lengthOfLines(hatch([ring, hole], 'cross')) / expected).toBeCloseTo(2, 2);
  });

  test('lines stay within the area and out of its holes', () => {
    const outline = polyline([point(0, 0), point(50, 7), point(31, 44), point(12, 20)], { closed: true });
    const hole = rectanglePath(20, 12, 8, 6);
    const { lines } = hatch([outline, hole], 'cross');
    expect(lines.length).toBeGreaterThan(10);
    for (const { a, b } of lines)
      for (const share of [0.01, 0.5, 0.99]) {
        const at = point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
        expect(contains(outline, at)).toBe(true);
        expect(contains(hole, at)).toBe(false);
      }
  });

  test('dots lie wholly in the area', () => {
    const { dots } = hatch([rectanglePath(1, 1, 30, 20)], 'dots');
    expect(dots.length).toBeGreaterThan(100);
    for (const { x, y } of dots) {
      expect(x).toBeGreaterThanOrEqual(1 + DOT_RADIUS);
      expect(x).toBeLessThanOrEqual(31 - DOT_RADIUS);
      expect(y).toBeGreaterThanOrEqual(1 + DOT_RADIUS - 1e-9);
      expect(y).toBeLessThanOrEqual(21 - DOT_RADIUS + 1e-9);
    }
  });

  test('an area cut in two carries as much line as the whole', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 75, noNaN: true }), (at) => {
        const whole = lengthOfLines(hatch([rectanglePath(0, 0, 80, 33)], 'diagonal'));
        const parts = [rectanglePath(0, 0, at, 33), rectanglePath(at, 0, 80 - at, 33)];
        const sum = parts.reduce((all, part) => all + lengthOfLines(hatch([part], 'diagonal')), 0);
        expect(sum).toBeCloseTo(whole, 6);
      }),
      { numRuns: 40 },
    );
  });

  test('no pattern, an empty path and a bare line carry nothing', () => {
    expect(hatch([rectanglePath(0, 0, 9, 9)], 'none')).toEqual({ lines: [], dots: [] });
    expect(hatch([[]], 'cross')).toEqual({ lines: [], dots: [] });
    expect(hatch([polyline([point(0, 0), point(9, 9)])], 'dots')).toEqual({ lines: [], dots: [] });
  });
});
