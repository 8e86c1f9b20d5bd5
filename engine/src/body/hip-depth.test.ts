import { describe, expect, test } from 'vitest';
import { centimetres, inches } from '../units/index.ts';
import { readBody, waistLevels, type BodyMeasures } from './index.ts';
import { bodySettings } from './settings.ts';

const maker: BodyMeasures = { waist: inches(29), hip: inches(36), waistToHem: inches(31), pace: 'usual' };
const depth = (more: Partial<BodyMeasures>) => readBody({ ...maker, ...more }).hipDepth;
const codes = (more: Partial<BodyMeasures>) =>
  readBody({ ...maker, ...more }).notices.map(({ code }) => code);

describe('waist to hip line', () => {
  test('is what was measured', () => {
    expect(depth({ hipDepth: centimetres(19), height: centimetres(165) }).value).toBe(190);
  });

  // Source: "usually 7 to 9 inches below the waistline", Utah State University Extension 2007-104pr.
  test('is 8 in, give or take 1 in, of an adult of unknown height', () => {
    expect([depth({}).value, depth({}).plusMinus]).toEqual([inches(8), inches(1)]);
  });

  test('grows with the height; of middling women it lies in the trade’s 7 to 9 in', () => {
    const at = (height: number) => depth({ height: centimetres(height) }).value;
    expect(at(165)).toBeCloseTo(0.1367 * 1650, 6);
    for (const height of [150, 160, 165])
      expect([at(height) >= inches(7), at(height) <= inches(9)]).toEqual([true, true]);
  });

  test('is of the level that the settings name', () => {
    const [natural, navel, hipBone] = waistLevels.map(
      (hipDepthLevel) =>
        readBody({ ...maker, height: centimetres(165) }, { ...bodySettings, hipDepthLevel }).hipDepth.value,
    );
    expect(natural).toBeGreaterThan(hipBone ?? NaN);
    expect(hipBone).toBeGreaterThan(navel ?? NaN);
  });

  test('of a child is in proportion, without a ± that no survey gives', () => {
    const child = depth({ age: 7, height: centimetres(122) });
    expect(child.value).toBeCloseTo(0.1367 * 1220, 6);
    expect(child.plusMinus).toBeUndefined();
    expect(depth({ age: 7 }).value).toBe(inches(5));
  });

  test('outside 15 to 25 cm an adult is asked, a child is not', () => {
    const told = (cm: number, age?: number) =>
      codes({ hipDepth: centimetres(cm), age }).filter((code) => code === 'body.hipDepthUnusual').length;
    expect([14.9, 15, 25, 25.1].map((cm) => told(cm))).toEqual([1, 0, 0, 1]);
    expect(told(11, 7)).toBe(0);
  });
});
