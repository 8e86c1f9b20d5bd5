import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../testing/drafts.ts';
import { anyFlared } from '../testing/cuts.ts';
import type { RawRequest } from '../testing/requests.ts';
import { anyRibbons } from '../testing/ribbons.ts';
import fc from 'fast-check';
import { lengthOf } from '../geometry/index.ts';
import { composeRibbons } from './index.ts';

const composedOf = (raw: RawRequest) => {
  const drafted = draftOf(raw);
  const { skirt, request } = drafted;
  return { ...drafted, ribbons: composeRibbons(skirt, request.ribbons, request.mark) };
};
const level = fc
  .record({ cut: anyFlared, ribbons: anyRibbons })
  .map(({ cut, ribbons }) => ({ cut: { ...cut, kind: 'flared', hemline: 'level' }, ribbons }));
const every = samples(level, composedOf, 500);

describe('a straight ribbon on a curve', () => {
  test(
    'has edges that differ by its width over the radius of the inner one',
    every(({ ribbons, skirt }) => {
      const { apex } = skirt.panels[0].shape;
      for (const { curve, lower, upper, width, fromHem } of ribbons.rows) {
        expect(curve === null).toBe(apex === null);
        if (!curve || !apex) continue;
        const inner = apex.hemRadius - fromHem.value - width.value;
        expect(curve.radius.value).toBeCloseTo(inner, 6);
        // On the drafted panel: the longer edge over the shorter, and the length to lose.
        expect(curve.share.value).toBeCloseTo(lengthOf(lower) / lengthOf(upper) - 1, 6);
        expect(curve.takeUp.value).toBeCloseTo(lengthOf(lower) - lengthOf(upper), 4);
      }
    }),
  );

  test(
    'is told of by its worst row: eased with steam up to one limit, tucked past it',
    every(({ ribbons, request }) => {
      const worst = Math.max(0, ...ribbons.rows.map(({ curve }) => curve?.share.value ?? 0));
      const { easesUnseen, easesWithCare } = request.ribbons;
      const found = codesOf(ribbons).filter(
        (code) => code.startsWith('ribbon.ease') || code.startsWith('ribbon.will'),
      );
      const expected =
        worst <= easesUnseen
          ? []
          : [worst <= easesWithCare ? 'ribbon.easeWithSteam' : 'ribbon.willNotLieFlat'];
      expect(found).toEqual(expected);
    }),
  );

  test(
    'that will not lie flat has as many tucks as take up its length',
    every(({ ribbons }) => {
      const notice = ribbons.notices.find(({ code }) => code === 'ribbon.willNotLieFlat');
      const { tucks, takeUp } = notice?.params ?? {};
      if (typeof tucks !== 'object' || typeof takeUp !== 'object') return;
      const each = tucks.inputs['tuck']?.value ?? NaN;
      expect(tucks.value * each).toBeGreaterThanOrEqual(takeUp.value - 1e-9);
      expect((tucks.value - 1) * each).toBeLessThan(takeUp.value);
    }),
  );

  test('on a gathered skirt, whose widths are straight, there is nothing to lose', () => {
    const { ribbons } = composedOf({ cut: { kind: 'gathered' } });
    expect(ribbons.rows.every(({ curve }) => curve === null)).toBe(true);
    expect(codesOf(ribbons)).toEqual([]);
  });
});
