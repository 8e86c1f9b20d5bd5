import { describe, expect, test } from 'vitest';
import { centimetres, inches, mm } from '../units/index.ts';
import { hemNeededAt, readBody, strideNeed, walkerOf, type BodyMeasures } from './index.ts';
import { atFloor } from './hem-level.ts';

const maker: BodyMeasures = { waist: inches(29), hip: inches(36), waistToHem: inches(31), pace: 'usual' };
const girl: Partial<BodyMeasures> = {
  waist: centimetres(56),
  hip: centimetres(64),
  waistToHem: centimetres(45),
  age: 7,
};
const strideOf = (more: Partial<BodyMeasures>) => strideNeed(readBody({ ...maker, ...more }));
const codes = (more: Partial<BodyMeasures>) => strideOf(more).notices.map(({ code }) => code);

describe('what walking asks of the hem', () => {
  test('measured both ways up, it is checked and certain', () => {
    const stride = strideOf({ height: centimetres(165), waistToFloor: centimetres(100) });
    expect(stride.checked).toBe(true);
    expect(stride.notices).toEqual([]);
    expect(stride.needed).toBe(stride.everyday);
    expect(stride.needed.plusMinus).toBeUndefined();
    expect((stride.everyday?.value ?? 0) - (stride.bare?.value ?? 0)).toBeCloseTo(250, 9);
  });

  test('from one upright alone it is checked, and carries its ±', () => {
    for (const upright of [{ height: centimetres(165) }, { waistToFloor: centimetres(100) }]) {
      const stride = strideOf(upright);
      expect(stride.checked).toBe(true);
      expect(stride.needed.plusMinus).toBeGreaterThan(20);
      expect(stride.needed.plusMinus).toBeLessThan(100);
      expect(stride.everyday?.inputs['bare']).toBe(stride.bare);
    }
  });

  test('with neither, the makers’ 60 in round, and the caution that walking was not checked', () => {
    const stride = strideOf({});
    expect(stride.needed.value).toBe(inches(60));
    expect([stride.checked, stride.bare, stride.everyday]).toEqual([false, null, null]);
    expect(codes({})).toEqual(['body.strideNotChecked']);
  });

  test('a child measured both ways up is checked like anybody', () => {
    expect(strideOf({ ...girl, height: mm(1220), waistToFloor: mm(730) }).checked).toBe(true);
  });

  test('a child of known height alone gets the room of a skirt to the floor, more than any real hem of hers asks', () => {
    const stride = strideOf({ ...girl, height: mm(1220) });
    expect(codes({ ...girl, height: mm(1220) })).toEqual(['body.strideForFloorLength']);
    expect(stride.checked).toBe(false);
    for (const floor of [460, 600, 730, 800])
      expect(
        strideOf({ ...girl, height: mm(1220), waistToFloor: mm(floor) }).needed.value,
      ).toBeLessThanOrEqual(stride.needed.value);
  });

  test('a child of unknown height asks nothing beyond the cut, and never the adult floor', () => {
    for (const upright of [{}, { waistToFloor: mm(730) }]) {
      expect(strideOf({ ...girl, ...upright }).needed.value).toBe(0);
      expect(codes({ ...girl, ...upright })).toEqual(['body.childStrideNotChecked']);
    }
  });

  test('a skirt past the floor asks what one to the floor does', () => {
    const body = readBody({ ...maker, waistToHem: mm(1100), waistToFloor: mm(1000), height: mm(1650) });
    const walker = walkerOf(body);
    expect(strideNeed(body).bare?.value).toBe(walker && hemNeededAt(walker, atFloor()).bare.value);
  });
});
