import { describe, expect, test } from 'vitest';
import { centimetres, inches } from '../units/index.ts';
import { readBody, waistLevels, type BodyMeasures } from './index.ts';
import { bodySettings } from './settings.ts';

const maker: BodyMeasures = { waist: inches(29), hip: inches(38), waistToHem: inches(31), pace: 'usual' };
const pairs = (more: Partial<BodyMeasures>, settings = bodySettings) =>
  readBody({ ...maker, ...more }, settings)
    .notices.filter(({ code }) => code === 'body.improbablePair')
    .map(({ level, params }) => [level, params['firstName'], params['secondName']]);

describe('the improbable pair is named, never refused', () => {
  test('a 28 in hip under a 30 in waist', () => {
    expect(pairs({ waist: inches(30), hip: inches(28) })).toEqual([['caution', 'waist', 'hip']]);
  });

  test('a hip read 14 in too small', () => {
    expect(pairs({ waist: inches(44), hip: inches(30) })).toEqual([['caution', 'waist', 'hip']]);
  });

  test('a waist a little larger than the hip is nobody’s slip', () => {
    expect(pairs({ waist: inches(44), hip: inches(42) })).toEqual([]);
  });

  test('a height typed in inches as centimetres', () => {
    expect(pairs({ height: centimetres(65), waistToFloor: centimetres(98) })).toContainEqual([
      'caution',
      'height',
      'waistToFloor',
    ]);
  });

  test('an inseam taken for a waist to floor', () => {
    expect(pairs({ height: centimetres(165), waistToFloor: centimetres(76) })).toEqual([
      ['caution', 'height', 'waistToFloor'],
    ]);
  });

  test('a waist to floor from the natural waist or the hip bone passes, wherever the elastic sits', () => {
    for (const waistLevel of waistLevels)
      for (const floor of [101, 107])
        expect(
          pairs(
            { height: centimetres(165), waistToFloor: centimetres(floor) },
            { ...bodySettings, waistLevel },
          ),
        ).toEqual([]);
  });

  test('a small child’s waist as long as she is tall', () => {
    expect(
      pairs({
        waist: centimetres(90),
        hip: centimetres(95),
        height: centimetres(95),
        waistToFloor: centimetres(55),
        age: 3,
      }),
    ).toEqual([['caution', 'height', 'waist']]);
  });

  test('a baby under the survey’s age is not held against it', () => {
    expect(pairs({ waist: centimetres(70), hip: centimetres(72), height: centimetres(70), age: 1 })).toEqual(
      [],
    );
  });
});
