import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { codesOf, draftOf, samples } from '../testing/drafts.ts';
import { anyBody } from '../testing/bodies.ts';
import { anyRequest } from '../testing/requests.ts';
import { inches } from '../units/index.ts';

const INCH = inches(1);
/** What binary fractions lose is no tightness. */
const HAIR = 0.01;

// Common practice, no source: 1 in of ease over the hips.
describe('it goes on over the hips', () => {
  const sweep = fc.tuple(anyBody, fc.integer({ min: 100, max: 250 })).map(([body, hundredths]) => ({
    body,
    cut: { fullness: hundredths / 100 },
  }));

  test(
    'exactly where the opening is the hips and 1 in, or more: fullness 1 to 2½ on any body',
    samples(
      sweep,
      draftOf,
      500,
    )(({ skirt, context }) => {
      if (skirt.waist.closure || skirt.overlap) return;
      // Of an estimated hip the wider end counts.
      const { hip } = context.body;
      const needed = hip.value + (hip.plusMinus ?? 0) + INCH;
      if (Math.abs(skirt.opening.value - needed) < 2 * HAIR) return;
      expect(codesOf(skirt).includes('skirt.doesNotGoOn')).toBe(skirt.opening.value < needed);
    }),
  );

  test(
    'whatever the cut',
    samples(
      anyRequest,
      draftOf,
      500,
    )(({ skirt, context }) => {
      if (skirt.waist.closure || skirt.overlap) return;
      // Of an estimated hip the wider end counts.
      const { hip } = context.body;
      const needed = hip.value + (hip.plusMinus ?? 0) + INCH;
      if (Math.abs(skirt.opening.value - needed) < 2 * HAIR) return;
      expect(codesOf(skirt).includes('skirt.doesNotGoOn')).toBe(skirt.opening.value < needed);
    }),
  );

  test('hips of 36 in cut without fullness do not go through; the opening and what it needs are told', () => {
    const { skirt } = draftOf({ body: { waist: '29 in', hip: '36 in' }, cut: { fullness: 1 } });
    const notice = skirt.notices.find(({ code }) => code === 'skirt.doesNotGoOn');
    expect(notice?.level).toBe('problem');
    expect(notice?.params).toMatchObject({
      opening: { value: expect.closeTo(inches(35), 6) as number },
      needed: { value: expect.closeTo(inches(37), 6) as number },
    });
  });

  test('just enough is enough: 36 in hips, a 9½ in mark and ¼ in seams open to 37 in', () => {
    const at = (mark: string) =>
      codesOf(
        draftOf({ body: { waist: '38 in', hip: '36 in' }, cut: { fullness: 1, sideSeam: mark } }).skirt,
      );
    expect(at('1/4 in')).not.toContain('skirt.doesNotGoOn');
    expect(at('5/16 in')).toContain('skirt.doesNotGoOn');
  });

  test('a waist wider than the hips needs only the hips to go through', () => {
    const { skirt } = draftOf({ body: { waist: '40 in', hip: '36 in' }, cut: { fullness: 1 } });
    expect(codesOf(skirt)).not.toContain('skirt.doesNotGoOn');
  });
});
