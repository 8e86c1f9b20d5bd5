import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Figure } from '../figure/index.ts';
import { mm } from '../units/index.ts';
import type { BodyFigureCode } from './codes.ts';
import { levelWhereEnough, paces, readBody, strideNeed, walkerOf, waysToWear } from './index.ts';

type Numbers = (name: string) => number;
const line = (n: Numbers) => n('start') + n('slope') * n('measure');

/** Each rule said once more as plain arithmetic on the figure's own inputs; rules not here have no inputs. */
const arithmetic: Partial<Record<BodyFigureCode, (n: Numbers) => number>> = {
  'body.largerOfTwo': (n) => Math.max(n('first'), n('second')),
  'body.meanOfTwo': (n) => (n('first') + n('second')) / 2,
  'body.takesDifference': (n) => n('larger') - n('smaller'),
  'body.waistToFloorFromHeight': line,
  'body.heightFromWaistToFloor': line,
  'body.hipFromWaist': line,
  'body.hipFromSize': (n) => (n('from') + n('to')) / 2,
  'body.hipFromHalves': (n) => n('left') + n('right'),
  'body.hipHalf': (n) => n('hip') / 2,
  'body.hipSide': (n) => (n('hip') * n('half')) / n('sum'),
  'body.hipDepthFromHeight': (n) => n('height') * n('depthShare'),
  'body.floorFromLevels': (n) => (n('first') + n('second')) / 2,
  'body.rise': (n) => n('level') - n('base'),
  'body.riseHeld': (n) => n('waistToHem') * n('share'),
  'body.expected': line,
  'body.least': line,
  'body.most': line,
  'body.hemHeight': (n) => n('waistToFloor') - n('waistToHem'),
  'body.stepShare': (n) => n('usualShare') * n('paceFactor'),
  'body.step': (n) => n('height') * n('stepShare'),
  'body.hipHeight': (n) => n('height') * n('hipShare'),
  'body.kneeHeight': (n) => n('height') * n('kneeShare'),
  'body.legLevel': (n) => n('height') * n('levelShare'),
  'body.legGirth': (n) => n('height') * n('girthShare'),
  'body.legGirthFromCalf': (n) => (n('calf') * n('girthShare')) / n('calfShare'),
  'body.legGirthFromThigh': (n) => (n('thigh') * n('girthShare')) / n('thighShare'),
  'body.legGirthFromBoth': (n) => (n('fromCalf') + n('fromThigh')) / 2,
  'body.legGirthBetween': (n) =>
    n('lowGirth') +
    ((n('highGirth') - n('lowGirth')) * (n('level') - n('lowLevel'))) / (n('highLevel') - n('lowLevel')),
  'body.stepGap': (n) => n('step') * (1 - n('level') / n('hipHeight')),
  'body.bareHem': (n) => 2 * n('gap') + n('leg'),
  'body.everydayHem': (n) => n('bare') + n('ease'),
  'body.levelForHem': (n) =>
    n('lowLevel') +
    ((n('highLevel') - n('lowLevel')) * (n('lowNeed') - n('around'))) / (n('lowNeed') - n('highNeed')),
};

const isFigure = (value: unknown): value is Figure =>
  typeof value === 'object' && value !== null && 'rule' in value;
const seen = new Set<string>();

function recompute(figure: Figure): void {
  seen.add(figure.rule);
  const inputs = Object.values(figure.inputs);
  inputs.forEach(recompute);
  const rule = (arithmetic as Partial<Record<string, (n: Numbers) => number>>)[figure.rule];
  expect([figure.rule, inputs.length > 0]).toEqual([figure.rule, rule !== undefined]);
  if (!rule) return;
  const value = rule((name) => figure.inputs[name]?.value ?? NaN);
  expect(value, figure.rule).toBeCloseTo(figure.value, 6);
}

test('every figure comes out of its own inputs again', () => {
  const maybe = (min: number, max: number) =>
    fc.option(fc.double({ min, max, noNaN: true }).map(mm), { nil: undefined });
  const sometimes = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined, freq: 2 });
  const length = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(mm);
  const anyBody = fc.record({
    waist: length(500, 1600),
    hip: sometimes(length(500, 1700)),
    waistToHem: length(200, 1200),
    waistToFloor: maybe(500, 1200),
    height: maybe(900, 2000),
    hipDepth: maybe(100, 300),
    calf: maybe(200, 600),
    thigh: maybe(300, 900),
    wears: fc.constantFrom(...waysToWear),
    levels: sometimes(
      fc.record({
        front: maybe(500, 1200),
        back: maybe(500, 1200),
        left: maybe(500, 1200),
        right: maybe(500, 1200),
      }),
    ),
    halves: sometimes(fc.record({ left: length(250, 850), right: length(250, 850) })),
    size: sometimes(fc.record({ from: length(500, 1700), to: length(500, 1700) })),
    age: fc.option(fc.double({ min: 1, max: 90, noNaN: true }), { nil: undefined }),
    pace: fc.constantFrom(...paces),
    second: fc.record({ waist: maybe(500, 1600), waistToHem: maybe(200, 1200) }),
  });
  fc.assert(
    fc.property(anyBody, (measures) => {
      const body = readBody(measures);
      const stride = strideNeed(body);
      const walker = walkerOf(body);
      const told = [...body.notices, ...stride.notices].flatMap(({ params }) => Object.values(params));
      const level = walker && levelWhereEnough(walker, body.widest);
      const shown: readonly unknown[] = [body, stride, body.rises, body.hipSides]
        .flatMap((each) => Object.values(each) as unknown[])
        .concat(told);
      [...shown, level, walker?.kneeHeight].filter(isFigure).forEach(recompute);
    }),
    { numRuns: 500 },
  );
  // The sweep reached every rule there is arithmetic for, so none of them is untested.
  expect(Object.keys(arithmetic).filter((rule) => !seen.has(rule))).toEqual([]);
}, 30_000);
