import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, radians } from '../units/index.ts';
import { between, distance, midpoint, point } from './point.ts';
import {
  arc,
  directionOn,
  endOf,
  lengthOfSegment,
  line,
  partOf,
  pointOn,
  reverse,
  shareAt,
  startOf,
} from './segment.ts';
import { anySegment, numbers } from './testing/panels.ts';

const seed = 54;

describe('points', () => {
  test('a 3-4-5 triangle, as set out with a string', () => {
    expect(distance(point(0, 0), point(300, 400))).toBe(500);
    expect(midpoint(point(0, 0), point(300, 400))).toEqual(point(150, 200));
    expect(between(point(10, 10), point(30, 50), 0.25)).toEqual(point(15, 20));
  });
});

describe('segments', () => {
  test('a positive sweep runs from +x towards +y, down the sheet', () => {
    const quarter = arc(point(0, 0), mm(100), radians(0), radians(Math.PI / 2));
    expect(startOf(quarter)).toEqual(point(100, 0));
    expect(endOf(quarter).x).toBeCloseTo(0, 12);
    expect(endOf(quarter).y).toBe(100);
    expect(directionOn(quarter, 0).y).toBe(1);
    expect(lengthOfSegment(quarter)).toBeCloseTo(157.0796, 4);
  });

  test('reversing swaps the ends and keeps the way', () => {
    fc.assert(
      fc.property(anySegment, numbers(0, 1), (segment, t) => {
        const back = reverse(segment);
        expect(distance(startOf(back), endOf(segment))).toBeLessThan(1e-9);
        expect(distance(pointOn(back, 1 - t), pointOn(segment, t))).toBeLessThan(1e-9);
        expect(lengthOfSegment(back)).toBe(lengthOfSegment(segment));
        expect(directionOn(back, 1 - t).x).toBeCloseTo(-directionOn(segment, t).x, 9);
      }),
      { seed, numRuns: 500 },
    );
  });

  test('a point on a segment tells its share of the length', () => {
    fc.assert(
      fc.property(anySegment, numbers(0, 1), (segment, t) => {
        fc.pre(lengthOfSegment(segment) > 1e-3);
        const found = shareAt(segment, pointOn(segment, t));
        expect(Math.abs(found - t) * lengthOfSegment(segment)).toBeLessThan(1e-7);
      }),
      { seed, numRuns: 1000 },
    );
  });

  test('what lies beyond an end has a share below 0 or above 1', () => {
    const flat = line(point(0, 0), point(100, 0));
    expect(shareAt(flat, point(-50, 3))).toBe(-0.5);
    expect(shareAt(flat, point(150, 3))).toBe(1.5);
    const quarter = arc(point(0, 0), mm(100), radians(0), radians(Math.PI / 2));
    expect(shareAt(quarter, point(50, -50))).toBeCloseTo(-0.5, 12);
    expect(shareAt(quarter, point(-50, 50))).toBeCloseTo(1.5, 12);
  });

  test('the parts of a segment add up to it', () => {
    fc.assert(
      fc.property(anySegment, numbers(0, 1), (segment, t) => {
        const [first, second] = [partOf(segment, 0, t), partOf(segment, t, 1)];
        expect(lengthOfSegment(first) + lengthOfSegment(second)).toBeCloseTo(lengthOfSegment(segment), 8);
        expect(distance(endOf(first), startOf(second))).toBeLessThan(1e-9);
      }),
      { seed, numRuns: 300 },
    );
  });

  test('a line of no length has a direction all the same', () => {
    expect(directionOn(line(point(1, 1), point(1, 1)), 0.5)).toEqual(point(1, 0));
    expect(shareAt(line(point(1, 1), point(1, 1)), point(5, 5))).toBe(0);
    expect(shareAt(arc(point(0, 0), mm(9), radians(1), radians(0)), point(5, 5))).toBe(0);
  });
});
