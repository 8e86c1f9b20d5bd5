import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyRequest } from '../../testing/requests.ts';
import { anyFlatFront } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';

const flat = (more = {}, body = {}, cut = {}) =>
  draftOf({ body: { waist: '30 in', hip: '36 in', ...body }, waist: { kind: 'flat front', ...more }, cut })
    .skirt;
const every = samples(
  fc.tuple(anyRequest, anyFlatFront).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  300,
);
/** Finished length of a part whose seams are the band's. */
const finished = (skirt: ReturnType<typeof flat>, name: string): number => {
  const part = skirt.waist.parts.find((each) => each.name === name);
  return part ? part.count * ((part.measures[1]?.value ?? NaN) - 2 * skirt.waist.topAllowance.value) : NaN;
};

// Common practice, no source.
describe('a 30 in waist', () => {
  test('lies flat over 15 in; behind, elastic of 0.933 × 15 in and ½ in at either end to catch', () => {
    const skirt = flat();
    expect(finished(skirt, 'waistband')).toBeCloseTo(inches(15), 6);
    expect(skirt.waist.elastic).toMatchObject({ where: 'back', cut: { value: inches(15) } });
    expect(skirt.waist.elastic?.cut.exact).toBeCloseTo(inches(15 * 0.933 + 1), 6);
  });

  test('with a larger flat front has less elastic', () => {
    const cut = (frontShare: number) => flat({ frontShare }).waist.elastic?.cut.value ?? NaN;
    expect(cut(60)).toBeLessThan(cut(50));
  });

  test('over 36 in hips needs 22 in behind: a cut of little fullness does not go on, though it would without its flat front', () => {
    const codes = (fullness: number, kind = 'flat front') =>
      codesOf(
        draftOf({
          body: { waist: '30 in', hip: '36 in' },
          waist: { kind },
          cut: { fullness, sideSeam: '1/8 in' },
        }).skirt,
      );
    expect(codes(1.1)).toContain('waist.backTooShort');
    expect(codes(1.1, 'turned casing')).not.toContain('skirt.doesNotGoOn');
    expect(codes(1.3)).not.toContain('waist.backTooShort');
  });
});

test(
  'elastic is never less than its share of the back, and never negative',
  every(({ skirt, request, context }) => {
    if (request.waist.kind !== 'flat front') throw new Error(request.waist.kind);
    const { elasticShare, join, frontShare } = request.waist;
    const back = context.body.waist.value * (1 - frontShare);
    const cut = skirt.waist.elastic?.cut.value ?? NaN;
    expect(cut).toBeGreaterThan(0);
    expect(Math.abs(cut - (back * elasticShare + 2 * join))).toBeLessThan(2 * context.mark);
  }),
);

test(
  'front and back of the band are as long as what they are sewn to',
  every(({ skirt, context }) => {
    const { takenUp, parts } = skirt.waist;
    const front = finished(skirt, 'waistband');
    const back = finished(skirt, 'waistband back');
    const slack = context.mark * parts.reduce((sum, { count }) => sum + count, 0) + 1e-6;
    const sewnTo = skirt.opening.value - (takenUp?.difference.value ?? NaN);
    expect(Math.abs(front + back - sewnTo)).toBeLessThanOrEqual(slack);
  }),
);

test(
  'the back is cautioned of exactly where its elastic must stretch too far, with a length that would do',
  every(({ skirt, request, context }) => {
    if (request.waist.kind !== 'flat front') throw new Error(request.waist.kind);
    const { join, mostStretch } = request.waist;
    const notice = skirt.waist.notices.find(({ code }) => code === 'waist.backOverstretched');
    const cut = skirt.waist.elastic?.cut.value ?? NaN;
    const front = skirt.waist.elastic?.cut.inputs['front']?.value ?? NaN;
    const need = context.body.hip.value - front;
    expect(notice !== undefined).toBe(need / (cut - 2 * join) > mostStretch);
    const enough = notice?.params['enough'];
    if (typeof enough !== 'object') return;
    expect(need / (enough.value - 2 * join)).toBeLessThanOrEqual(mostStretch + 1e-6);
  }),
);

test('of three widths of cloth, half the round is in front all the same', () => {
  const { skirt } = draftOf({
    body: { waist: '30 in', hip: '36 in' },
    waist: { kind: 'flat front' },
    cut: { kind: 'gathered', widths: 3 },
  });
  expect(skirt.waist.takenUp?.difference.value).toBeCloseTo(skirt.opening.value / 2 - inches(15), 6);
});
