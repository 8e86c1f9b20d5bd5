import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { patience, runs } from '../testing/runs.ts';
import type { Corner, Outline } from './job.ts';
import { noFitOf } from './noFit.ts';
import { depthBetween, noMeetings, OFTEN, overlapsOf, wayBetween } from './overlaps.ts';
import { boxOf, isSimple, isWithin, tidied, twiceArea } from './polygon.ts';
import { solidOf } from './solid.ts';
import type { Shape } from './shapes.ts';
import { anyOutline } from './testing/jobs.ts';

const whole = anyOutline
  .map((outline) => tidied(outline.map(({ x, y }) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) }))))
  .filter((outline) => outline.length > 2 && isSimple(outline));

const shapeOf = (outline: Outline): Shape => {
  const box = boxOf(outline);
  const area = twiceArea(outline) / 2;
  return { item: 0, rotation: 0, mirrored: false, outline, body: box, box, area, hullArea: area };
};

/** From a place to an outline, corner to corner. */
function distanceTo(outline: Outline, { x, y }: Corner): number {
  const each = outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const t = Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(from.x + t * dx - x, from.y + t * dy - y);
  });
  return Math.min(...each);
}

const share = evenly(0, 1);

test(
  'the depth is the distance to the nearest edge of the no-fit polygon, and the way out leads there',
  () => {
    fc.assert(
      fc.property(
        whole,
        whole,
        fc.array(fc.tuple(share, share), { minLength: 40, maxLength: 40 }),
        fc.boolean(),
        share,
        (a, b, shares, isAskedOften, part) => {
          const { outlines } = noFitOf(solidOf(a), solidOf(b));
          const overlaps = overlapsOf([shapeOf(a), shapeOf(b)], noMeetings());
          const box = boxOf(outlines.flat());
          // By every edge, or by the grid that is laid once it pays.
          for (let i = 0; i < OFTEN && isAskedOften; i++) depthBetween(overlaps, 0, 1, 0, 0, Infinity);
          expect(overlaps.meetings.grids.wholeUsed > 0).toBe(isAskedOften);
          for (const [acrossX, acrossY] of shares) {
            const x = Math.round(box.left + acrossX * (box.right - box.left));
            const y = Math.round(box.low + acrossY * (box.high - box.low));
            const inside = outlines.filter((outline) => isWithin(outline, { x, y })).length % 2 === 1;
            const away = Math.min(...outlines.map((outline) => distanceTo(outline, { x, y })));
            const depth = depthBetween(overlaps, 0, 1, x, y, Infinity);
            // On the very edge it counts as either.
            if (away < 1e-3) expect(depth).toBeLessThan(1e-3);
            else expect(Math.abs(depth - (inside ? away : 0))).toBeLessThan(1e-3);
            const enough = part * Math.max(box.right - box.left, box.high - box.low);
            const told = depthBetween(overlaps, 0, 1, x, y, enough);
            expect(told === Infinity ? depth >= enough : told === depth).toBe(true);
            expect(depthBetween(overlaps, 0, 1, x, y, depth + 1e-3)).toBe(depth);
            if (depth < 1) continue;
            const way = new Float64Array(2);
            expect(wayBetween(overlaps, 0, 1, x, y, way)).toBeCloseTo(depth, 3);
            const [outX = NaN, outY = NaN] = way;
            expect(Math.hypot(outX, outY)).toBeCloseTo(1, 6);
            const reached = { x: x + depth * outX, y: y + depth * outY };
            expect(Math.min(...outlines.map((outline) => distanceTo(outline, reached)))).toBeLessThan(1);
          }
        },
      ),
      { numRuns: runs(100) },
    );
  },
  patience.timeout,
);

test(
  'shapes that are quarter turns of one another lie as deep in one another as if each were known by itself',
  () => {
    const turns = [0, 1, 2, 3];
    const turn = (outline: Outline, by: number): Corner[] =>
      outline.map(
        ({ x, y }) =>
          [
            { x, y },
            { x: 0 - y, y: x },
            { x: 0 - x, y: 0 - y },
            { x: y, y: 0 - x },
          ][by] ?? { x, y },
      );
    fc.assert(
      fc.property(
        whole,
        whole,
        fc.array(fc.tuple(share, share), { minLength: 8, maxLength: 8 }),
        fc.boolean(),
        (a, b, shares, isAskedOften) => {
          const all = [a, b].flatMap((outline) => turns.map((by) => turn(outline, by)));
          const together = overlapsOf(all.map(shapeOf), noMeetings());
          for (const [i, one] of all.entries())
            for (const [j, other] of all.entries()) {
              for (let k = 0; k < OFTEN && isAskedOften; k++) depthBetween(together, i, j, 0, 0, Infinity);
              const alone = overlapsOf([shapeOf(one), shapeOf(other)], noMeetings());
              const box = boxOf(noFitOf(solidOf(one), solidOf(other)).outlines.flat());
              for (const [acrossX, acrossY] of shares) {
                const x = Math.round(box.left + acrossX * (box.right - box.left));
                const y = Math.round(box.low + acrossY * (box.high - box.low));
                // Corners of a no-fit polygon are rounded to whole units, one way round or the other.
                const apart =
                  depthBetween(together, i, j, x, y, Infinity) - depthBetween(alone, 0, 1, x, y, Infinity);
                expect(Math.abs(apart)).toBeLessThan(30);
              }
            }
        },
      ),
      { numRuns: runs(8) },
    );
  },
  patience.timeout,
);
