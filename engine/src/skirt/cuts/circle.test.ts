import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, lengthOf, selfIntersects } from '../../geometry/index.ts';
import { codesOf, draftOf, samples, type Drafted } from '../../testing/drafts.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyCloth } from '../../testing/cloths.ts';
import { anyCircle } from '../../testing/cuts.ts';
import type { RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';
import { waistOf } from '../waists/index.ts';
import type { CircleOptions } from './circle.ts';
import { shareOf } from './circlePieces.ts';

const anyCircleRequest: fc.Arbitrary<RawRequest> = fc.record({
  body: anyBody,
  cut: anyCircle,
  waist: anyWaist,
  cloth: anyCloth,
  mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
});

const circleOf = (raw: RawRequest): Drafted & { readonly cut: CircleOptions } => {
  const drafted = draftOf(raw);
  if (drafted.request.cut.kind !== 'circle') throw new Error('not a circle');
  return { ...drafted, cut: drafted.request.cut };
};
const every = samples(anyCircleRequest, circleOf, 700);
const levelOnly = (check: (drafted: ReturnType<typeof circleOf>) => void) =>
  every((drafted) => {
    const { rises } = drafted.context.body;
    if (Object.values(rises).every(({ value }) => value === 0)) check(drafted);
  });
const edges = ({ skirt }: Drafted, name: string): number[] =>
  skirt.panels.map(({ shape }) => lengthOf(shape.edges.find((edge) => edge.name === name)?.finished ?? []));
/** Least round that the waist asks of the panels. */
const needOf = ({ context, request }: Drafted): number =>
  waistOf(request.waist).top({ ...context, inTucks: null, inHem: null }, request.waist).round.value;
const sum = (lengths: readonly number[]): number => lengths.reduce((all, each) => all + each, 0);
const adult = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
const drawn = (cut: Record<string, unknown>, more: RawRequest = {}) =>
  draftOf({
    body: adult,
    cloth: { width: '44 in', washed: true },
    waist: { kind: 'turned casing' },
    ...more,
    cut: { kind: 'circle', ...cut },
  }).skirt;

describe('the waist', () => {
  test(
    'as it is sewn is never tighter than what the waist asks, whatever the seams take',
    every((drafted) => {
      expect(sum(edges(drafted, 'waist'))).toBeGreaterThanOrEqual(needOf(drafted) - 0.02);
      expect(codesOf(drafted.skirt)).not.toContain('skirt.doesNotGoOn');
    }),
  );

  test(
    'is less than a mark of radius wider than it must be, on a body that stands level',
    levelOnly((drafted) => {
      const { skirt, context, cut } = drafted;
      const needed = needOf(drafted);
      const n = skirt.sideSeams;
      const turn = 2 * Math.PI * shareOf[cut.fraction];
      const radius = skirt.panels[0].shape.apex?.waistRadius ?? NaN;
      const marks = radius / context.mark;
      expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-6);
      // A seam parallel to its side takes r·asin(a/r) of the arc.
      const takes = (r: number) => 2 * n * r * Math.asin(Math.min(1, cut.sideSeam / r));
      const before = radius - 1.0001 * context.mark;
      if (before > cut.sideSeam + context.mark)
        expect(turn * before - takes(before)).toBeLessThan(needed + 0.05);
    }),
  );

  test('its working is the round with its seams ÷ 6.28 ÷ the fraction', () => {
    // 37 in and two ¼ in allowances on half a circle: 37.5 ÷ 3.1416 = 11.937, chalked 12 in.
    const skirt = drawn({ fraction: '1/2', pieces: 1 });
    expect(skirt.panels[0].shape.apex?.waistRadius).toBeCloseTo(inches(12), 6);
    expect(skirt.opening.value).toBeCloseTo(Math.PI * inches(12) - inches(0.5), 6);
  });
});

