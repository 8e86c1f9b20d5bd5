// Source: ANSUR II, 1,986 women and 4,082 men of the U.S. Army, 2010-2012 (U.S. Army Natick). Waist at the navel. Where a finished
// length is needed it is synthetic: 0.25 to 0.55 of height.
import { describe, expect, test } from 'vitest';
import { numberIn, readCsv, sharedData, type CsvRow } from '../testing/csv.ts';
import { mm } from '../units/index.ts';
import {
  bodySettings,
  hemNeededAt,
  legPoints,
  paces,
  readBody,
  strideNeed,
  waistLevels,
  walkerOf,
  type BodyMeasures,
  type LegPoint,
  type WaistLevel,
} from './index.ts';
import { hipForWaist, heightFromWaistToFloor, waistToFloorFromHeight, type FittedLine } from './survey.ts';

const women = sharedData('ansur2/ansur2_female.csv');
const men = sharedData('ansur2/ansur2_male.csv');
const length = (row: CsvRow, name: string) => mm(numberIn(row, name) ?? NaN);
const columns = (rows: readonly CsvRow[], x: string, y: string) =>
  rows.map((row) => [length(row, x), length(row, y)] as const);

/** Ordinary least squares, written for this check alone. */
function fit(pairs: readonly (readonly [number, number])[]): FittedLine {
  const n = pairs.length;
  const meanX = pairs.reduce((sum, [x]) => sum + x, 0) / n;
  const meanY = pairs.reduce((sum, [, y]) => sum + y, 0) / n;
  const slope =
    pairs.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0) /
    pairs.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  const start = meanY - slope * meanX;
  const left = pairs.reduce((sum, [x, y]) => sum + (y - start - slope * x) ** 2, 0);
  return { start, slope, sd: Math.sqrt(left / (n - 2)) };
}

const levelColumn: Readonly<Record<WaistLevel, string>> = {
  natural: 'tenthribheight',
  navel: 'waistheightomphalion',
  'hip-bone': 'iliocristaleheight',
};
const expectLine = (line: FittedLine, expected: FittedLine) => {
  expect(line.start).toBeCloseTo(expected.start, 0);
  expect(line.slope).toBeCloseTo(expected.slope, 3);
  expect(line.sd).toBeCloseTo(expected.sd, 0);
};

