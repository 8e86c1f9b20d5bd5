import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hemNeededAt, walkerOf } from '../../body/index.ts';
import { boundsOf, isClosed, selfIntersects } from '../../geometry/index.ts';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { anyRequest } from '../../testing/requests.ts';
import { inches, mm } from '../../units/index.ts';

const NARROW = [
  'skirt.hemBelowStride',
  'skirt.hemBelowStrideWiden',
  'skirt.hemNarrowForEveryday',
  'skirt.hemNarrowWiden',
  'skirt.slitTooLow',
];
const narrowSkirt = (slits: object | undefined) =>
  draftOf({
    body: { waist: '26 in', hip: '34 in', waistToHem: '36 in', height: '5 ft 6 in' },
    cut: { fullness: 1.1, hemAtFold: '11 in', hemFloor: '0 in' },
    ...(slits ? { extras: { slits } } : {}),
  });

const asked = fc
  .tuple(anyRequest, anyExtras)
  .map(([raw, extras]) => ({ ...raw, extras: { ...extras, slits: extras['slits'] ?? {} } }));
const every = samples(asked, draftOf, 700);

describe('a slit in a skirt too narrow to walk in', () => {
  test('is as high as the step asks, and the hem is no longer told of', () => {
    expect(codesOf(narrowSkirt(undefined).skirt).some((code) => NARROW.includes(code))).toBe(true);
    const { skirt } = narrowSkirt({});
    expect(codesOf(skirt).filter((code) => NARROW.includes(code))).toEqual([]);
  });

  test('reaches above the knee and leaves enough closed above it', () => {
    const { skirt, context } = narrowSkirt({});
    const walker = walkerOf(context.body);
    const { hemHeight } = context.body;
    const height = skirt.extras.slits?.height.value ?? NaN;
    if (!walker || !hemHeight) throw new Error('their heights are known');
    const level = { ...hemHeight, value: mm(hemHeight.value + height) };
    expect(level.value).toBeGreaterThanOrEqual(walker.kneeHeight.value);
    const narrowing = (skirt.hemRound.value - skirt.opening.value) / skirt.finishedLength.value;
    expect(skirt.hemRound.value - narrowing * height).toBeGreaterThanOrEqual(
      hemNeededAt(walker, level).everyday.value - 0.5 - narrowing * context.mark,
    );
  });

  test('lower than that is told to be too low, with the height that does', () => {
    const { skirt } = narrowSkirt({ height: '6 in' });
    const notice = skirt.notices.find(({ code }) => code === 'skirt.slitTooLow');
    expect(skirt.extras.slits?.height.value).toBe(inches(6));
    const { slit } = notice?.params ?? {};
    if (typeof slit !== 'object') throw new Error('it names the height');
    const again = narrowSkirt({ height: `${String(slit.value)} mm` });
    expect(codesOf(again.skirt).filter((code) => NARROW.includes(code))).toEqual([]);
    expect(codesOf(skirt)).not.toContain('skirt.hemBelowStride');
  });
});

test('a two-panel skirt has no seam behind to leave open', () => {
  const { skirt } = narrowSkirt({ where: 'back' });
  expect(skirt.extras.slits).toBeNull();
  expect(codesOf(skirt)).toContain('skirt.slitNoSeam');
  // What the slit would have been for is told still.
  expect(codesOf(skirt).some((code) => NARROW.includes(code))).toBe(true);
});

test('a skirt in one width has its seam behind', () => {
  const one = { cut: { kind: 'gathered', widths: 1 }, cloth: { width: '110 in' } };
  expect(draftOf({ ...one, extras: { slits: { where: 'back' } } }).skirt.extras.slits?.count.value).toBe(1);
  expect(draftOf({ ...one, extras: { slits: {} } }).skirt.extras.slits).toBeNull();
});

describe('any slit', () => {
  test(
    'that answers for a narrow hem reaches above the knee and leaves enough closed above it',
    every(({ skirt, context }) => {
      const { slits } = skirt.extras;
      const walker = walkerOf(context.body);
      const { hemHeight } = context.body;
      const everyday = context.stride.everyday?.value ?? 0;
      if (!slits || !walker || !hemHeight || skirt.overlap || skirt.hemRound.value >= everyday) return;
      if (codesOf(skirt).some((code) => NARROW.includes(code))) return;
      const height = slits.height.value;
      const level = { ...hemHeight, value: mm(hemHeight.value + height) };
      expect(level.value).toBeGreaterThanOrEqual(walker.kneeHeight.value - 1e-6);
      const narrowing = (skirt.hemRound.value - skirt.opening.value) / skirt.finishedLength.value;
      expect(skirt.hemRound.value - narrowing * height).toBeGreaterThanOrEqual(
        hemNeededAt(walker, level).everyday.value -
          0.5 -
          narrowing * height * 0.02 -
          narrowing * context.mark,
      );
    }),
  );

  test(
    'ends below the waist and the tucks, and is faced with strips of its length',
    every(({ skirt, context }) => {
      const { slits, tucks } = skirt.extras;
      if (!slits) {
        expect(codesOf(skirt)).toContain('skirt.slitNoSeam');
        return;
      }
      const top = Math.max(skirt.waist.depth, tucks?.reach.value ?? 0);
      const room = skirt.panelLength.value - top;
      expect(slits.height.value).toBeLessThanOrEqual(Math.max(context.mark, room));
      expect(slits.takes).toEqual({ from: 0, to: slits.height.value });
      const strips = skirt.parts.find(({ name }) => name === 'slit facing');
      expect(strips?.count).toBe(2 * slits.count.value);
      const shape = strips?.shape;
      if (!shape) throw new Error('it is faced');
      expect(isClosed(shape.cut)).toBe(true);
      expect(selfIntersects(shape.cut)).toBe(false);
      const { width, height } = boundsOf(shape.cut);
      expect([width, height]).toEqual([
        expect.closeTo(strips.measures[0]?.value ?? NaN, 6),
        expect.closeTo(strips.measures[1]?.value ?? NaN, 6),
      ]);
      expect(height).toBeGreaterThanOrEqual(slits.height.value);
    }),
  );
});
