import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hemNeededAt, walkerOf } from '../../body/index.ts';
import { boundsOf, isClosed, lengthOf, selfIntersects } from '../../geometry/index.ts';
import { draftOf, samples, type Drafted } from '../../testing/drafts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { anyRequest } from '../../testing/requests.ts';
import { inches, mm } from '../../units/index.ts';

const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in', height: '5 ft 5 in' };
const asked = fc
  .tuple(anyRequest, anyExtras)
  .map(([raw, extras]) => ({ ...raw, extras: { ...extras, lining: extras['lining'] ?? {} } }));
const every = samples(asked, draftOf, 700);
const partsOf = ({ skirt }: Drafted) => skirt.parts.filter(({ name }) => name.startsWith('lining'));
const sewnRound = (drafted: Drafted, edge: 'waist' | 'hem'): number =>
  partsOf(drafted).reduce(
    (sum, { shape, count }) =>
      sum + count * lengthOf(shape.edges.find(({ name }) => name === edge)?.finished ?? []),
    0,
  );

test('a lining is 2 in shorter than the skirt, a front and a back', () => {
  const drafted = draftOf({ body, extras: { lining: {} } });
  expect(drafted.skirt.extras.lining?.length.value).toBeCloseTo(inches(29), 6);
  expect(partsOf(drafted).map(({ name, cloth }) => [name, cloth])).toEqual([
    ['lining front', 'lining'],
    ['lining back', 'lining'],
  ]);
  expect(drafted.skirt.extras.liningCloth?.width.value).toBe(inches(44));
});

test('growth tucks of the skirt are not in the lining', () => {
  const { skirt } = draftOf({ body, extras: { lining: {}, tucks: {} } });
  expect(skirt.extras.lining?.length.value).toBeCloseTo(inches(29), 6);
});

test('on narrow cloth it is straight widths', () => {
  const drafted = draftOf({ body, extras: { lining: {}, liningCloth: { width: '20 in' } } });
  const parts = partsOf(drafted);
  expect(parts.length).toBeGreaterThan(2);
  for (const { name, shape } of parts) {
    expect(name).toBe('lining width');
    expect(boundsOf(shape.cut).width).toBeLessThanOrEqual(inches(19) + 1e-6);
  }
});

describe('any lining', () => {
  test(
    'is never longer than the skirt, tucks taken, and never less than a third of it',
    every(({ skirt }) => {
      const { lining } = skirt.extras;
      const tucks = skirt.extras.tucks?.how === 'tucks' ? skirt.extras.tucks.letsDown.value : 0;
      const length = Math.max(10, skirt.panelLength.value - tucks);
      expect(lining?.length.value).toBeLessThanOrEqual(length + 1e-6);
      expect(lining?.length.value).toBeGreaterThanOrEqual(length / 3 - 1e-6);
    }),
  );

  test(
    'goes over the hips, and is walked in',
    every((drafted) => {
      const { skirt, context } = drafted;
      const { lining, tucks } = skirt.extras;
      if (!lining) throw new Error('it was asked for');
      const { body, stride } = context;
      // A top that rises above its line is longer or shorter than the line; only the hem is level then.
      if (Object.values(body.rises).every(({ value }) => value === 0))
        expect(sewnRound(drafted, 'waist')).toBeGreaterThanOrEqual(body.hip.value + inches(1) - 0.01);
      const walker = walkerOf(body);
      const kept = tucks?.how === 'tucks' ? tucks.letsDown.value : 0;
      const higher = Math.max(10, skirt.panelLength.value - kept) - lining.length.value;
      const need =
        walker && body.hemHeight
          ? hemNeededAt(walker, { ...body.hemHeight, value: mm(body.hemHeight.value + higher) }).everyday
              .value
          : stride.needed.value;
      expect(sewnRound(drafted, 'hem')).toBeGreaterThanOrEqual(need - 0.01);
    }),
  );

  test(
    'is cut in whole pieces that do not cross themselves and fit their cloth',
    every((drafted) => {
      const { liningCloth } = drafted.skirt.extras;
      const usable = (liningCloth?.width.value ?? 0) - 2 * (liningCloth?.selvage.value ?? 0);
      for (const { shape } of partsOf(drafted)) {
        expect(isClosed(shape.cut)).toBe(true);
        expect(selfIntersects(shape.cut)).toBe(false);
        if (drafted.skirt.extras.lining?.parts.every(({ name }) => name === 'lining width'))
          expect(boundsOf(shape.cut).width).toBeLessThanOrEqual(usable + 0.01);
      }
    }),
  );
});
