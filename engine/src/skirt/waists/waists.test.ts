import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, isClosed, lengthOf, selfIntersects } from '../../geometry/index.ts';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { endlessIn } from '../../testing/endlessIn.ts';
import { anyRequest } from '../../testing/requests.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { anyWaist } from '../../testing/waists.ts';

const every = samples(
  fc.tuple(anyRequest, anyWaist).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  600,
);

describe('every waist on every cut', () => {
  test(
    'has finite figures, and nothing to sew that is nothing',
    every(({ skirt }) => {
      expect(endlessIn(skirt.waist)).toEqual([]);
      for (const { name, count, each } of skirt.waist.works) {
        expect(each.value, name).toBeGreaterThan(0);
        expect(count, name).toBeGreaterThan(0);
      }
    }),
  );

  test(
    'has parts that are closed rectangles of the measures told, finished inside their seams',
    every(({ skirt }) => {
      for (const { shape, measures, count, name } of skirt.waist.parts) {
        const [width, length] = measures.map(({ value }) => value);
        expect(areaOf(shape.cut), name).toBeCloseTo((width ?? NaN) * (length ?? NaN), 3);
        expect(isClosed(shape.cut) && !selfIntersects(shape.cut)).toBe(true);
        expect(count).toBeGreaterThan(0);
        const [waist, , hem] = shape.edges.map(({ finished }) => lengthOf(finished));
        expect(waist).toBe(hem);
        expect(waist).toBeLessThan(length ?? NaN);
      }
    }),
  );

  test(
    'stands as high as the panels are shorter',
    every(({ skirt }) => {
      if (skirt.extras.tucks) return;
      expect(skirt.waist.above.value).toBeCloseTo(skirt.finishedLength.value - skirt.panelLength.value, 6);
    }),
  );

  test(
    'tells its reasons in words',
    every(({ skirt, request }) => {
      for (const notice of skirt.waist.notices) {
        const said = speakerOf(request).notice(notice);
        expect(said, notice.code).toMatch(/\.$/);
        expect(said).not.toMatch(/[{}]|undefined|NaN/);
      }
    }),
  );
});

test('a band taller than half of the skirt is held down to it, and told', () => {
  const doll = { waist: '12 in', hip: '13 in', waistToHem: '5 in', age: 3 };
  for (const waist of [
    { kind: 'stretch band', height: '10 in' },
    { kind: 'plain waistband', height: '5 in' },
    { kind: 'separate casing', elasticWidth: '3 1/2 in' },
    { kind: 'flat front', elasticWidth: '3 1/2 in' },
  ]) {
    const { skirt } = draftOf({ body: doll, waist });
    expect(skirt.panelLength.value).toBeGreaterThan(0.48 * skirt.finishedLength.value);
    expect(codesOf(skirt)).toContain('waist.heldDown');
  }
  expect(codesOf(draftOf({ body: doll, waist: { kind: 'separate casing' } }).skirt)).not.toContain(
    'waist.heldDown',
  );
});
