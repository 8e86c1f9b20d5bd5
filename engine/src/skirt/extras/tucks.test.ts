import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepFor } from '../../body/index.ts';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { anyRequest } from '../../testing/requests.ts';
import { endlessIn } from '../../testing/endlessIn.ts';
import { inches } from '../../units/index.ts';

const child = {
  waist: '22 in',
  hip: '26 in',
  waistToHem: '20 in',
  height: '48 in',
  waistToFloor: '29 in',
  age: 8,
};
const tucked = (tucks: object, more: object = {}) =>
  draftOf({ body: child, ...more, extras: { tucks } }).skirt;

const asked = fc.tuple(anyRequest, anyExtras);
const every = samples(
  asked.map(([raw, extras]) => ({ ...raw, extras: { ...extras, tucks: extras['tucks'] ?? {} } })),
  (raw) => ({ ...draftOf(raw), without: draftOf({ ...raw, extras: {} }).skirt }),
  700,
);

describe('growth tucks', () => {
  test('of 2 in to let down are one tuck of 1 in, which takes up twice its depth', () => {
    const { extras, panelLength, finishedLength } = tucked({});
    expect(extras.tucks).toMatchObject({ how: 'tucks', count: { value: 1 }, depth: { value: inches(1) } });
    expect(panelLength.value - finishedLength.value).toBeCloseTo(inches(2), 6);
  });

  test('of 4 in are two', () => {
    expect(tucked({ letsDown: '4 in' }).extras.tucks?.count.value).toBe(2);
    expect(tucked({ letsDown: '4 in', count: 4 }).extras.tucks?.depth.value).toBe(inches(0.5));
  });

  test('on a circle pucker, on straight widths lie flat', () => {
    const puckers = (cut: object): boolean => codesOf(tucked({}, { cut })).includes('skirt.tuckOnCurve');
    expect(puckers({ kind: 'gathered' })).toBe(false);
    expect(puckers({ hemAtFold: '24 in' })).toBe(true);
  });

  test('without a forecast of the growth say so where months were named', () => {
    expect(codesOf(tucked({ months: 12 }))).toContain('skirt.tucksNoForecast');
    expect(codesOf(tucked({ months: 12, letsDown: '1 in' }))).not.toContain('skirt.tucksNoForecast');
  });

  test('hold what the growth takes, where it is forecast', () => {
    const growing = { reference: 'girls', ageMonths: 96, measuredOn: '2026-03-14', months: 24 };
    const keeps = (tucks: object): number => {
      const { skirt, context } = draftOf({ body: { ...child, growing }, extras: { tucks } });
      const { growth } = context.body;
      if (!growth || !skirt.extras.tucks) throw new Error('this child is in the reference');
      expect(codesOf(skirt)).not.toContain('skirt.tucksNoForecast');
      expect(skirt.extras.tucks.letsDown.value).toBeGreaterThanOrEqual(
        keepFor(growth.line, 'months' in tucks ? 12 : 24).value - 1e-6,
      );
      return skirt.extras.tucks.letsDown.value;
    };
    expect(keeps({})).toBeGreaterThan(keeps({ months: 12 }));
  });

  test(
    'add to the panels exactly what they take up, and the finished skirt stays as long',
    every(({ skirt, without }) => {
      const { tucks } = skirt.extras;
      expect(skirt.finishedLength.value).toBe(without.finishedLength.value);
      if (tucks?.how !== 'tucks') {
        expect(skirt.panelLength.value).toBeCloseTo(without.panelLength.value, 6);
        return;
      }
      const taken = 2 * tucks.count.value * tucks.depth.value;
      expect(tucks.letsDown.value).toBeCloseTo(taken, 6);
      // What the waist stands above leaves a panel of a centimetre at the least, tucks or not.
      if (without.panelLength.value > 10)
        expect(skirt.panelLength.value - without.panelLength.value).toBeCloseTo(taken, 6);
      expect(taken).toBeLessThanOrEqual(without.finishedLength.value / 2 + 10);
    }),
  );

  test(
    'lie below the waist and the pockets, one clear of the next',
    every(({ skirt }) => {
      const { tucks, pockets } = skirt.extras;
      if (tucks?.how !== 'tucks') return;
      expect(tucks.below.value).toBeGreaterThan(skirt.waist.depth);
      if (pockets) expect(tucks.below.value).toBeGreaterThan(pockets.below.value + pockets.opening.value);
      if (tucks.count.value > 1) expect(tucks.space.value).toBeGreaterThan(tucks.depth.value);
      expect(skirt.works.find(({ name }) => name === 'tuck')?.count).toBe(tucks.count.value);
    }),
  );
});

describe('a deep hem', () => {
  test('is the hem and what is to be let down', () => {
    const { extras, hemAllowance } = tucked({ how: 'deep hem' });
    expect(hemAllowance.value).toBeCloseTo(inches(2.75), 6);
    expect(extras.tucks).toMatchObject({
      how: 'deep hem',
      count: { value: 0 },
      letsDown: { value: inches(2) },
    });
  });

  test(
    'adds to the cloth below the hem and to nothing else',
    every(({ skirt, without }) => {
      const { tucks } = skirt.extras;
      const deeper = tucks?.how === 'deep hem' ? tucks.letsDown.value : 0;
      expect(skirt.hemAllowance.value - without.hemAllowance.value).toBeCloseTo(deeper, 6);
    }),
  );
});

test(
  'whatever is asked of all the extras, every number is one',
  samples(
    asked.map(([raw, extras]) => ({ ...raw, extras })),
    draftOf,
    700,
  )(({ skirt }) => {
    expect(endlessIn(skirt)).toEqual([]);
  }),
);
