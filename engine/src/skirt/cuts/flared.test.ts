import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, ofLevelBody, samples, type Drafted } from '../../testing/drafts.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyFlared } from '../../testing/cuts.ts';
import type { RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { boundsOf, chordWithin, lengthOf, line, ordinate, point } from '../../geometry/index.ts';
import { inches, mm } from '../../units/index.ts';
import type { FlaredOptions } from './flared.ts';

const anyFlaredRequest: fc.Arbitrary<RawRequest> = fc
  .record({
    body: anyBody,
    cut: anyFlared,
    waist: anyWaist,
    mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
  })
  .map((raw) => ofLevelBody({ ...raw, cut: { ...raw.cut, kind: 'flared' } }));

const flaredOf = (raw: RawRequest): Drafted & { readonly cut: FlaredOptions } => {
  const drafted = draftOf(raw);
  if (drafted.request.cut.kind !== 'flared') throw new Error('not a flared cut');
  return { ...drafted, cut: drafted.request.cut };
};
const every = samples(anyFlaredRequest, flaredOf, 1500);
const edgeOf = ({ skirt }: Drafted, name: string) =>
  skirt.panels[0].shape.edges.find((edge) => edge.name === name)?.finished ?? [];
const flareOf = ({ skirt }: Drafted): number => skirt.marks.hemQuarter.value - skirt.marks.waistQuarter.value;

describe('marks of the flared cut', () => {
  test(
    'the top is the larger of waist and hip × fullness ÷ 4, rounded up and never down',
    every(({ skirt, context, cut }) => {
      const exact = (Math.max(context.body.waist.value, context.body.hip.value) * cut.fullness) / 4;
      expect(skirt.marks.waistQuarter.value).toBeGreaterThanOrEqual(exact - 1e-5);
      expect(skirt.marks.waistQuarter.value).toBeLessThan(exact + context.mark);
    }),
  );

  test(
    'the hem of no wish is the largest of floor, flare and step, unless that were more than half a circle',
    every(({ skirt, context, cut }) => {
      if (cut.hemAtFold !== undefined || codesOf(skirt).includes('skirt.flareCapped')) return;
      const floor = context.body.adult ? cut.hemFloor : 0;
      const flare = skirt.marks.waistQuarter.value + cut.leastFlare;
      const { stride } = context;
      const step = stride.checked || !context.body.adult ? stride.needed.value / 4 + cut.sideSeam : 0;
      const exact = Math.max(floor, flare, step);
      expect(skirt.marks.hemQuarter.value).toBeGreaterThanOrEqual(exact - 1e-5);
      expect(skirt.marks.hemQuarter.value).toBeLessThan(exact + context.mark);
    }),
  );

  test('a hem mark of the maker’s own is kept, and she is told what it goes against', () => {
    const hem = (hemAtFold: string, more = {}) =>
      draftOf({ body: { waist: '29 in', hip: '36 in' }, cut: { hemAtFold, ...more } }).skirt;
    expect(hem('17 in').marks.hemQuarter.value).toBeCloseTo(inches(17), 9);
    expect(codesOf(hem('14 in'))).toContain('skirt.hemBelowFloor');
    expect(codesOf(hem('12 in'))).toContain('skirt.hemWidened');
    expect(hem('12 in').marks.hemQuarter.value).toBe(hem('12 in').marks.waistQuarter.value);
  });

  test(
    'no panel opens wider than half a circle, and one that would is told of',
    every(({ skirt, cut }) => {
      const { apex, length } = skirt.panels[0].shape;
      if (apex) expect(apex.halfSweep).toBeLessThanOrEqual(Math.PI / 2 + 1e-6);
      const widest = skirt.marks.waistQuarter.value + (Math.PI / 2) * length;
      const capped = codesOf(skirt).includes('skirt.flareCapped');
      if (cut.hemAtFold !== undefined && cut.hemAtFold > widest) expect(capped).toBe(true);
    }),
  );
});

describe('the finished skirt', () => {
  test(
    'its finished waist and hem are its opening and its hem round, but for the slope of the seam',
    every((drafted) => {
      const { skirt, cut } = drafted;
      const curved = skirt.hang.shape === 'curved';
      // The allowance is measured square to the seam: along the waist it takes √(1 + slope²) times as much.
      const slope = curved ? 0 : flareOf(drafted) / skirt.panelLength.value;
      const more = 4 * cut.sideSeam * (Math.hypot(1, slope) - 1);
      const apex = skirt.panels[0].shape.apex?.waistRadius ?? Infinity;
      // On a ring, asin(s/r)·r is more than s by s³/6r² and a little: next to nothing where r is not small.
      const onRing = 4 * cut.sideSeam * ((cut.sideSeam / apex) ** 2 / 4);
      for (const [name, round] of [
        ['waist', skirt.opening.value],
        ['hem', skirt.hemRound.value],
      ] as const) {
        const finished = 2 * lengthOf(edgeOf(drafted, name));
        expect(finished).toBeLessThanOrEqual(round + 1e-4);
        expect(finished).toBeGreaterThanOrEqual(round - more - onRing - 1e-4);
      }
    }),
  );

  test(
    'with the usual seams and a level hem that is less than 0.3 mm for any skirt of 51 cm or more',
    samples(
      anyBody.map((body) => ofLevelBody({ body })),
      draftOf,
      500,
    )((drafted) => {
      if (drafted.skirt.finishedLength.value < 510) return;
      expect(drafted.skirt.opening.value - 2 * lengthOf(edgeOf(drafted, 'waist'))).toBeLessThan(0.3);
      expect(drafted.skirt.hemRound.value - 2 * lengthOf(edgeOf(drafted, 'hem'))).toBeLessThan(0.3);
    }),
  );

  test(
    'its raw edges are as wide as the marks for them say',
    every(({ skirt, context }) => {
      const { shape } = skirt.panels[0];
      const { waistRadius: r, halfSweep } = shape.apex ?? { waistRadius: Infinity, halfSweep: 0 };
      const tooDeep = shape.hemAllowance >= shape.length || shape.topAllowance >= Math.min(r, shape.length);
      if (tooDeep) return;
      const acrossAt = (y: number): number =>
        lengthOf(chordWithin(shape.trimmed, [line(point(-1e4, y), point(1e4, y))])[0] ?? []) / 2;
      const [top, hem] = shape.apex
        ? [halfSweep * (r - shape.topAllowance), halfSweep * (shape.apex.hemRadius + shape.hemAllowance)]
        : [acrossAt(-shape.topAllowance), acrossAt(shape.length + shape.hemAllowance)];
      expect(Math.abs(skirt.marks.casingEnd.value - top)).toBeLessThanOrEqual(context.mark / 2 + 1e-4);
      expect(Math.abs(skirt.marks.hemEnd.value - hem)).toBeLessThanOrEqual(context.mark / 2 + 1e-4);
      expect(skirt.marks.casingEnd.exact).toBeCloseTo(top, 4);
      expect(skirt.marks.hemEnd.exact).toBeCloseTo(hem, 4);
    }),
  );
});

describe('the hem hangs level', () => {
  test(
    'the curve takes over exactly past the tolerance, or where it is asked for',
    every((drafted) => {
      const { skirt, cut } = drafted;
      const flare = flareOf(drafted);
      const length = skirt.panelLength.value;
      const excess = Math.sqrt(length ** 2 + flare ** 2) - length;
      // Closer than this the root above loses its digits.
      if (Math.abs(excess - cut.levelTolerance) < 1e-6) return;
      const past = excess > cut.levelTolerance;
      const curved = cut.hemline === 'level' ? flare > 0 : cut.hemline === 'auto' && past && flare > 0;
      expect(skirt.hang.shape).toBe(curved ? 'curved' : 'straight');
      expect(skirt.panels[0].shape.apex !== null).toBe(curved);
      expect(codesOf(skirt).includes('skirt.curvedHem')).toBe(curved);
      expect(codesOf(skirt).includes('skirt.hemNotLevel')).toBe(cut.hemline === 'straight' && past);
      expect(skirt.hang.sideExcess.value).toBeCloseTo(curved ? 0 : excess, 4);
    }),
  );

  test('a 6 mm tolerance, to the mark: just inside stays straight, the next mark curves', () => {
    // √(787.4² + 97²) − 787.4 is about 5.95 mm, with 98 mm about 6.08 mm.
    const hemAt = (flare: number) =>
      draftOf({
        mark: '1 mm',
        body: { hip: '36 in', waist: '29 in', waistToHem: '787 mm' },
        cut: { hemAtFold: `${String(343 + flare)} mm`, hemFloor: '0 in' },
      }).skirt;
    expect(hemAt(0).marks.waistQuarter.value).toBe(343);
    expect(hemAt(97).hang.shape).toBe('straight');
    expect(hemAt(98).hang.shape).toBe('curved');
  });

  test('equal marks are a rectangle, level or not: nothing is divided by nothing', () => {
    for (const hemline of ['auto', 'straight', 'level']) {
      const drafted = flaredOf({
        cut: { hemline, leastFlare: '0 in', hemFloor: '0 in', hemAtFold: '10 in' },
      });
      expect(flareOf(drafted)).toBe(0);
      expect(drafted.skirt.hang).toMatchObject({ shape: 'straight', hemOrdinates: [] });
      expect(drafted.skirt.hang.sideExcess.value).toBe(0);
      expect(lengthOf(edgeOf(drafted, 'waist'))).toBeCloseTo(lengthOf(edgeOf(drafted, 'hem')), 9);
    }
  });

  test(
    'the values to measure up from the line lie on the drafted arcs, to half a mark',
    every(({ skirt, context }) => {
      const { apex } = skirt.panels[0].shape;
      const { waistOrdinates, hemOrdinates } = skirt.hang;
      if (!apex) {
        expect([...waistOrdinates, ...hemOrdinates]).toEqual([]);
        return;
      }
      for (const [dots, radius] of [
        [waistOrdinates, apex.waistRadius],
        [hemOrdinates, apex.hemRadius],
      ] as const)
        for (const { across, up } of dots) {
          // A point of the arc lies a whole radius from the apex.
          const exact = up.exact ?? mm(NaN);
          expect(Math.hypot(across, radius - exact) / radius).toBeCloseTo(1, 9);
          expect(Math.abs(up.value - exact)).toBeLessThanOrEqual(context.mark / 2 + 1e-6);
          expect(exact).toBeCloseTo(ordinate(radius, across), 6);
          expect(across).toBeLessThanOrEqual(radius * Math.sin(apex.halfSweep) + 1e-6);
        }
    }),
  );

  test('dots stand every 2 in from the centre fold in inches, every 5 cm in metric, and the last at the side', () => {
    const dots = (mark: string) =>
      draftOf({ mark, cut: { hemAtFold: '24 in' } }).skirt.hang.hemOrdinates.map(({ across }) => across);
    expect(dots('1/8 in').slice(0, 3)).toEqual([inches(2), inches(4), inches(6)]);
    expect(dots('2 mm').slice(0, 3)).toEqual([50, 100, 150]);
    const { hang, panels } = draftOf({ cut: { hemAtFold: '24 in' } }).skirt;
    const { hemRadius, halfSweep } = panels[0].shape.apex ?? { hemRadius: 0, halfSweep: 0 };
    const reach = hemRadius * Math.sin(halfSweep);
    expect(reach - (hang.hemOrdinates.at(-1)?.across ?? 0)).toBeLessThanOrEqual(1);
  });

  test(
    'a curve takes so much more depth of cloth than its length, casing and hem as is said',
    every(({ skirt }) => {
      const { shape } = skirt.panels[0];
      if (shape.apex && shape.apex.waistRadius < shape.topAllowance) return;
      const straight = shape.length + shape.topAllowance + shape.hemAllowance;
      expect(boundsOf(shape.trimmed).height - straight).toBeCloseTo(skirt.hang.extraDepth.value, 4);
    }),
  );

  test(
    'an edge that runs more than 15° off the grain hangs before its hem is trued',
    every((drafted) => {
      const { skirt } = drafted;
      const lean = skirt.panels[0].shape.apex
        ? flareOf(drafted) / skirt.panelLength.value
        : Math.atan(flareOf(drafted) / skirt.panelLength.value);
      if (Math.abs(lean - Math.PI / 12) < 1e-9) return;
      expect(skirt.hang.mustHang).toBe(lean > Math.PI / 12);
      expect(codesOf(skirt).includes('skirt.offGrain')).toBe(lean > Math.PI / 12);
    }),
  );

  test('straight rows would meet at the side seam at twice the lean of the side', () => {
    const drafted = flaredOf({ cut: { hemline: 'straight', hemAtFold: '20 in' } });
    const lean = Math.atan(flareOf(drafted) / drafted.skirt.panelLength.value);
    expect(drafted.skirt.hang.sideAngle.value).toBeCloseTo(2 * lean, 9);
  });
});
