import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyRequest } from '../../testing/requests.ts';
import { anySeparateCasing } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';

const body = { waist: '30 in', hip: '36 in' };
const every = samples(
  fc.tuple(anyRequest, anySeparateCasing).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  300,
);

describe('the strip', () => {
  test(
    'folded, is deeper than its elastic by half of its ease',
    every(({ skirt, request, context }) => {
      if (request.waist.kind !== 'separate casing') throw new Error(request.waist.kind);
      const room = skirt.waist.above.value - (skirt.waist.elastic?.width.value ?? NaN);
      expect(room).toBeGreaterThan(0);
      if (codesOf(skirt).includes('waist.heldDown')) return;
      expect(room).toBeGreaterThanOrEqual(request.waist.ease / 2 - 1e-6);
      expect(room).toBeLessThan(request.waist.ease / 2 + context.mark);
    }),
  );

  test(
    'goes once round the top when its pieces are joined, to a mark for each of them',
    every(({ skirt, context }) => {
      const [part] = skirt.waist.parts;
      const [, length] = part?.measures ?? [];
      if (!part || !length) throw new Error('no strip');
      const finished = part.count * (length.value - 2 * skirt.waist.topAllowance.value);
      expect(finished).toBeGreaterThanOrEqual(skirt.opening.value - 1e-6);
      expect(finished).toBeLessThan(skirt.opening.value + part.count * context.mark);
    }),
  );

  test('is pieced where the cloth is narrower than the top is round', () => {
    const pieces = (width: string) =>
      draftOf({ body, waist: { kind: 'separate casing' }, cloth: { width, selvage: '0 in' } }).skirt.waist
        .parts[0]?.count;
    expect([pieces('60 in'), pieces('44 in'), pieces('27 in')]).toEqual([1, 2, 3]);
  });
});

test('the panels are shorter by what the strip stands above them, and end in a seam', () => {
  const { skirt } = draftOf({
    body: { ...body, waistToHem: '31 in' },
    waist: { kind: 'separate casing' },
  });
  expect(skirt.waist.above.value).toBeCloseTo(inches(1), 9);
  expect(skirt.panelLength.value).toBeCloseTo(inches(30), 9);
  const top = skirt.panels[0].shape.edges.find(({ name }) => name === 'waist');
  expect(top).toMatchObject({ allowance: inches(5 / 8), turned: false });
});

test('the elastic is that of a turned casing', () => {
  const cut = (waist: Record<string, unknown>) => draftOf({ body, waist }).skirt.waist.elastic?.cut.value;
  expect(cut({ kind: 'separate casing' })).toBe(cut({}));
});

test('a growing waist is told of a stretch band, by every casing', () => {
  for (const kind of ['turned casing', 'separate casing', 'flat front', 'drawstring', 'plain waistband'])
    expect(codesOf(draftOf({ body: { ...body, wears: 'expecting' }, waist: { kind } }).skirt)).toContain(
      'waist.bandForExpecting',
    );
  expect(codesOf(draftOf({ body, waist: { kind: 'separate casing' } }).skirt)).not.toContain(
    'waist.bandForExpecting',
  );
});
