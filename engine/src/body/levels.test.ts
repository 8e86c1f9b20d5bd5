import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centimetres, inches, mm } from '../units/index.ts';
import { levelLimits, readBody, waistPlaces, waysToWear, type Body, type BodyMeasures } from './index.ts';

const maker: BodyMeasures = {
  waist: inches(29),
  hip: inches(36),
  waistToHem: inches(31),
  height: inches(66),
  pace: 'usual',
};
const read = (more: Partial<BodyMeasures>) => readBody({ ...maker, ...more });
const codes = (body: Body) => body.notices.map(({ code }) => code);
const rises = (body: Body) => waistPlaces.map((place) => Number(body.rises[place].value.toFixed(6)));
const cm = centimetres;

describe('waist to floor at places round the waist', () => {
  test('none: nothing is made at the top', () => {
    expect(rises(read({}))).toEqual([0, 0, 0, 0]);
  });

  // Source: The Perfect Dressmaking System, 1914: lengths front 38, side 39, back 39½ in.
  test('front 38, sides 39, back 39½ in: 1 in shorter in front, ½ in longer behind, the sides as they are', () => {
    const body = read({
      levels: { front: inches(38), left: inches(39), right: inches(39), back: inches(39.5) },
    });
    expect(body.waistToFloor?.value).toBe(inches(39));
    expect(rises(body)).toEqual([-25.4, 12.7, 0, 0]);
    expect(codes(body)).toEqual([]);
  });

  test('a measured waist to floor is the base, and stays what it was', () => {
    const body = read({ waistToFloor: cm(100), levels: { front: cm(102), left: cm(99) } });
    expect(body.waistToFloor?.rule).toBe('body.waistToFloor');
    expect(rises(body)).toEqual([20, 0, -10, 0]);
  });

  test('without it the base is the middle of the sides; with one side, that; without any, of front and back', () => {
    const base = (levels: BodyMeasures['levels']) => read({ levels }).waistToFloor?.value;
    expect(base({ left: cm(99), right: cm(101), front: cm(105) })).toBe(1000);
    expect(base({ left: cm(99), front: cm(105) })).toBe(990);
    expect(base({ front: cm(101), back: cm(105) })).toBe(1030);
    expect(base({ back: cm(104) })).toBe(1040);
    expect(base({})).toBe(read({}).waistToFloor?.value);
  });

  test('the base is measured: nothing is estimated, and the hem hangs by it', () => {
    const body = read({ height: undefined, levels: { left: cm(99), right: cm(101) } });
    expect(body.waistToFloor?.plusMinus).toBeUndefined();
    expect(body.hemHeight?.value).toBeCloseTo(1000 - inches(31), 9);
    expect(codes(read({ levels: { left: cm(99) } }))).toEqual([]);
  });

  test('it is held against the height like any other', () => {
    expect(codes(read({ levels: { left: cm(76) } }))).toContain('body.improbablePair');
  });

  test('a child’s levels are her waist to floor: it is not asked for again', () => {
    const girl = { age: 7, height: cm(122), waistToHem: cm(45) };
    expect(codes(read({ ...girl, levels: { left: cm(73) } }))).toEqual([]);
    expect(codes(read({ ...girl }))).toEqual(['body.waistToFloorWanted']);
  });

  test('more than 10 cm from the base is asked about by name, 10 cm is not', () => {
    const told = (front: number) =>
      read({ waistToFloor: cm(100), levels: { front: cm(front) } })
        .notices.filter(({ code }) => code === 'body.levelFar')
        .map(({ params }) => params['measure']);
    expect(told(110)).toEqual([]);
    expect(told(110.1)).toEqual(['levelFront']);
    expect(told(89.9)).toEqual(['levelFront']);
  });

  test('whatever was read, no more than 15 % of the skirt is made or taken at the top', () => {
    const level = fc
      .option(fc.double({ min: levelLimits.least, max: levelLimits.most, noNaN: true }), { nil: undefined })
      .map((value) => (value === undefined ? undefined : mm(value)));
    fc.assert(
      fc.property(
        fc.record({ front: level, back: level, left: level, right: level }),
        fc.constantFrom(...waysToWear),
        fc.double({ min: 100, max: 1800, noNaN: true }),
        (levels, wears, waistToHem) => {
          const body = read({ levels, wears, waistToHem: mm(waistToHem) });
          for (const place of waistPlaces) {
            const { value } = body.rises[place];
            expect(Number.isFinite(value)).toBe(true);
            expect(Math.abs(value)).toBeLessThanOrEqual(0.15 * waistToHem + 1e-9);
          }
        },
      ),
      { numRuns: 500 },
    );
    expect(read({ waistToFloor: cm(100), levels: { front: cm(30) } }).rises.front.value).toBeCloseTo(
      -0.15 * inches(31),
      9,
    );
  });
});
