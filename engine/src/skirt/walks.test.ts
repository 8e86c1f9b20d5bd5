import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hemNeededAt, readBody, walkerOf } from '../body/index.ts';
import { codesOf, draftOf, samples, type Drafted } from '../testing/drafts.ts';
import type { RawRequest } from '../testing/requests.ts';
import { inches, mm, type Mm } from '../units/index.ts';

const BELOW_STEP = ['skirt.hemBelowStride', 'skirt.hemBelowStrideWiden'];
const BELOW_EVERYDAY = ['skirt.hemNarrowForEveryday', 'skirt.hemNarrowWiden'];
const inMm = (value: number): string => `${value.toFixed(4)} mm`;

/** Grown people and children of known height, in hems of their own wish. */
const narrowHems: fc.Arbitrary<RawRequest> = fc
  .record({
    height: fc.integer({ min: 1000, max: 1950 }),
    girth: fc.double({ min: 0.4, max: 0.7, noNaN: true }),
    length: fc.double({ min: 0.25, max: 0.6, noNaN: true }),
    age: fc.constantFrom(undefined, 8, 30, 70),
    pace: fc.constantFrom('easy', 'usual', 'brisk'),
    fullness: fc.double({ min: 1, max: 1.6, noNaN: true }),
    flare: fc.integer({ min: 0, max: 150 }),
    mark: fc.constantFrom('1/8 in', '1/4 in', '2 mm', '5 mm'),
  })
  .map(({ height, girth, length, age, pace, fullness, flare, mark }) => ({
    mark,
    body: {
      height: inMm(height),
      waistToFloor: inMm(0.62 * height),
      waist: inMm(Math.max(400, girth * height * 0.8)),
      hip: inMm(Math.max(450, girth * height)),
      waistToHem: inMm(length * height),
      pace,
      ...(age === undefined ? {} : { age }),
    },
    cut: {
      kind: 'flared',
      fullness,
      hemAtFold: inMm((Math.max(450, girth * height) * fullness) / 4 + 10 + flare),
      hemFloor: '0 in',
      hemline: 'level',
    },
  }));

const figureOf = ({ skirt }: Drafted, name: string): Mm => {
  const notice = skirt.notices.find(({ code }) => [...BELOW_STEP, ...BELOW_EVERYDAY].includes(code));
  const param = notice?.params[name];
  return typeof param === 'object' ? (param.value as Mm) : mm(NaN);
};
const isNarrow = ({ skirt }: Drafted): boolean =>
  codesOf(skirt).some((code) => [...BELOW_STEP, ...BELOW_EVERYDAY].includes(code));

const every = samples(narrowHems, draftOf, 500);

