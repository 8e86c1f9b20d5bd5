// Outside source: clipper2-ts, areas of what a polygon leaves out and what it adds.
import { areaD, areaPathsD, differenceD, FillRule, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boundsOf, flatten, lengthOf } from '../../geometry/index.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyCut } from '../../testing/cuts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { planOf } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { patience, runs } from '../../testing/runs.ts';
import { mm } from '../../units/index.ts';
import { outwards } from './outwards.ts';

const clockwise = (path: PathD): PathD => (areaD(path) < 0 ? path.toReversed() : path);

test(
  'the polygon of a piece contains it, within its box, and adds no more than 0.2 mm all round',
  () => {
    fc.assert(
      fc.property(anyBody, anyCut, anyWaist, anyExtras, (body, cut, waist, extras) => {
        const { skirt } = planOf({ body, cut, waist, extras });
        for (const { shape } of [...skirt.panels, ...skirt.parts]) {
          const corners = outwards(shape.cut);
          const polygon = clockwise(corners.map(({ x, y }) => ({ x, y })));
          const piece = clockwise(flatten(shape.cut, mm(0.001)).map(({ x, y }) => ({ x, y })));
          const left = Math.abs(areaPathsD(differenceD([piece], [polygon], FillRule.NonZero, 4)));
          const added = Math.abs(areaPathsD(differenceD([polygon], [piece], FillRule.NonZero, 4)));
          const round = lengthOf(shape.cut);
          // Rounding to 10⁻⁴ mm, all round.
          expect(left).toBeLessThan(1e-3 * round);
          expect(added).toBeLessThan(0.2 * round);
          const box = boundsOf(shape.cut);
          for (const { x, y } of corners) {
            expect(x).toBeGreaterThan(box.left - 1e-6);
            expect(x).toBeLessThan(box.right + 1e-6);
            expect(y).toBeGreaterThan(box.top - 1e-6);
            expect(y).toBeLessThan(box.bottom + 1e-6);
          }
        }
      }),
      { numRuns: runs(40) },
    );
  },
  patience.timeout,
);
