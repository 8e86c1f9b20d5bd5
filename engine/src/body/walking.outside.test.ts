// Source: published step lengths over height; a measured hem of 125 cm at the knee for a standard figure (abstract of "Some
// Function of Tight Skirt"); least hem of a long gathered skirt 208 cm (second hand); the worked table is geometry for a height of
// 165 cm with the step 68.1 cm and the leg girths given in it.
import { describe, expect, test } from 'vitest';
import { numberIn, readCsv, sharedData } from '../testing/csv.ts';
import { centimetres, inches, mm } from '../units/index.ts';
import { length } from './codes.ts';
import { roundLegs, stepGap } from './hem-need.ts';
import { bodySettings, hemNeededAt, readBody, strideNeed, walkerOf, type Walker } from './index.ts';

const cm = (value: number) => length(centimetres(value), 'body.calf');
const standard = (): Walker => {
  const walker = walkerOf(
    readBody({
      waist: centimetres(70),
      hip: centimetres(94),
      waistToHem: centimetres(60),
      height: centimetres(165),
      pace: 'usual',
    }),
  );
  if (!walker) throw new Error('a body with a height walks');
  return walker;
};

const table = [
  { hem: 'knee', share: 0.285, gap: 31.5, leg: 37, least: 100 },
  { hem: 'mid calf', share: 0.18, gap: 45.0, leg: 36, least: 126 },
  { hem: 'ankle', share: 0.039, gap: 63.1, leg: 24, least: 150 },
];

describe('the worked table for 165 cm', () => {
  test.each(table)('hem at the $hem, with the girth it assumes', ({ share, gap, leg, least }) => {
    const apart = stepGap(cm(68.1), cm(0.53 * 165), cm(share * 165));
    expect(apart.value / 10).toBeCloseTo(gap, 1);
    expect(Math.round(roundLegs(apart, cm(leg)).value / 10)).toBe(least);
  });

  test.each(table)('hem at the $hem, within 5 cm with the survey’s leg', ({ share, least }) => {
    const bare = hemNeededAt(standard(), cm(share * 165)).bare.value / 10;
    console.info(`165 cm, hem at ${share} of height: ${bare.toFixed(1)} cm (table ${least})`);
    expect(Math.abs(bare - least)).toBeLessThan(5);
  });

  test('the step is 68.1 cm', () => {
    expect(standard().step.value / 10).toBeCloseTo(68.1, 1);
  });
});

describe('hems that were measured or are asked for', () => {
  const knee = () => hemNeededAt(standard(), standard().kneeHeight);

  test('a knee-length skirt of 95 cm hem is below even the bare figure; one of 130 cm is above the everyday one', () => {
    expect(knee().bare.value).toBeGreaterThan(950);
    expect(knee().everyday.value).toBeLessThan(1300);
  });

  test('the everyday hem at the knee is the measured 125 cm, within 4 cm', () => {
    expect(Math.abs(knee().everyday.value - 1250)).toBeLessThan(40);
  });

  test('208 cm for a long skirt is enough for anybody up to 1.8 m at every pace but brisk', () => {
    for (const height of [150, 165, 180])
      for (const pace of ['easy', 'usual'] as const) {
        const body = readBody({
          waist: centimetres(75),
          hip: centimetres(100),
          waistToHem: centimetres(0.56 * height),
          height: centimetres(height),
          pace,
        });
        expect(strideNeed(body).needed.value).toBeLessThan(2080);
      }
  });

  test('makers’ 15 in at the double fold is the 60 in of an adult whose walking can’t be checked', () => {
    const body = readBody({ waist: inches(29), hip: inches(36), waistToHem: inches(31), pace: 'usual' });
    expect(strideNeed(body).needed.value / 4).toBeCloseTo(inches(15), 9);
  });
});

const gait = sharedData('gait-published/step_length.csv');
describe.skipIf(gait === null)('published steps', () => {
  const rows = readCsv(gait ?? '').filter(({ quantity }) => quantity === 'step_length_over_stature');
  const mean = (key: string) => {
    const row = rows.find((each) => each['key'] === key);
    return row ? (numberIn(row, 'mean') ?? NaN) : NaN;
  };
  const shareAt = (age: number) =>
    bodySettings.usualStepShares.findLast(({ fromAge }) => fromAge <= age)?.share ?? NaN;

  test.each([
    ['hausdorff_3_4', 3.5],
    ['hausdorff_6_7', 7],
    ['hausdorff_11_14', 12.5],
    ['espy_lit_fearless', 70],
  ] as const)('%s: the usual step of that age within 0.005 of height', (key, age) => {
    expect(Math.abs(shareAt(age) - mean(key))).toBeLessThan(0.005);
  });

  test('the adult’s lies between the steps cued short and cued long', () => {
    expect(shareAt(30)).toBeGreaterThan(mean('espy_B'));
    expect(shareAt(30)).toBeLessThan(mean('espy_C'));
  });

  test('paces are as the same people walked slowly, as they preferred and fast', () => {
    const walked = (key: string) =>
      numberIn(readCsv(gait ?? '').find((row) => row['key'] === key) ?? {}, 'mean') ?? NaN;
    const preferred = walked('schulz_preferred');
    expect(bodySettings.paceFactors.easy).toBeCloseTo(walked('schulz_slow') / preferred, 2);
    expect(bodySettings.paceFactors.brisk).toBeCloseTo(walked('schulz_fast') / preferred, 2);
  });

  test('a woman’s 66 cm at free speed is within 3 cm of the usual step of 163 cm', () => {
    const women = readCsv(gait ?? '').find(
      ({ key, quantity }) => key === 'murray_women' && quantity === 'step_length',
    );
    expect(Math.abs(mm(0.413 * 1630) / 10 - (numberIn(women ?? {}, 'mean') ?? NaN))).toBeLessThan(3);
  });
});
