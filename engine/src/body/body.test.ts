import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endlessIn } from '../testing/endlessIn.ts';
import { centimetres, inches, mm, type Mm } from '../units/index.ts';
import {
  halfLimits,
  levelLimits,
  measureLimits,
  paces,
  readBody,
  waysToWear,
  type Body,
  type BodyMeasures,
  type Limits,
  type MeasureName,
} from './index.ts';

const maker: BodyMeasures = { waist: inches(29), hip: inches(36), waistToHem: inches(31), pace: 'usual' };
const codes = (body: Body) => body.notices.map(({ code }) => code);
const read = (more: Partial<BodyMeasures>) => readBody({ ...maker, ...more });

describe('reading a body', () => {
  test('the three measurements of a skirt are enough, and say nothing', () => {
    const body = readBody(maker);
    expect(body.widest.value).toBe(inches(36));
    expect(body.hemHeight).toBeNull();
    expect(body.adult).toBe(true);
    expect(codes(body)).toEqual([]);
  });

  test('the widest is the waist where the waist is larger than the hip', () => {
    expect(read({ waist: inches(44), hip: inches(42) }).widest.value).toBe(inches(44));
  });

  test('the hem hangs at waist to floor less finished length', () => {
    expect(read({ waistToFloor: inches(40) }).hemHeight?.value).toBeCloseTo(inches(9), 9);
  });

  test('an adult of 165 cm gets a waist to floor with its ±, and is told that it is an estimate', () => {
    const body = read({ height: centimetres(165) });
    expect(body.waistToFloor?.value).toBeCloseTo(-168.5 + 0.7051 * 1650, 6);
    expect(body.waistToFloor?.plusMinus).toBeCloseTo(1.645 * 21.0, 6);
    expect(body.hemHeight?.plusMinus).toBe(body.waistToFloor?.plusMinus);
    expect(codes(body)).toEqual(['body.estimated']);
  });

  test('a waist to floor alone gives the height with its ±', () => {
    const body = read({ waistToFloor: centimetres(98) });
    expect(body.height?.plusMinus).toBeGreaterThan(0);
    expect(body.hemHeight?.plusMinus).toBeUndefined();
    expect(codes(body)).toEqual(['body.estimated']);
  });

  test('a waist measured twice with only the second taken of the height still knows the height', () => {
    expect(read({ second: { height: centimetres(165) } }).height?.value).toBe(1650);
  });
});

describe('children', () => {
  const girl: Partial<BodyMeasures> = {
    waist: centimetres(56),
    hip: centimetres(64),
    waistToHem: centimetres(45),
    height: centimetres(122),
    age: 7,
  };

  test('a child is asked for her waist to floor, never given the adult line', () => {
    const body = read(girl);
    expect(body.adult).toBe(false);
    expect(body.waistToFloor).toBeNull();
    expect(codes(body)).toEqual(['body.waistToFloorWanted']);
  });

  test('nor is her height guessed from it', () => {
    expect(read({ ...girl, height: undefined, waistToFloor: centimetres(73) }).height).toBeNull();
  });

  test('from 13 years the adult marks hold', () => {
    expect(read({ age: 12.99 }).adult).toBe(false);
    expect(read({ age: 13 }).adult).toBe(true);
  });

  test('a hip smaller than the waist is asked about', () => {
    expect(codes(read({ ...girl, hip: centimetres(54), waistToFloor: centimetres(73) }))).toEqual([
      'body.hipBelowWaist',
    ]);
  });

  test('a waist to floor above the head is asked about', () => {
    expect(codes(read({ ...girl, waistToFloor: centimetres(130) }))).toEqual(['body.longerThanHeight']);
  });

  test('a skirt longer than the child is a problem', () => {
    const body = read({ ...girl, waistToHem: centimetres(125) });
    expect(body.notices.filter(({ level }) => level === 'problem').map(({ code }) => code)).toEqual([
      'body.longerThanHeight',
    ]);
  });
});

describe('a hem near the floor', () => {
  test('below it is a problem, with the hem held at the floor', () => {
    const body = read({ waistToHem: inches(41), waistToFloor: inches(40), height: inches(66) });
    expect(body.hemHeight?.value).toBe(0);
    expect(body.notices.map(({ level, code }) => [level, code])).toEqual([['problem', 'body.hemBelowFloor']]);
  });

  test('within 2 in of it is a caution, at 2 in not', () => {
    const near = (above: number) =>
      codes(read({ waistToHem: inches(40 - above), waistToFloor: inches(40), height: inches(66) }));
    expect(near(1.5)).toEqual(['body.longHem']);
    expect(near(0)).toEqual(['body.longHem']);
    expect(near(2)).toEqual([]);
  });

  test('against an estimate, it is a problem only below all of the ±', () => {
    const floor = -168.5 + 0.7051 * 1650;
    const level = (hem: number) =>
      read({ height: centimetres(165), waistToHem: mm(hem) }).notices.map(({ code }) => code);
    expect(level(floor + 30)).toEqual(['body.estimated', 'body.longHem']);
    expect(level(floor + 60)).toEqual(['body.estimated', 'body.hemBelowFloor']);
  });
});

test('anything inside the limits is read, and every figure is finite', () => {
  const between = ({ least, most }: Limits<Mm>) => fc.double({ min: least, max: most, noNaN: true }).map(mm);
  const perhaps = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined });
  const within = (name: MeasureName) => between(measureLimits[name]);
  const maybe = (name: MeasureName) => perhaps(within(name));
  const level = perhaps(between(levelLimits));
  const measures: fc.Arbitrary<BodyMeasures> = fc.record({
    waist: within('waist'),
    hip: maybe('hip'),
    waistToHem: within('waistToHem'),
    waistToFloor: maybe('waistToFloor'),
    height: maybe('height'),
    hipDepth: maybe('hipDepth'),
    calf: maybe('calf'),
    thigh: maybe('thigh'),
    wears: perhaps(fc.constantFrom(...waysToWear)),
    levels: perhaps(fc.record({ front: level, back: level, left: level, right: level })),
    halves: perhaps(fc.record({ left: between(halfLimits), right: between(halfLimits) })),
    size: perhaps(fc.record({ from: within('hip'), to: within('hip') })),
    age: fc.option(fc.double({ min: 0, max: 125, noNaN: true }), { nil: undefined }),
    pace: fc.constantFrom(...paces),
  });
  fc.assert(
    fc.property(measures, (each) => {
      const body = readBody(each);
      expect(endlessIn(body)).toEqual([]);
      expect(body.hemHeight?.value ?? 0).toBeGreaterThanOrEqual(0);
      expect(body.widest.value).toBe(Math.max(each.waist, body.hip.value));
      expect(body.hipSides.left.value + body.hipSides.right.value).toBeCloseTo(body.hip.value, 6);
    }),
    { numRuns: 500 },
  );
});
