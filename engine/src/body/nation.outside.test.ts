// Source: NHANES 2017-2018 body measures (CDC/NCHS), everyone of 2 years and over with waist and height. Waist at the hip bone; hips not
// taken under 12 years and waist to floor not at all, so these are synthetic: hips 1.0 to 1.2 of the waist under 12, finished length
// 0.25 to 0.55 of height, waist to floor 0.60 of height.
import { describe, expect, test } from 'vitest';
import { numberIn, readCsv, sharedData } from '../testing/csv.ts';
import { halvesOf } from '../testing/halves.ts';
import { endlessIn } from '../testing/endlessIn.ts';
import { centimetres, mm, type Mm } from '../units/index.ts';
import { bodySettings, measureLimits, readBody, strideNeed, waysToWear, type BodyMeasures } from './index.ts';
import {
  hipForHeight,
  hipForWaist,
  hipFromWaist,
  waistForChildHeight,
  type Line,
  type Spreads,
} from './survey.ts';

const survey = sharedData('nhanes-2017-2018/bmx_j.csv');
const settings = { ...bodySettings, waistLevel: 'hip-bone' } as const;

interface Person {
  readonly age: number;
  readonly weight: number;
  readonly height: Mm;
  readonly waist: Mm;
  readonly hip: Mm | null;
}

