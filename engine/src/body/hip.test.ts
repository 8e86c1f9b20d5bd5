import { describe, expect, test } from 'vitest';
import { centimetres, inches } from '../units/index.ts';
import { readBody, type Body, type BodyMeasures } from './index.ts';

const maker: BodyMeasures = { waist: inches(29), waistToHem: inches(31), pace: 'usual' };
const read = (more: Partial<BodyMeasures>) => readBody({ ...maker, ...more });
const codes = (body: Body) => body.notices.map(({ code }) => code);
const sum = ({ hipSides: { left, right } }: Body) => left.value + right.value;

describe('a hip that was measured', () => {
  test('is two equal halves', () => {
    const { hipSides } = read({ hip: inches(36) });
    expect([hipSides.left.value, hipSides.right.value]).toEqual([inches(18), inches(18)]);
  });

  test('in two halves is what they come to, each as it was measured', () => {
    const body = read({ halves: { left: inches(19), right: inches(17.5) } });
    expect(body.hip.value).toBeCloseTo(inches(36.5), 9);
    expect([body.hipSides.left.value, body.hipSides.right.value]).toEqual([inches(19), inches(17.5)]);
    expect(body.widest).toBe(body.hip);
    expect(codes(body)).toEqual([]);
  });

  test('both ways within the tape’s tolerance agrees: the larger counts, and the halves still add up', () => {
    const body = read({ hip: inches(37), halves: { left: inches(19), right: inches(17.5) } });
    expect(body.hip.value).toBe(inches(37));
    expect(sum(body)).toBeCloseTo(inches(37), 9);
    expect(body.hipSides.left.value / body.hipSides.right.value).toBeCloseTo(19 / 17.5, 9);
    expect(codes(body)).toEqual([]);
  });

  test('both ways 2 in apart is told, whichever is larger', () => {
    for (const hip of [34.5, 38.5]) {
      const body = read({ hip: inches(hip), halves: { left: inches(19), right: inches(17.5) } });
      expect(body.hip.value).toBeCloseTo(inches(Math.max(hip, 36.5)), 9);
      expect(sum(body)).toBeCloseTo(body.hip.value, 9);
      expect(codes(body)).toEqual(['body.halvesDiffer']);
      expect(body.notices[0]?.params).toMatchObject({
        difference: { value: expect.closeTo(inches(2), 9) as number },
      });
    }
  });

  test('a second take alone is a measurement too', () => {
    expect(codes(read({ second: { hip: inches(36) } }))).toEqual([]);
  });
});

describe('a hip that was not measured', () => {
  test('is the middle of what a label prints, with half its interval either way', () => {
    const size = { from: centimetres(96), to: centimetres(104) };
    const body = read({ size });
    expect([body.hip.value, body.hip.plusMinus]).toEqual([1000, 40]);
    expect([body.hipSides.left.value, body.hipSides.left.plusMinus]).toEqual([500, 20]);
    expect(codes(body)).toEqual(['body.estimated']);
    expect(read({ size: { from: size.to, to: size.from } }).hip).toEqual(body.hip);
  });

  test('from one printed number is off by 2 cm at least', () => {
    expect(read({ size: { from: centimetres(100), to: centimetres(100) } }).hip.plusMinus).toBe(20);
  });

  test('of an adult without a label is estimated from the waist, and told', () => {
    const body = read({ waist: centimetres(86) });
    expect(body.hip.value).toBeCloseTo(489.4 + 0.6168 * 860, 6);
    expect(body.hip.plusMinus).toBeCloseTo(1.645 * 43.6, 6);
    expect(body.widest).toBe(body.hip);
    expect(codes(body)).toEqual(['body.estimated']);
    expect(body.notices[0]?.params).toEqual({ measure: 'hip', estimate: body.hip });
  });

  test('is no slip of the tape, however unlike the waist a label is', () => {
    const size = { from: inches(28), to: inches(30) };
    expect(codes(read({ waist: inches(44), size }))).toEqual(['body.estimated']);
    expect(codes(read({ waist: inches(44), hip: inches(29) }))).toEqual(['body.improbablePair']);
  });

  test('a measured hip makes a label idle', () => {
    expect(
      read({ hip: inches(36), size: { from: inches(50), to: inches(52) } }).hip.plusMinus,
    ).toBeUndefined();
  });

  test('of a child is never guessed: the waist stands in, and the hip is asked for', () => {
    const girl = {
      waist: centimetres(56),
      waistToHem: centimetres(45),
      age: 7,
      waistToFloor: centimetres(73),
    };
    const body = read(girl);
    expect([body.hip.value, body.hip.plusMinus]).toEqual([560, undefined]);
    expect(body.widest).toBe(body.waist);
    expect(codes(body)).toEqual(['body.hipWanted']);
    expect(codes(read({ ...girl, size: { from: centimetres(62), to: centimetres(66) } }))).toEqual([
      'body.estimated',
    ]);
  });
});
