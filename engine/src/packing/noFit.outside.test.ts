// Outside source: the clipping library's own Minkowski sum (clipper2-ts), which sweeps one outline along the other.
import { areaPaths, difference, FillRule, intersect, minkowskiSum, union, type Path64 } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { patience, runs } from '../testing/runs.ts';
import { convexParts } from './convexParts.ts';
import type { Outline } from './job.ts';
import { noFitOf } from './noFit.ts';
import { boxOf, isConvex, isSimple, tidied, twiceArea } from './polygon.ts';
import { solidOf } from './solid.ts';
import { anyOutline } from './testing/jobs.ts';

const whole = anyOutline
  .map((outline) => tidied(outline.map(({ x, y }) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) }))))
  .filter((outline) => outline.length > 2 && isSimple(outline));
const path = (outline: Outline): Path64 => outline.map(({ x, y }) => ({ x, y }));

test(
  'a no-fit polygon covers what one outline swept round the other does, and all within',
  () => {
    fc.assert(
      fc.property(whole, whole, (a, b) => {
        const back = b.map(({ x, y }) => ({ x: -x, y: -y }));
        const moved = (outline: Outline, by = outline[0]) =>
          outline.map(({ x, y }) => ({ x: x + (by?.x ?? 0), y: y + (by?.y ?? 0) }));
        const swept = union(
          [...minkowskiSum(path(back), path(a), true), moved(a, back[0]), moved(back, a[0])],
          FillRule.NonZero,
        );
        const found = noFitOf(solidOf(a), solidOf(b)).outlines.map(path);
        const apart = (one: Path64[], other: Path64[]): number =>
          Math.abs(areaPaths(difference(one, other, FillRule.NonZero)));
        // Corners are rounded to whole units: a hair's breadth all round.
        const box = boxOf(swept.flat());
        const hair = 40 * 4 * (box.right - box.left + box.high - box.low);
        expect(apart(swept, found)).toBeLessThan(hair);
        expect(apart(found, swept)).toBeLessThan(hair);
      }),
      { numRuns: runs(150) },
    );
  },
  patience.timeout,
);

test('convex parts are convex, lie side by side and make up the whole', () => {
  fc.assert(
    fc.property(whole, (outline) => {
      const parts = convexParts(outline);
      for (const part of parts) expect(isConvex(tidied(part))).toBe(true);
      const sum = parts.reduce((all, part) => all + twiceArea(part), 0);
      expect(sum).toBe(twiceArea(outline));
      for (const [i, one] of parts.entries())
        for (const other of parts.slice(i + 1))
          expect(Math.abs(areaPaths(intersect([path(one)], [path(other)], FillRule.NonZero)))).toBeLessThan(
            2e6,
          );
    }),
    { numRuns: runs(150) },
  );
});