describe.skipIf(women === null || men === null)('the army survey', () => {
  const female = readCsv(women ?? '');
  const male = readCsv(men ?? '');
  const measures = (row: CsvRow, part: number): BodyMeasures => ({
    waist: length(row, 'waistcircumference'),
    hip: length(row, 'buttockcircumference'),
    waistToHem: mm(part * length(row, 'stature')),
    waistToFloor: length(row, 'waistheightomphalion'),
    height: length(row, 'stature'),
    calf: length(row, 'calfcircumference'),
    age: numberIn(row, 'Age') ?? NaN,
    pace: 'usual',
  });

  test('holds the people it says', () => {
    expect([female.length, male.length]).toEqual([1986, 4082]);
  });

  test.each(waistLevels)('waist at the %s: both lines are its least squares', (level) => {
    const column = levelColumn[level];
    expectLine(fit(columns(female, 'stature', column)), waistToFloorFromHeight[level]);
    expectLine(fit(columns(female, column, 'stature')), heightFromWaistToFloor[level]);
  });

  test('hip for a waist at the navel is its least squares, with three standard deviations either way', () => {
    const { start, slope, sd } = fit(columns(female, 'waistcircumference', 'buttockcircumference'));
    const spread = hipForWaist[1];
    expect(spread?.middle.start).toBeCloseTo(start, 0);
    expect(spread?.middle.slope).toBeCloseTo(slope, 3);
    expect((spread?.high.start ?? NaN) - start).toBeCloseTo(3 * sd, 0);
  });

  test.each(waistLevels)(
    'waist at the %s: the ± of both estimates holds about 95 % of the women',
    (level) => {
      const settings = { ...bodySettings, waistLevel: level };
      const held = (rows: readonly CsvRow[], known: 'height' | 'waistToFloor') => {
        const inside = rows.filter((row) => {
          const truth = { height: length(row, 'stature'), waistToFloor: length(row, levelColumn[level]) };
          const wanted = known === 'height' ? 'waistToFloor' : 'height';
          const { waist, hip, waistToHem, pace } = measures(row, 0.4);
          const estimate = readBody({ waist, hip, waistToHem, pace, [known]: truth[known] }, settings)[
            wanted
          ];
          return Math.abs((estimate?.value ?? NaN) - truth[wanted]) <= (estimate?.plusMinus ?? 0);
        });
        return inside.length / rows.length;
      };
      const shares = {
        womenFloor: held(female, 'height'),
        womenHeight: held(female, 'waistToFloor'),
        menFloor: held(male, 'height'),
        menHeight: held(male, 'waistToFloor'),
      };
      console.info(`± holds, waist at the ${level}:`, shares);
      for (const share of [shares.womenFloor, shares.womenHeight]) {
        expect(share).toBeGreaterThan(0.94);
        expect(share).toBeLessThan(0.96);
      }
    },
  );

  test('a line fitted on every other woman holds about 95 % of those between', () => {
    for (const level of waistLevels) {
      const pairs = columns(female, 'stature', levelColumn[level]);
      const { start, slope, sd } = fit(pairs.filter((_, at) => at % 2 === 0));
      const others = pairs.filter((_, at) => at % 2 === 1);
      const held =
        others.filter(([x, y]) => Math.abs(y - start - slope * x) <= 1.96 * sd).length / others.length;
      expect(held).toBeGreaterThan(0.93);
      expect(held).toBeLessThan(0.97);
    }
  });

  test('leg shares are the women’s means; the hip swings within 3 % of the survey’s hip joint landmark', () => {
    const mean = (column: string) =>
      female.reduce((sum, row) => sum + length(row, column) / length(row, 'stature'), 0) / female.length;
    const girth: Readonly<Record<LegPoint, string>> = {
      ankle: 'anklecircumference',
      calf: 'calfcircumference',
      aboveKnee: 'lowerthighcircumference',
      thigh: 'thighcircumference',
    };
    for (const point of legPoints)
      expect(bodySettings.legShares[point].girth).toBeCloseTo(mean(girth[point]), 4);
    expect(bodySettings.legShares.ankle.level).toBeCloseTo(mean('lateralmalleolusheight'), 4);
    expect(bodySettings.legShares.thigh.level).toBeCloseTo(mean('crotchheight'), 4);
    expect(bodySettings.legShares.aboveKnee.level - mean('kneeheightmidpatella')).toBeCloseTo(0.03, 2);
    expect(Math.abs(bodySettings.hipHeightShare / mean('trochanterionheight') - 1)).toBeLessThan(0.03);
  });

  test('a measured calf foretells the thigh above the knee better than height alone', () => {
    const error = (scaled: boolean) =>
      female.reduce((sum, row) => {
        const { calf, ...rest } = measures(row, 0.4);
        const walker = walkerOf(readBody(scaled ? { ...rest, calf } : rest));
        return sum + Math.abs((walker?.leg[2]?.girth.value ?? NaN) - length(row, 'lowerthighcircumference'));
      }, 0) / female.length;
    console.info(
      `mean error above the knee: height ${error(false).toFixed(1)} mm, calf ${error(true).toFixed(1)} mm`,
    );
    expect(error(true)).toBeLessThan(error(false));
  });

  test('every woman’s room to walk is finite and never falls as her skirt gets longer or her pace quicker', () => {
    for (const row of female) {
      const needs = paces.map((pace) =>
        [0.25, 0.35, 0.45, 0.55].map(
          (part) => strideNeed(readBody({ ...measures(row, part), pace })).bare?.value ?? NaN,
        ),
      );
      expect(needs.flat().every(Number.isFinite)).toBe(true);
      for (const byLength of needs) expect(byLength.toSorted((a, b) => a - b)).toEqual(byLength);
      for (const at of [0, 1, 2, 3]) {
        const byPace = needs.map((each) => each[at] ?? NaN);
        expect(byPace.toSorted((a, b) => a - b)).toEqual(byPace);
      }
    }
  }, 30_000);

  test('ordering all women by height, the same hem 20 cm above the floor never needs less', () => {
    const byHeight = female.toSorted((a, b) => length(a, 'stature') - length(b, 'stature'));
    const needs = byHeight.map((row) => {
      const body = readBody({ ...measures(row, 0.4), calf: undefined, age: undefined });
      const walker = walkerOf(body);
      return walker ? hemNeededAt(walker, { ...body.waist, value: mm(200) }).bare.value : NaN;
    });
    for (const [at, need] of needs.entries())
      expect(need).toBeGreaterThanOrEqual((needs[at - 1] ?? 0) - 1e-9);
  });

  test('fewer than 1 woman in 100 and 1 man in 100 are asked whether a pair was misread', () => {
    for (const [who, rows] of [
      ['women', female],
      ['men', male],
    ] as const) {
      const asked = rows.filter((row) =>
        readBody(measures(row, 0.4)).notices.some(({ code }) => code === 'body.improbablePair'),
      );
      console.info(`improbable pair, army ${who}: ${((100 * asked.length) / rows.length).toFixed(2)} %`);
      expect(asked.length / rows.length).toBeLessThan(0.01);
    }
  });
});