describe('a hem too narrow to walk in', () => {
  test(
    'is a problem below the bare step, a caution below the everyday figure, and nothing above it',
    every(({ skirt, context }) => {
      const { bare, everyday } = context.stride;
      const hem = skirt.hemRound.value;
      const tells = (codes: readonly string[]): boolean =>
        codesOf(skirt).some((code) => codes.includes(code));
      expect(tells(BELOW_STEP)).toBe(hem < (bare?.value ?? 0));
      expect(tells(BELOW_EVERYDAY)).toBe(hem >= (bare?.value ?? 0) && hem < (everyday?.value ?? 0));
    }),
  );

  test(
    'is told with a wider mark that really does',
    every((drafted) => {
      if (!isNarrow(drafted)) return;
      const wider = figureOf(drafted, 'wider');
      expect(wider).toBeGreaterThan(drafted.skirt.marks.hemQuarter.value);
      const { raw } = drafted;
      const again = draftOf({ ...raw, cut: { ...raw.cut, hemAtFold: inMm(wider) } });
      expect(
        codesOf(again.skirt).filter((code) => [...BELOW_STEP, ...BELOW_EVERYDAY].includes(code)),
      ).toEqual([]);
    }),
  );

  test(
    'is told with a shorter skirt that really does',
    every((drafted) => {
      if (!isNarrow(drafted)) return;
      const shorter = figureOf(drafted, 'shorter');
      const { raw, context } = drafted;
      const length = context.body.waistToHem.value - shorter;
      // Not told of where it would not help; and shorter than that there is no skirt left to plan.
      if (Number.isNaN(shorter) || length < 100) return;
      const again = draftOf({ ...raw, body: { ...raw.body, waistToHem: inMm(length) } });
      expect(
        codesOf(again.skirt).filter((code) => [...BELOW_STEP, ...BELOW_EVERYDAY].includes(code)),
      ).toEqual([]);
    }),
  );

  test(
    'is told with a slit that reaches the knee and leaves enough closed above its end',
    every((drafted) => {
      if (!isNarrow(drafted)) return;
      const { skirt, context } = drafted;
      const slit = figureOf(drafted, 'slit');
      // A remedy that would not help is not told of.
      if (Number.isNaN(slit)) return;
      const walker = walkerOf(context.body);
      if (!walker || !context.body.hemHeight) throw new Error('their heights are known');
      const end = context.body.hemHeight.value + slit;
      expect(end).toBeGreaterThanOrEqual(walker.kneeHeight.value - 1e-6);
      const narrowing = (skirt.hemRound.value - skirt.opening.value) / skirt.finishedLength.value;
      const closed = skirt.hemRound.value - narrowing * slit;
      const need = hemNeededAt(walker, { ...context.body.hemHeight, value: mm(end) }).everyday.value;
      // Rounded up to a mark it ends where the skirt is a hair narrower.
      expect(closed).toBeGreaterThanOrEqual(need - 0.5 - narrowing * context.mark);
    }),
  );

  test('the wider the hem, the lower the slit', () => {
    const slits = [11, 12, 13, 14, 15, 16].map((hem) =>
      figureOf(
        draftOf({
          body: { waist: '26 in', hip: '34 in', waistToHem: '36 in', height: '5 ft 6 in' },
          cut: { fullness: 1.1, hemAtFold: `${String(hem)} in`, hemFloor: '0 in' },
        }),
        'slit',
      ),
    );
    expect(slits).toEqual(slits.toSorted((a, b) => b - a));
    expect(slits[0]).toBeGreaterThan(slits.at(-1) ?? Infinity);
  });

  test('the longer the skirt, the longer its slit', () => {
    const slits = [28, 30, 32, 34, 36, 38].map((length) =>
      figureOf(
        draftOf({
          body: { waist: '26 in', hip: '34 in', waistToHem: `${String(length)} in`, height: '5 ft 6 in' },
          cut: { fullness: 1.1, hemAtFold: '12 in', hemFloor: '0 in' },
        }),
        'slit',
      ),
    );
    expect(slits).toEqual(slits.toSorted((a, b) => a - b));
  });
});

describe('a hem of no wish', () => {
  const heightKnown = fc.integer({ min: 1000, max: 1950 }).chain((height) =>
    fc.record({
      waist: fc.constant(inMm(0.42 * height)),
      hip: fc.constant(inMm(0.58 * height)),
      waistToHem: fc.integer({ min: 250, max: Math.floor(0.6 * height) }).map(inMm),
      height: fc.constant(inMm(height)),
      age: fc.constantFrom(8, 30),
      waistToFloor: fc.constant(inMm(0.62 * height)),
    }),
  );
  for (const kind of ['flared', 'gathered'])
    test(
      `${kind}: is never too narrow to walk in`,
      samples(
        heightKnown.map((body) => ({ body, cut: { kind } })),
        draftOf,
        300,
      )((drafted) => {
        expect(isNarrow(drafted)).toBe(false);
        expect(drafted.skirt.hemRound.value).toBeGreaterThanOrEqual(
          (drafted.context.stride.everyday?.value ?? NaN) - 0.01,
        );
      }),
    );

  test('where neither height nor waist to floor is known nothing is said of walking but that it was not checked', () => {
    const body = readBody({
      waist: inches(29),
      hip: inches(36),
      waistToHem: inches(31),
      pace: 'usual',
    });
    expect(walkerOf(body)).toBeNull();
    expect(isNarrow(draftOf({ cut: { hemAtFold: '13 1/2 in', hemFloor: '0 in' } }))).toBe(false);
  });
});
