import {
  difference,
  EndType,
  FillRule,
  inflatePaths,
  JoinType,
  type Path64,
  type Paths64,
} from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { patience, runs } from '../testing/runs.ts';
import { grown } from './grow.ts';
import type { Corner, Outline } from './job.ts';
import { twiceArea } from './polygon.ts';
import { anyOutline } from './testing/jobs.ts';
import { turned } from './turn.ts';

const whole = (outline: Outline, degrees: number): Corner[] =>
  outline
    .map((corner) => turned(corner, degrees, false))
    .map(({ x, y }) => ({ x: Math.round(1000 * x), y: Math.round(1000 * y) }));

/** Rounded by the polygon clipping library clipper2-ts, to a twentieth of a unit. */
const rounded = (outline: Outline, by: number): Paths64 => {
  const path: Path64 = twiceArea(outline) < 0 ? outline.toReversed() : [...outline];
  return inflatePaths([path], by, JoinType.Round, EndType.Polygon, 2, 0.05);
};

/** How thick what of a lies beyond b is at most, in units. */
function beyond(a: Paths64, b: Paths64): number {
  const parts = difference(a, b, FillRule.NonZero);
  return Math.max(0, ...parts.map((part) => twiceArea(part) / roundOf(part)));
}
const roundOf = (path: Path64): number =>
  path.reduce((sum, { x, y }, i) => {
    const next = path[(i + 1) % path.length] ?? { x, y };
    return sum + Math.hypot(next.x - x, next.y - y);
  }, 1);

test(
  'a grown outline is nowhere nearer than the distance, and its corners stand out little',
  patience,
  () => {
    fc.assert(
      fc.property(
        anyOutline,
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 50, max: 20_000 }),
        (outline, degrees, by) => {
          const turnedSo = whole(outline, degrees);
          const found: Paths64 = [grown(turnedSo, by).map((corner) => ({ ...corner }))];
          expect(beyond(rounded(turnedSo, by), found)).toBeLessThan(1.5);
          // The ends of a straight cut are farthest off where an edge turns back: by the root of 2.
          const [largest = []] = rounded(turnedSo, Math.SQRT2 * by + 3).toSorted(
            (a, b) => twiceArea(b) - twiceArea(a),
          );
          expect(beyond(found, [largest])).toBeLessThan(1.5);
        },
      ),
      { numRuns: runs(300) },
    );
  },
);

test('a corner whose cut stands upright is as far off as any', () => {
  // 294 × 1000, mirrored and turned by 225°: the library's own cut came within 4,447 units.
  const outline = [
    { x: 707107, y: -707107 },
    { x: 914996, y: -499217 },
    { x: 207889, y: 207889 },
    { x: 0, y: 0 },
  ];
  expect(
    beyond(rounded(outline, 6250), [grown(outline, 6250).map((corner) => ({ ...corner }))]),
  ).toBeLessThan(1.5);
});
