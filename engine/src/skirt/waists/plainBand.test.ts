import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyRequest } from '../../testing/requests.ts';
import { anyPlainBand } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';

const banded = (more = {}, body = {}, others = {}) =>
  draftOf({
    body: { waist: '30 in', hip: '38 in', ...body },
    waist: { kind: 'plain waistband', ...more },
    ...others,
  }).skirt;
const every = samples(
  fc.tuple(anyRequest, anyPlainBand).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  300,
);

test(
  'the band is waist, ease and overlap, to a mark, and a mark for each piece',
  every(({ skirt, request, context }) => {
    if (request.waist.kind !== 'plain waistband') throw new Error(request.waist.kind);
    const { ease, seam } = request.waist;
    const overlap = skirt.overlap?.width.value ?? request.waist.overlap;
    const band = skirt.waist.parts.find(({ name }) => name === 'waistband');
    if (!band) throw new Error('no band');
    const long = band.count * ((band.measures[1]?.value ?? NaN) - 2 * seam);
    const asked = context.body.waist.value + ease + overlap;
    expect(long).toBeGreaterThanOrEqual(asked - 1e-6);
    expect(long).toBeLessThan(asked + (1 + band.count) * context.mark);
  }),
);

test(
  'gathers or darts take up exactly what the panels have more than the band',
  every(({ skirt, request }) => {
    if (request.waist.kind !== 'plain waistband') throw new Error(request.waist.kind);
    const { takenUp, gatherRatio, works } = skirt.waist;
    if (!takenUp) throw new Error('nothing said of it');
    const band = takenUp.difference.inputs['band']?.value ?? NaN;
    const rows = works.filter(({ name }) => name === 'gathering rows').length;
    if (takenUp.by === 'darts') {
      expect(takenUp.darts * (takenUp.dartWidth?.value ?? NaN)).toBeCloseTo(takenUp.difference.value, 6);
      expect(takenUp.dartLength?.value).toBeLessThanOrEqual(Math.max(7, skirt.panelLength.value / 2 + 1e-6));
      expect([gatherRatio.value, rows]).toEqual([1, 0]);
    } else if (takenUp.by === 'gathers') {
      expect(band * gatherRatio.value).toBeCloseTo(band + takenUp.difference.value, 6);
      expect(rows).toBe(1);
    } else {
      const tooLong = takenUp.difference.value < -0.02 * band;
      expect(codesOf(skirt).includes('waist.bandLongerThanTop')).toBe(tooLong);
      expect(takenUp.difference.value).toBeLessThanOrEqual(0.02 * band);
    }
  }),
);

// Common practice, no source.
describe('darts', () => {
  /** Panels 4·q less their seams round the top. */
  const darted = (fullness: number, hip: string) =>
    banded({ takeUp: 'darts' }, { waist: '30 in', hip }, { cut: { fullness, sideSeam: '1/8 in' } });

  test('two where two hold the difference, else four, each at most 1 in', () => {
    // 33 in round the top less ½ in of seams, onto 31 in.
    const two = darted(1, '33 in').waist.takenUp;
    expect(two?.darts).toBe(2);
    expect(two?.dartWidth?.value).toBeCloseTo(inches(0.75), 6);
    expect(darted(1, '35 in').waist.takenUp).toMatchObject({ darts: 4 });
    expect(codesOf(darted(1, '35 in'))).not.toContain('waist.dartsTooDeep');
    expect(codesOf(darted(1.5, '38 in'))).toContain('waist.dartsTooDeep');
  });

  test('a little more is eased in', () => {
    expect(darted(1, '32 in').waist.takenUp).toMatchObject({ by: 'nothing', darts: 0 });
  });

  test('end 4½ in below the band, and rows of ribbon stay below them', () => {
    const { waist } = darted(1, '35 in');
    expect([waist.takenUp?.dartLength?.value, waist.depth]).toEqual([inches(4.5), inches(4.5)]);
  });
});

describe('the opening', () => {
  test('of a 30 in waist over 38 in hips takes a 7 in zip below a 1½ in band', () => {
    const { closure, above, works } = banded().waist;
    expect(closure).toMatchObject({ kind: 'zip', buttons: 1 });
    expect((closure?.depth.value ?? NaN) - above.value).toBeCloseTo(inches(7), 6);
    expect(works.find(({ name }) => name === 'zip')?.each.value).toBeCloseTo(inches(14), 6);
  });

  test('goes deeper where the hips are much wider than the waist', () => {
    // (48 + 1 − 29) ÷ 2 = 10 in.
    expect(banded({}, { waist: '28 in', hip: '48 in' }).waist.closure?.depth.value).toBeGreaterThanOrEqual(
      inches(10),
    );
  });

  test('that is too short to let the hips through is told, with one that does', () => {
    const at = (openingDepth: string) => banded({ openingDepth });
    const told = at('3 in').notices.find(({ code }) => code === 'waist.openingTooShort');
    expect(told?.level).toBe('problem');
    const enough = told?.params['enough'];
    const deep = typeof enough === 'object' ? `${String(enough.value / 25.4)} in` : '';
    expect(codesOf(at(deep))).not.toContain('waist.openingTooShort');
  });

  test('does not help a skirt that is tight at the hips', () => {
    const tight = banded(
      {},
      { waist: '30 in', hip: '38 in' },
      { cut: { fullness: 1, hemAtFold: '9 3/4 in' } },
    );
    expect(codesOf(tight)).toContain('waist.tightAtHip');
    expect(codesOf(banded())).not.toContain('waist.tightAtHip');
  });

  test(
    'leaves some of the panel closed, and needs no pulling on',
    every(({ skirt }) => {
      const { closure, above } = skirt.waist;
      if (!closure) return;
      expect(closure.depth.value).toBeGreaterThan(above.value);
      expect(closure.depth.value - above.value).toBeLessThan(skirt.panelLength.value);
      expect(codesOf(skirt)).not.toContain('skirt.doesNotGoOn');
    }),
  );

  test('with a placket has a strip that binds both its edges', () => {
    const { parts, closure, above, topAllowance } = banded({ opens: 'placket' }).waist;
    const strip = parts.find(({ name }) => name === 'placket');
    expect((strip?.measures[1]?.value ?? NaN) - 2 * topAllowance.value).toBeCloseTo(
      2 * ((closure?.depth.value ?? NaN) - above.value),
      6,
    );
  });
});