describe('pieces', () => {
  const names = (cut: Record<string, unknown>) => drawn(cut).panels.map(({ name }) => name);

  test('are halves, quarters or parts of a circle, each by its name', () => {
    expect(names({ fraction: 'full', pieces: 1 })).toEqual(['circle']);
    expect(names({ fraction: 'full', pieces: 2 })).toEqual(['half circle', 'half circle']);
    expect(names({ fraction: '1/2', pieces: 2 })).toEqual(['quarter circle', 'quarter circle']);
    expect(names({ fraction: '1/4', pieces: 1 })).toEqual(['quarter circle']);
    expect(names({ fraction: '3/4', pieces: 4 })).toEqual(Array<string>(4).fill('part of a circle'));
  });

  test('go once round the body: a lone one opens behind, two at the sides, four at the sides, in front and behind', () => {
    const seams = (pieces: number) =>
      drawn({ fraction: 'full', pieces }).panels.map(({ around }) => ((around.to % 1) + 1) % 1);
    expect(seams(1)).toEqual([0.5]);
    expect(seams(2)).toEqual([0.25, 0.75]);
    expect(seams(4)).toEqual([0.25, 0.5, 0.75, 0]);
  });

  test(
    'of no wish are the fewest that lie on the cloth, on its length or turned a quarter',
    every(({ skirt, context, cut }) => {
      const fits = (of: typeof skirt): boolean =>
        of.panels.every(({ shape }) => {
          const { width, height } = boundsOf(shape.cut);
          return Math.min(width, height) <= context.clothWidth.value;
        });
      const tooWide = codesOf(skirt).includes('skirt.circleTooWide');
      expect(tooWide).toBe(!fits(skirt));
      if (cut.pieces !== 'auto') expect(skirt.panels.length).toBe(cut.pieces);
      else if (tooWide) expect(skirt.panels.length).toBe(4);
    }),
  );

  test.each([
    ['44 in', 2],
    ['90 in', 1],
    ['20 in', 4],
  ])('a full circle on %s cloth is cut in %i', (width, pieces) => {
    expect(
      drawn({ fraction: 'full' }, { cloth: { width, selvage: '0 in', washed: true } }).panels.length,
    ).toBe(pieces);
  });

  test('too wide for the cloth is told of, with the radius', () => {
    const notice = drawn({ fraction: 'full' }, { cloth: { width: '20 in', washed: true } }).notices.find(
      ({ code }) => code === 'skirt.circleTooWide',
    );
    expect(notice?.params).toMatchObject({ more: 'no' });
  });

  test(
    'have sides alike where they are sewn together, to a tenth of a millimetre',
    every((drafted) => {
      const [right, left] = [edges(drafted, 'right'), edges(drafted, 'left')];
      right.forEach((side, i) => {
        expect(Math.abs(side - (left[(i + 1) % left.length] ?? NaN))).toBeLessThan(0.1);
      });
    }),
  );

  test(
    'never cross or touch themselves, not even a whole circle slit open',
    every(({ skirt }) => {
      for (const { shape } of skirt.panels) {
        expect(selfIntersects(shape.cut)).toBe(false);
        expect(selfIntersects(shape.trimmed)).toBe(false);
        expect(selfIntersects(shape.edges.flatMap(({ finished }) => finished))).toBe(false);
      }
    }),
  );

  test(
    'add up to the ring between the raw edges',
    levelOnly(({ skirt, cut }) => {
      const { apex, topAllowance, hemAllowance } = skirt.panels[0].shape;
      if (!apex) throw new Error('a circle has a middle');
      const inner = Math.max(0, apex.waistRadius - topAllowance);
      const ring = Math.PI * shareOf[cut.fraction] * ((apex.hemRadius + hemAllowance) ** 2 - inner ** 2);
      // A whole circle in one piece wants a ten-thousandth of a turn where it is slit.
      expect(sum(skirt.panels.map(({ shape }) => areaOf(shape.trimmed))) / ring).toBeCloseTo(1, 4);
    }),
  );
});

describe('the hem', () => {
  test(
    'hangs level: every line from waist to hem is the panels’ length',
    every((drafted) => {
      const { skirt } = drafted;
      const { apex } = skirt.panels[0].shape;
      expect((apex?.hemRadius ?? NaN) - (apex?.waistRadius ?? NaN)).toBeCloseTo(skirt.panelLength.value, 6);
      expect(skirt.hang).toMatchObject({ shape: 'curved', sideExcess: { value: 0 } });
    }),
  );

  test(
    'is as round as its radius says, less its seams',
    every((drafted) => {
      const sewn = sum(edges(drafted, 'hem'));
      expect(Math.abs(sewn - drafted.skirt.hemRound.value)).toBeLessThan(0.51);
    }),
  );

  test.each([
    ['full', 0.25, 0],
    ['3/4', 0.25, 0],
    ['1/2', 0.5, 0.25],
    ['1/3', 0.75, 0.25],
    ['1/4', 0.75, 0.25],
  ])('of %s of a circle is %f in, %f in of it turned under', (fraction, hem, under) => {
    const skirt = drawn({ fraction });
    expect(skirt.hemAllowance.value).toBeCloseTo(inches(hem), 9);
    expect(skirt.hemTurnUnder).toBeCloseTo(inches(under), 9);
  });

  test('of a maker’s own depth is kept', () => {
    const skirt = drawn({ fraction: 'full', hem: '1 in', hemTurnUnder: '1/4 in' });
    expect([skirt.hemAllowance.value, skirt.hemTurnUnder]).toEqual([inches(1), inches(0.25)]);
    expect(codesOf(skirt)).toContain('skirt.hemRipples');
  });

  test('of metric makers has metric figures', () => {
    const depth = (fraction: string) => drawn({ fraction }, { measure: 'metric' }).hemAllowance.value;
    expect([depth('full'), depth('1/2'), depth('1/4')]).toEqual([6, 12, 20]);
  });
});

describe('what a circle asks for', () => {
  test('a turned casing on half a circle and more is told to be too short where it lands', () => {
    for (const fraction of ['1/2', '3/4', 'full'])
      expect(codesOf(drawn({ fraction }))).toContain('skirt.casingTight');
  });

  test('its ¼ in hem eases on a full circle, and 2 in does not', () => {
    expect(codesOf(drawn({ fraction: 'full' }))).not.toContain('skirt.hemRipples');
    expect(codesOf(drawn({ fraction: 'full', hem: '2 in' }))).toContain('skirt.hemRipples');
  });

  test('it hangs a day, and no angle past the grain is named', () => {
    const skirt = drawn({ fraction: 'full', pieces: 1 });
    expect(skirt.hang.mustHang).toBe(true);
    expect(codesOf(skirt)).toContain('skirt.circleDrops');
    expect(codesOf(skirt)).not.toContain('skirt.offGrain');
  });

  test('a circle is swung, not marked at the fold', () => {
    expect(drawn({}).marking).toBe('swung');
  });
});
