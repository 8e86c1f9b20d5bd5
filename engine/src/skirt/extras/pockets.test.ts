import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, contains, isClosed, lengthOf, selfIntersects } from '../../geometry/index.ts';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { anyRequest } from '../../testing/requests.ts';
import { inches } from '../../units/index.ts';

const pocketsOf = (pockets: object, more: object = {}) => draftOf({ extras: { pockets }, ...more }).skirt;
const asked = fc
  .tuple(anyRequest, anyExtras)
  .map(([raw, extras]) => ({ ...raw, extras: { ...extras, pockets: extras['pockets'] ?? {} } }));
const every = samples(asked, draftOf, 700);

describe('pockets of a middling grown hand', () => {
  const { extras, parts, works } = pocketsOf({});

  test('have an opening of half the hand round and 1½ in of ease, 3 in below the top', () => {
    expect(extras.pockets?.opening.value).toBe(inches(6));
    expect(extras.pockets?.below.value).toBe(inches(3));
    expect(extras.pockets?.count.value).toBe(2);
  });

  test('are two halves each, cut in pairs, and sewn in and round', () => {
    const bag = parts.find(({ name }) => name === 'pocket bag');
    expect(bag).toMatchObject({ count: 4, mirrored: true, cloth: 'skirt', grain: 'down' });
    expect(works.filter(({ name }) => name.startsWith('pocket')).map(({ count }) => count)).toEqual([4, 2]);
  });
});

test('a hand that was measured decides, and so does a child’s height', () => {
  expect(pocketsOf({ hand: '8 in' }).extras.pockets?.opening.value).toBe(inches(5.5));
  const child = { body: { waist: '22 in', hip: '26 in', waistToHem: '20 in', height: '48 in', age: 8 } };
  const small = pocketsOf({}, child).extras.pockets;
  expect(small?.opening.value).toBeCloseTo(inches(4.875), 6);
  expect(small?.below.value).toBeLessThan(inches(2.5));
});

test('a skirt with its only seam behind has none, and says so', () => {
  const { extras, notices } = pocketsOf({}, { cut: { kind: 'gathered', widths: 1 } });
  expect(extras.pockets).toBeNull();
  expect(codesOf({ notices })).toContain('skirt.pocketsNeedSideSeams');
});

test('a ¼ in side seam is too narrow for them, a ½ in one is not', () => {
  const told = (sideSeam: string): boolean =>
    codesOf(pocketsOf({}, { cut: { sideSeam } })).includes('skirt.pocketsNeedSeam');
  expect(told('1/4 in')).toBe(true);
  expect(told('1/2 in')).toBe(false);
});

describe('any pocket', () => {
  test(
    'lies within the side seam of the first round, clear of waist and hem',
    every(({ skirt }) => {
      const { pockets } = skirt.extras;
      if (!pockets) return;
      const [first] = skirt.rounds;
      const sides = first.panels.map(({ shape }) =>
        lengthOf(shape.edges.find(({ name }) => name === 'right')?.finished ?? []),
      );
      const end = pockets.below.value + pockets.opening.value;
      expect(pockets.below.value).toBeGreaterThan(skirt.waist.depth);
      expect(end).toBeLessThan(Math.max(...sides));
      expect(pockets.takes.from).toBeGreaterThan(
        skirt.rounds.length > 1 ? first.fromHem : skirt.hemAllowance.value / 2,
      );
      expect(pockets.takes.to).toBeGreaterThan(pockets.takes.from);
      // A leaning side is longer than the levels it passes.
      expect(pockets.takes.to - pockets.takes.from).toBeLessThanOrEqual(pockets.opening.value + 1e-6);
      expect(pockets.below.value + pockets.bagDepth.value).toBeLessThan(
        Math.max(...sides) + first.fromHem - skirt.hemAllowance.value,
      );
    }),
  );

  test(
    'has a bag of one closed outline that does not cross itself, its stitching inside its edge by the seam',
    every(({ skirt }) => {
      const bag = skirt.parts.find(({ name }) => name === 'pocket bag');
      const { pockets } = skirt.extras;
      if (!bag || !pockets) return;
      const { shape, measures } = bag;
      const finished = shape.edges.flatMap((edge) => edge.finished);
      expect(isClosed(finished)).toBe(true);
      expect(isClosed(shape.cut)).toBe(true);
      expect(selfIntersects(finished)).toBe(false);
      expect(selfIntersects(shape.cut)).toBe(false);
      const [inner, outer] = [boundsOf(finished), boundsOf(shape.cut)];
      expect(inner.width).toBeCloseTo(pockets.bagWidth.value, 6);
      expect(outer.width).toBeCloseTo(measures[0]?.value ?? NaN, 6);
      expect(outer.height).toBeCloseTo(measures[1]?.value ?? NaN, 6);
      expect(inner.height - pockets.headroom.value).toBeCloseTo(pockets.bagDepth.value, 6);
      const [from, to] = shape.notches;
      expect((to?.at.y ?? NaN) - (from?.at.y ?? NaN)).toBeCloseTo(pockets.opening.value, 6);
    }),
  );

  test(
    'is notched at both ends on both panels of its seam',
    every(({ skirt }) => {
      const [first] = skirt.rounds;
      const notches = first.panels.flatMap(({ shape }) =>
        shape.notches.filter(({ use }) => use === 'pocket').map((notch) => ({ notch, shape })),
      );
      const count = skirt.extras.pockets?.count.value ?? 0;
      expect(notches.length).toBe(4 * count);
      expect(skirt.panels).toEqual(skirt.rounds.flatMap(({ panels }) => panels));
      // Narrow slivers between deep seams aside, its line runs into the cloth.
      for (const { notch, shape } of notches) {
        const { at, inward } = notch;
        const { width } = boundsOf(shape.trimmed);
        if (width < 60) continue;
        expect(contains(shape.trimmed, { x: at.x + 2 * inward.x, y: at.y + 2 * inward.y })).toBe(true);
      }
    }),
  );
});