describe.skipIf(survey === null)('the national survey', () => {
  const people = readCsv(survey ?? '').flatMap((row): Person[] => {
    const years = numberIn(row, 'RIDAGEYR') ?? NaN;
    const [height, waist, hip] = ['BMXHT', 'BMXWAIST', 'BMXHIP'].map((name) => numberIn(row, name));
    if (years < 2 || height === null || height === undefined || waist === null || waist === undefined)
      return [];
    return [
      {
        age: years,
        weight: numberIn(row, 'WTMEC2YR') ?? NaN,
        height: centimetres(height),
        waist: centimetres(waist),
        hip: hip === null || hip === undefined ? null : centimetres(hip),
      },
    ];
  });
  const taken = (share: number) => (person: Person) => ({
    waist: person.waist,
    hip: person.hip ?? mm(share * person.waist),
    waistToHem: mm(0.4 * person.height),
    waistToFloor: mm(0.6 * person.height),
    height: person.height,
    age: person.age,
    pace: 'usual' as const,
  });

  test('is large, and all of it is inside the limits of a measurement', () => {
    expect(people.length).toBeGreaterThan(7000);
    const outside = people.filter(({ waist, hip, height }) =>
      (
        [
          ['waist', waist],
          ['hip', hip ?? waist],
          ['height', height],
        ] as const
      ).some(([name, value]) => value <= measureLimits[name].least || value >= measureLimits[name].most),
    );
    expect(outside).toEqual([]);
  });

  const adults = people.filter(({ age }) => age >= 13);
  const children = people.filter(({ age }) => age < 13);
  const spreads: readonly (readonly [string, Spreads, readonly (readonly [number, number, number])[]])[] = [
    [
      'hip for a waist',
      hipForWaist,
      adults.flatMap(({ waist, hip, weight }) => (hip ? [[waist, hip, weight] as const] : [])),
    ],
    [
      'hip for a height',
      hipForHeight,
      adults.flatMap(({ height, hip, weight }) => (hip ? [[height, hip, weight] as const] : [])),
    ],
    [
      'waist for a child’s height',
      waistForChildHeight,
      children.map(({ height, waist, weight }) => [height, waist, weight] as const),
    ],
  ];
  test.each(spreads)(
    '%s: half lie below the middle line, 1 in 400 below the low and above the high',
    (_, [spread], rows) => {
      const all = rows.reduce((sum, [, , weight]) => sum + weight, 0);
      const below = ({ start, slope }: Line) =>
        rows.filter(([x, y]) => y < start + slope * x).reduce((sum, [, , weight]) => sum + weight, 0) / all;
      expect(below(spread.middle)).toBeCloseTo(0.5, 2);
      expect(Math.abs(below(spread.low) - 0.0025)).toBeLessThan(0.001);
      expect(Math.abs(1 - below(spread.high) - 0.0025)).toBeLessThan(0.001);
      for (const [x] of rows) {
        const at = ({ start, slope }: Line) => start + slope * x;
        expect(at(spread.low)).toBeLessThan(at(spread.middle));
        expect(at(spread.middle)).toBeLessThan(at(spread.high));
      }
    },
  );

  test('at every age fewer than 2 in 100 are asked whether a pair was misread', () => {
    for (const [from, to] of [
      [2, 6],
      [6, 13],
      [13, 20],
      [20, 40],
      [40, 60],
      [60, 81],
    ] as const) {
      const band = people.filter(({ age, hip }) => age >= from && age < to && (hip !== null || age < 13));
      const asked = band.filter((person) =>
        readBody(taken(1.1)(person), settings).notices.some(({ code }) => code === 'body.improbablePair'),
      );
      const share = asked.length / band.length;
      expect([from, to, share < 0.02]).toEqual([from, to, true]);
    }
  });

  test('waist larger than hip: those asked are few among the many who are so built', () => {
    const built = people.filter(({ age, waist, hip }) => age >= 20 && hip !== null && waist > hip);
    const asked = built.filter((person) =>
      readBody(taken(1)(person), settings).notices.some(({ code }) => code === 'body.improbablePair'),
    );
    expect(built.length).toBeGreaterThan(186);
    expect(asked.length / built.length).toBeLessThan(0.1);
  });

  test('everyone’s room to walk is finite, and grows with the skirt; synthetic hip, length and waist to floor', () => {
    const wrong = people.flatMap((person) =>
      (person.hip === null ? [1, 1.2] : [1]).filter((share) => {
        const strides = [0.25, 0.35, 0.45, 0.55].map((part) => {
          const body = readBody({ ...taken(share)(person), waistToHem: mm(part * person.height) }, settings);
          return {
            ...strideNeed(body, settings),
            problems: body.notices.filter(({ level }) => level === 'problem'),
          };
        });
        const sound = strides.every(
          ({ checked, needed, problems }) =>
            checked && Number.isFinite(needed.value) && problems.length === 0,
        );
        const grows = strides.every(({ needed }, at) => needed.value >= (strides[at - 1]?.needed.value ?? 0));
        return !sound || !grows;
      }),
    );
    expect(wrong).toEqual([]);
  }, 30_000);

  test('a child without waist to floor gets room enough for any length of skirt; synthetic waist to floor', () => {
    for (const person of children) {
      const { waistToFloor, ...bare } = taken(1.1)(person);
      const upper = strideNeed(readBody(bare, settings), settings).needed.value;
      const real = strideNeed(readBody({ ...bare, waistToFloor }, settings), settings).needed.value;
      expect(upper).toBeGreaterThanOrEqual(real);
    }
  });

  test('waist at the hip bone: the ± of the hip holds 88 to 92 % of the women that it was not fitted on', () => {
    const women = halvesSeen().map((half) => half.map(({ waist, hip }) => [waist, hip] as const));
    const [fitted = [], others = []] = women;
    const n = fitted.length;
    const [meanX, meanY] = [0, 1].map((at) => fitted.reduce((sum, pair) => sum + (pair[at] ?? NaN), 0) / n);
    const slope =
      fitted.reduce((sum, [x, y]) => sum + (x - (meanX ?? NaN)) * (y - (meanY ?? NaN)), 0) /
      fitted.reduce((sum, [x]) => sum + (x - (meanX ?? NaN)) ** 2, 0);
    const start = (meanY ?? NaN) - slope * (meanX ?? NaN);
    const left = fitted.reduce((sum, [x, y]) => sum + (y - start - slope * x) ** 2, 0);
    const line = hipFromWaist['hip-bone'];
    expect([fitted.length, others.length]).toEqual([1470, 1471]);
    expect(line.start).toBeCloseTo(start, 1);
    expect(line.slope).toBeCloseTo(slope, 4);
    expect(line.sd).toBeCloseTo(Math.sqrt(left / (n - 2)), 1);

    const held = others.filter(([waist, truth]) => {
      const { hip } = readBody({ waist, waistToHem: mm(700), pace: 'usual' }, settings);
      return Math.abs(hip.value - truth) <= (hip.plusMinus ?? 0);
    });
    expect(held.length / others.length).toBeGreaterThan(0.88);
    expect(held.length / others.length).toBeLessThan(0.92);
  });

  /** Women with both girths, in file order, whether or not their height was taken. */
  const halvesSeen = () =>
    halvesOf(
      readCsv(survey ?? '').flatMap((row) => {
        const [waist, hip] = [numberIn(row, 'BMXWAIST'), numberIn(row, 'BMXHIP')];
        const woman = numberIn(row, 'RIAGENDR') === 2 && (numberIn(row, 'RIDAGEYR') ?? 0) >= 13;
        if (!woman || numberIn(row, 'RIDEXPRG') === 1 || waist === null || hip === null) return [];
        return [{ waist: centimetres(waist), hip: centimetres(hip) }];
      }),
    );

  test('toddlers to elders: everybody is read, however worn and however little is known; synthetic lengths', () => {
    const known: readonly ((person: Person) => Partial<BodyMeasures>)[] = [
      () => ({}),
      () => ({ hip: undefined }),
      () => ({ hip: undefined, height: undefined, waistToFloor: undefined }),
      ({ height }) => ({
        waistToFloor: undefined,
        levels: { left: mm(0.6 * height), front: mm(0.58 * height) },
      }),
      ({ waist }) => ({ hip: undefined, halves: { left: mm(0.55 * waist), right: mm(0.5 * waist) } }),
    ];
    for (const [i, person] of people.entries()) {
      const wears = waysToWear[i % waysToWear.length];
      for (const part of known) {
        const body = readBody({ ...taken(1.1)(person), ...part(person), wears }, settings);
        expect(endlessIn([body, strideNeed(body, settings)])).toEqual([]);
      }
    }
  }, 60_000);
});
