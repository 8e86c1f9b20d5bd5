import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { inches, mm, type Mm } from '../units/index.ts';
import { length } from './codes.ts';
import {
  hemNeededAt,
  levelWhereEnough,
  paces,
  readBody,
  walkerOf,
  type BodyMeasures,
  type Walker,
} from './index.ts';

const at = (level: number) => length(mm(level), 'body.atFloor');

const walks = (more: Partial<BodyMeasures> & { readonly height: Mm }): Walker => {
  const walker = walkerOf(
    readBody({ waist: inches(29), hip: inches(36), waistToHem: inches(31), pace: 'usual', ...more }),
  );
  if (!walker) throw new Error('a body with a height walks');
  return walker;
};

const heights = fc.double({ min: 750, max: 2100, noNaN: true }).map(mm);
const anyPace = fc.constantFrom(...paces);
const anyAge = fc.option(fc.double({ min: 0, max: 100, noNaN: true }), { nil: undefined });
const share = evenly(0, 0.6);

describe('room to walk', () => {
  test('a longer skirt never needs less, whatever the calf', () => {
    const calfShare = fc.option(fc.double({ min: 0.15, max: 0.45, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(heights, anyPace, anyAge, calfShare, share, share, (height, pace, age, calf, a, b) => {
        const body = calf === undefined ? {} : { calf: mm(calf * height) };
        const walker = walks({ height, pace, age, ...body });
        const [low, high] = [Math.min(a, b) * height, Math.max(a, b) * height];
        expect(hemNeededAt(walker, at(low)).bare.value).toBeGreaterThanOrEqual(
          hemNeededAt(walker, at(high)).bare.value - 1e-6,
        );
      }),
      { numRuns: 2000 },
    );
  });

  test('at the same hem height above the floor a taller person needs more', () => {
    const level = evenly(0, 0.5);
    fc.assert(
      fc.property(heights, heights, anyPace, anyAge, level, (a, b, pace, age, part) => {
        const [short, tall] = a < b ? [a, b] : [b, a];
        const hem = at(part * short);
        expect(hemNeededAt(walks({ height: tall, pace, age }), hem).bare.value).toBeGreaterThanOrEqual(
          hemNeededAt(walks({ height: short, pace, age }), hem).bare.value - 1e-6,
        );
      }),
      { numRuns: 2000 },
    );
  });

  test('brisk needs more than usual, usual more than easy', () => {
    const bare = paces.map((pace) => hemNeededAt(walks({ height: mm(1650), pace }), at(200)).bare.value);
    expect(bare.toSorted((a, b) => a - b)).toEqual(bare);
    expect(new Set(bare).size).toBe(3);
  });

  test('a fuller calf than usual needs more at mid calf', () => {
    const usual = hemNeededAt(walks({ height: mm(1650) }), at(300)).bare.value;
    expect(hemNeededAt(walks({ height: mm(1650), calf: mm(480) }), at(300)).bare.value).toBeGreaterThan(
      usual,
    );
  });

  test('a usual calf measured changes nothing', () => {
    const height = mm(1650);
    const measured = walks({ height, calf: mm(0.2293 * height) });
    for (const level of [0, 100, 300, 500, 700])
      expect(hemNeededAt(measured, at(level)).bare.value).toBeCloseTo(
        hemNeededAt(walks({ height }), at(level)).bare.value,
        6,
      );
  });

  test('above the hip a skirt needs no step at all, only the leg', () => {
    const walker = walks({ height: mm(1650) });
    expect(hemNeededAt(walker, at(1200)).bare.value).toBeCloseTo(0.3785 * 1650, 6);
  });
});

describe('the curve read backwards', () => {
  test('at the level it gives, the hem is just enough; below it, not', () => {
    const around = fc.double({ min: 300, max: 2500, noNaN: true }).map((value) => at(value));
    fc.assert(
      fc.property(
        heights,
        anyPace,
        around,
        fc.constantFrom('bare', 'everyday'),
        (height, pace, hem, which) => {
          const walker = walks({ height, pace });
          const level = levelWhereEnough(walker, hem, which);
          const needed = (above: number) => hemNeededAt(walker, at(above))[which].value;
          if (!level) {
            expect(needed(walker.hipHeight.value)).toBeGreaterThan(hem.value);
            return;
          }
          expect(needed(level.value)).toBeLessThanOrEqual(hem.value + 1e-6);
          if (level.value > 1) expect(needed(level.value - 1)).toBeGreaterThan(hem.value);
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('a slit in a 100 cm hem to the ankle reaches above the knee of a person of 165 cm', () => {
    const walker = walks({ height: mm(1650) });
    expect(levelWhereEnough(walker, at(1000))?.value).toBeGreaterThan(walker.kneeHeight.value);
  });
});
