import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyRequest } from '../../testing/requests.ts';
import { anyTurnedCasing } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';
import type { SkirtRequest } from '../../request/index.ts';
import type { TurnedCasingOptions } from './turnedCasing.ts';

const body = { waist: '30 in', hip: '36 in' };
const waistOf = (waist: Record<string, unknown>, more = {}) => draftOf({ body, waist, ...more }).skirt.waist;
const every = samples(
  fc.tuple(anyRequest, anyTurnedCasing).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  500,
);
const chosenOf = ({ waist }: SkirtRequest): TurnedCasingOptions => {
  if (waist.kind !== 'turned casing') throw new Error(waist.kind);
  return waist;
};

describe('the casing', () => {
  test(
    'is as deep as its elastic, its ease and its turn-under; without the turn-under it covers the skirt',
    every(({ skirt, request }) => {
      const { elasticWidth, ease, turnUnder } = chosenOf(request);
      expect(skirt.waist.topAllowance.value).toBeCloseTo(elasticWidth + ease + turnUnder, 9);
      expect(skirt.waist.depth).toBeCloseTo(elasticWidth + ease, 9);
      expect(skirt.waist.topAllowance.value).toBeGreaterThan(elasticWidth);
    }),
  );
});

describe('the elastic', () => {
  test(
    'is its share of the waist and its join, at a mark, never cut tighter than that',
    every(({ skirt, request, context }) => {
      const exact = context.body.waist.value * chosenOf(request).elasticShare + chosenOf(request).join;
      const cut = skirt.waist.elastic?.cut.value ?? NaN;
      expect(cut).toBeGreaterThanOrEqual(exact - 1e-5);
      expect(cut).toBeLessThan(exact + context.mark);
    }),
  );

  test(
    'is cautioned of exactly where it must stretch further than it can, with a length that would do',
    every(({ skirt, request, context }) => {
      const cut = skirt.waist.elastic?.cut.value ?? NaN;
      const { mostStretch, join } = chosenOf(request);
      const hip = context.body.hip.value;
      const notice = skirt.notices.find(({ code }) => code === 'waist.elasticOverstretched');
      expect(notice !== undefined).toBe(hip / (cut - join) > mostStretch);
      const enough = notice?.params['enough'];
      if (typeof enough !== 'object') return;
      expect(hip / (enough.value - join)).toBeLessThanOrEqual(mostStretch + 1e-6);
      expect(enough.value).toBeGreaterThan(cut);
    }),
  );
});

// Common practice, no source.
describe('what a casing can hold', () => {
  const most = { light: 3, medium: 2.5, heavy: 2 } as const;

  test(
    'is 2½ times the waist of quilting cotton, 2 of heavy and 3 of light cloth; below 1.15 nothing gathers',
    every(({ skirt, context }) => {
      const ratio = skirt.opening.value / context.body.waist.value;
      expect(skirt.waist.gatherRatio.value).toBeCloseTo(ratio, 9);
      expect(codesOf(skirt).includes('skirt.bunched')).toBe(ratio > most[context.clothWeight]);
      expect(codesOf(skirt).includes('skirt.barelyGathered')).toBe(ratio < 1.15);
    }),
  );

  test('the same skirt is bunched in heavy cloth, and not in medium or light', () => {
    const codes = (weight: string) =>
      codesOf(
        waistOf({}, { body: { waist: '30 in', hip: '36 in' }, cut: { fullness: 1.9 }, cloth: { weight } }),
      );
    expect(codes('heavy')).toContain('skirt.bunched');
    expect(codes('medium')).not.toContain('skirt.bunched');
    expect(codes('light')).not.toContain('skirt.bunched');
  });

  test('a cut without fullness over level hips hardly gathers', () => {
    expect(
      codesOf(waistOf({}, { body: { waist: '36 in', hip: '37 in' }, cut: { fullness: 1.05 } })),
    ).toContain('skirt.barelyGathered');
  });
});

describe('options', () => {
  test('metric makers have metric figures', () => {
    const { waist } = draftOf({ body, measure: 'metric' }).request;
    expect(waist).toMatchObject({ elasticWidth: 20, ease: 5, turnUnder: 5, join: 10 });
    const inInches = draftOf({ body }).request.waist;
    expect(inInches.elasticWidth).toBe(inches(0.75));
  });
});
