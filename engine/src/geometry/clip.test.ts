import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { boundsOf } from './bounds.ts';
import { chordWithin } from './clip.ts';
import { contains } from './inside.ts';
import { distanceTo } from './nearest.ts';
import { lengthOf, pointAt, polyline, type Path } from './path.ts';
import { point } from './point.ts';
import { arc, line } from './segment.ts';
import { anyPanel, anySegment, numbers, ringPanel, trapezoid } from './testing/panels.ts';
import { translate } from './transform.ts';

const seed = 13;
const total = (paths: readonly Path[]): number => paths.reduce((sum, path) => sum + lengthOf(path), 0);

describe('a row across a panel', () => {
  test('straight across a flared panel grows evenly from top to bottom', () => {
    fc.assert(
      fc.property(
        numbers(100, 600),
        numbers(0, 400),
        numbers(200, 900),
        numbers(0.01, 0.99),
        (top, flare, length, t) => {
          const [row, ...more] = chordWithin(trapezoid(top, top + flare, length).flat(), [
            line(point(-2000, t * length), point(2000, t * length)),
          ]);
          expect(more).toEqual([]);
          expect(row && lengthOf(row)).toBeCloseTo(top + flare * t, 8);
        },
      ),
      { seed, numRuns: 500 },
    );
  });

  test('parallel to the hem of a ring sector is θ·ρ long', () => {
    fc.assert(
      fc.property(
        numbers(50, 900),
        numbers(100, 900),
        numbers(0.05, 6),
        numbers(0.01, 0.99),
        (inner, length, sweep, t) => {
          const radius = inner + t * length;
          const round = arc(point(0, 0), mm(radius), radians(-Math.PI / 2), radians(2 * Math.PI));
          const rows = chordWithin(ringPanel(inner, inner + length, sweep).flat(), [round]);
          expect(rows).toHaveLength(1);
          expect(total(rows)).toBeCloseTo(sweep * radius, 7);
        },
      ),
      { seed, numRuns: 500 },
    );
  });

  test('straight across a hollow panel comes in two parts, in order', () => {
    const rows = chordWithin(ringPanel(100, 300, Math.PI).flat(), [line(point(400, 60), point(-400, 60))]);
    expect(rows).toHaveLength(2);
    const [right, left] = rows;
    const long = Math.sqrt(300 ** 2 - 60 ** 2) - 80;
    expect(right && lengthOf(right)).toBeCloseTo(long, 9);
    expect(left && lengthOf(left)).toBeCloseTo(long, 9);
    expect(right && pointAt(right, mm(0)).x).toBeGreaterThan(0);
  });

  test('a chevron stays one path through its point', () => {
    const square = polyline([point(0, 0), point(100, 0), point(100, 100), point(0, 100)], { closed: true });
    const chevron = polyline([point(-50, 0), point(50, 100 - 1), point(150, 0)]);
    const rows = chordWithin(square, chevron);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toHaveLength(2);
  });

  test('along an edge is in, a touch at a corner is nothing', () => {
    const square = polyline([point(0, 0), point(100, 0), point(100, 100), point(0, 100)], { closed: true });
    expect(total(chordWithin(square, [line(point(-50, 100), point(150, 100))]))).toBeCloseTo(100, 10);
    expect(chordWithin(square, [line(point(-50, 50), point(50, -50))])).toEqual([]);
    expect(chordWithin(square, [line(point(-50, 200), point(150, 200))])).toEqual([]);
    expect(chordWithin(square, [line(point(0, 0), point(0, 0))])).toEqual([]);
  });

  test('a row through a corner of the outline is not parted there', () => {
    const kite = polyline([point(0, 0), point(100, 50), point(0, 100), point(50, 50)], { closed: true });
    const rows = chordWithin(kite, [line(point(0, 50), point(200, 50))]);
    expect(rows).toHaveLength(1);
    expect(total(rows)).toBeCloseTo(50, 10);
    const wide = polyline([point(0, 0), point(50, 50), point(100, 0), point(100, 100), point(0, 100)], {
      closed: true,
    });
    const touching = chordWithin(wide, [line(point(-10, 50), point(110, 50))]);
    expect(touching).toHaveLength(1);
    expect(touching[0]).toHaveLength(1);
    expect(total(touching)).toBeCloseTo(100, 10);
  });

  test('every part is inside, no longer than the row, and a row from an inner point begins there', () => {
    fc.assert(
      fc.property(anyPanel, anySegment, numbers(0, 1), (panel, shape, t) => {
        const outline = panel.flat();
        const { left, top, width, height } = boundsOf(outline);
        const middle = point(left + width / 2, top + height / 2);
        const row = translate([shape], middle.x, middle.y);
        const rows = chordWithin(outline, row);
        expect(total(rows)).toBeLessThanOrEqual(lengthOf(row) + 1e-9);
        for (const part of rows)
          expect(contains(outline, pointAt(part, mm(lengthOf(part) * (0.01 + 0.98 * t))))).toBe(true);
        fc.pre(distanceTo(outline, middle) > 1e-3 && contains(outline, middle));
        const [first] = chordWithin(outline, [line(middle, point(left + width + 9, middle.y))]);
        expect(first && pointAt(first, mm(0))).toEqual(middle);
      }),
      { seed, numRuns: 1000 },
    );
  });
});
