import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { offsetSegment } from './offset.ts';
import { point } from './point.ts';
import { arc, directionOn, lengthOfSegment, line, pointOn } from './segment.ts';
import { anySegment, numbers } from './testing/panels.ts';

describe('the parallel of a segment', () => {
  test('to the left of a line drawn to the right is up the sheet', () => {
    expect(offsetSegment(line(point(0, 50), point(100, 50)), mm(10))).toEqual(
      line(point(0, 40), point(100, 40)),
    );
    expect(offsetSegment(line(point(0, 50), point(100, 50)), mm(-10))).toEqual(
      line(point(0, 60), point(100, 60)),
    );
  });

  test('to the left of a clockwise arc is outward', () => {
    const clockwise = arc(point(0, 0), mm(100), radians(0), radians(1));
    expect(offsetSegment(clockwise, mm(10))).toMatchObject({ radius: 110, sweep: 1 });
    expect(offsetSegment(arc(point(0, 0), mm(100), radians(1), radians(-1)), mm(10))).toMatchObject({
      radius: 90,
    });
  });

  test('past its centre an arc is gone', () => {
    expect(lengthOfSegment(offsetSegment(arc(point(0, 0), mm(20), radians(0), radians(1)), mm(-30)))).toBe(0);
  });

  test('every point moves square to the way, to its left', () => {
    fc.assert(
      fc.property(anySegment, numbers(-300, 300), numbers(0, 1), (segment, by, t) => {
        fc.pre(segment.kind === 'line' ? lengthOfSegment(segment) > 1e-3 : segment.radius > Math.abs(by));
        const [from, to] = [pointOn(segment, t), pointOn(offsetSegment(segment, mm(by)), t)];
        const along = directionOn(segment, t);
        expect(to.x - from.x).toBeCloseTo(along.y * by, 7);
        expect(to.y - from.y).toBeCloseTo(-along.x * by, 7);
      }),
      { seed: 4, numRuns: 1000 },
    );
  });
});
