import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, ofLevelBody, samples, type Drafted } from '../../testing/drafts.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyCloth } from '../../testing/cloths.ts';
import { anyGathered } from '../../testing/cuts.ts';
import type { RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { lengthOf } from '../../geometry/index.ts';
import { inches } from '../../units/index.ts';
import type { GatheredOptions } from './gathered.ts';

const anyGatheredRequest: fc.Arbitrary<RawRequest> = fc.record({
  body: anyBody,
  cut: anyGathered,
  waist: anyWaist,
  cloth: anyCloth,
  mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
});

const gatheredOf = (raw: RawRequest): Drafted & { readonly cut: GatheredOptions } => {
  const drafted = draftOf(ofLevelBody(raw));
  if (drafted.request.cut.kind !== 'gathered') throw new Error('not a gathered cut');
  return { ...drafted, cut: drafted.request.cut };
};
const every = samples(anyGatheredRequest, gatheredOf);
const rawRound = ({ skirt }: Drafted): number => 4 * skirt.marks.waistQuarter.value;

describe('straight widths', () => {
  test(
    'are rectangles: as wide at the hem as at the waist, the side no longer than the centre',
    every(({ skirt }) => {
      for (const { shape } of skirt.panels) {
        const [waist, right, hem, left] = shape.edges.map(({ finished }) => lengthOf(finished));
        expect(waist).toBeCloseTo(hem ?? NaN, 6);
        expect(right).toBeCloseTo(left ?? NaN, 6);
        expect(right).toBeCloseTo(shape.length, 6);
        expect(shape.apex).toBeNull();
      }
      expect(skirt.hang).toMatchObject({ shape: 'straight', mustHang: false });
    }),
  );

  test(
    'sewn into a round measure exactly the opening and the hem',
    every(({ skirt }) => {
      const sum = skirt.panels.reduce(
        (all, { shape }) => all + lengthOf(shape.edges.find(({ name }) => name === 'waist')?.finished ?? []),
        0,
      );
      expect(sum).toBeCloseTo(skirt.opening.value, 4);
      expect(sum).toBeCloseTo(skirt.hemRound.value, 4);
    }),
  );

  test(
    'whole ones are as wide as the cloth after its wash',
    every((drafted) => {
      const { skirt, context, cut } = drafted;
      if (!cut.wholeWidths) return;
      expect(rawRound(drafted)).toBeCloseTo(skirt.panels.length * context.clothWidth.value, 6);
    }),
  );

  test(
    'as many as the fullness, the step, the floor and the hips need, and not one more',
    every(({ skirt, context, cut }) => {
      if (cut.widths !== undefined) {
        expect(skirt.panels.length).toBe(cut.widths);
        return;
      }
      const { body, stride } = context;
      const needed = Math.max(
        body.widest.value * cut.fullness,
        stride.checked || !body.adult ? stride.needed.value : 0,
        body.adult ? 4 * cut.hemFloor : 0,
        body.hip.value + inches(1),
      );
      const each = context.clothWidth.value - 2 * cut.sideSeam;
      const count = skirt.panels.length;
      const capped = codesOf(skirt).includes('skirt.tooManyWidths');
      if (!capped) {
        expect(skirt.opening.value).toBeGreaterThanOrEqual(needed - 0.01);
        expect(count * each).toBeGreaterThanOrEqual(needed - 0.01);
      } else expect(count).toBe(12);
      if (count > 1) expect((count - 1) * each).toBeLessThan(needed);
    }),
  );

  test(
    'that are cut down are never wider than the cloth, and each is cut to a mark',
    every((drafted) => {
      const { skirt, context, cut } = drafted;
      if (cut.wholeWidths || cut.widths !== undefined) return;
      if (codesOf(skirt).includes('skirt.tooManyWidths')) return;
      const panel = rawRound(drafted) / skirt.panels.length;
      expect(panel).toBeLessThanOrEqual(context.clothWidth.value + 1e-6);
      const marks = panel / context.mark;
      if (panel < context.clothWidth.value - 1e-6)
        expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-6);
    }),
  );

  test('that are cut down to a mark beyond the selvage are used whole', () => {
    // 1320 mm × 1½ in two widths with 6 mm seams: 1002 mm each. The next 5 mm mark lies beside the cloth of 1003 mm.
    const { skirt } = draftOf({
      mark: '5 mm',
      measure: 'metric',
      body: { waist: '1100 mm', hip: '1320 mm' },
      cut: { kind: 'gathered', wholeWidths: false, sideSeam: '6 mm', hemFloor: '0 mm' },
      cloth: { width: '1003 mm', selvage: '0 mm', washed: true },
    });
    expect(skirt.panels.length).toBe(2);
    expect((4 * skirt.marks.waistQuarter.value) / 2).toBeCloseTo(1003, 9);
  });

  test('two are a front and a back; of more or fewer none is named so', () => {
    const names = (widths: number) =>
      draftOf({ cut: { kind: 'gathered', widths } }).skirt.panels.map(({ name }) => name);
    expect(names(2)).toEqual(['front', 'back']);
    expect(names(1)).toEqual(['width']);
    expect(names(3)).toEqual(['width', 'width', 'width']);
  });

  // Common practice, no source.
  test('a 36 in hip at 1½ takes two widths of 44 in cloth, sewn with two seams', () => {
    const { skirt } = draftOf({ body: { waist: '29 in', hip: '36 in' }, cut: { kind: 'gathered' } });
    expect(skirt.panels.length).toBe(2);
    expect(skirt.sideSeams).toBe(2);
    expect(skirt.marking).toBe('straight widths');
  });

  test('one width is one seam', () => {
    const { skirt } = draftOf({
      body: { waist: '20 in', hip: '22 in', waistToHem: '15 in', age: 3 },
      cut: { kind: 'gathered', widths: 1 },
    });
    expect(skirt.sideSeams).toBe(1);
    expect(skirt.opening.value).toBeCloseTo(4 * skirt.marks.waistQuarter.value - 2 * inches(0.25), 6);
  });
});
