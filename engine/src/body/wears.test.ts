import { describe, expect, test } from 'vitest';
import { centimetres, inches, mm } from '../units/index.ts';
import { readBody, strideNeed, waistPlaces, walkerOf, type Body, type BodyMeasures } from './index.ts';

const maker: BodyMeasures = {
  waist: inches(32),
  hip: inches(42),
  waistToHem: inches(31),
  height: centimetres(165),
  pace: 'usual',
};
const read = (more: Partial<BodyMeasures>) => readBody({ ...maker, ...more });
const codes = (body: Body) => body.notices.map(({ code }) => code);
const rises = (body: Body) => waistPlaces.map((place) => body.rises[place].value);

describe('standing', () => {
  test('is what is meant where nothing is told', () => {
    const { wears, walks, expecting } = read({});
    expect([wears, walks, expecting]).toEqual(['standing', true, false]);
    expect(read({ wears: 'standing' })).toEqual(read({}));
  });
});

describe('seated', () => {
  const seated = (more: Partial<BodyMeasures> = {}) => read({ wears: 'seated', ...more });

  test('is 2 in shorter in front and 2 in longer behind', () => {
    expect(rises(seated())).toEqual([-inches(2), inches(2), 0, 0]);
  });

  test('what was measured counts before what is usual', () => {
    expect(rises(seated({ waistToFloor: mm(1000), levels: { front: mm(960) } }))).toEqual([
      -40,
      inches(2),
      0,
      0,
    ]);
  });

  test('takes no steps: the hem needs nothing, and nothing is left unchecked, of adults or children', () => {
    for (const more of [{}, { height: undefined }, { age: 7 }, { age: 7, height: undefined }]) {
      const body = seated(more);
      const stride = strideNeed(body);
      expect(body.walks).toBe(false);
      expect(walkerOf(body)).toBeNull();
      expect([stride.needed.value, stride.checked, stride.bare, stride.everyday]).toEqual([
        0,
        true,
        null,
        null,
      ]);
      expect(stride.notices).toEqual([]);
    }
  });

  test('nothing of the seated lengths is guessed from a standing survey, nor judged by it', () => {
    expect(seated().waistToFloor).toBeNull();
    expect(seated({ height: undefined, waistToFloor: mm(1100) }).height).toBeNull();
    expect(codes(seated())).toEqual([]);
    expect(codes(seated({ waistToFloor: mm(1200) }))).toEqual([]);
    expect(codes(seated({ age: 7, height: mm(1220), waistToHem: mm(450) }))).toEqual([]);
  });

  test('a hem near the footrest is kept clear of it, one beyond it is a problem', () => {
    expect(codes(seated({ waistToFloor: inches(32) }))).toEqual(['body.seatedHem']);
    expect(codes(seated({ waistToFloor: inches(33) }))).toEqual([]);
    expect(codes(seated({ waistToFloor: inches(30) }))).toEqual(['body.hemBelowFloor']);
  });
});

describe('expecting', () => {
  test('is 2 in longer in front, unless the front was measured; she walks', () => {
    const body = read({ wears: 'expecting' });
    expect([body.expecting, body.walks]).toEqual([true, true]);
    expect(rises(body)).toEqual([inches(2), 0, 0, 0]);
    const levels = { front: mm(1035), left: mm(1000) };
    expect(rises(read({ wears: 'expecting', levels }))).toEqual([35, 0, 0, 0]);
    expect(strideNeed(body)).toEqual(strideNeed(read({})));
  });
});
