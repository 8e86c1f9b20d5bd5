import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../../testing/requests.ts';
import { acrossOf, joined, nearestTo, seamTurns, stretchesSeen } from './view.ts';

const turnsOf = (raw: RawRequest): number[] => {
  const { skirt } = planOf(raw);
  return seamTurns(skirt, skirt.rounds[0]).map((turn) => Math.round(1000 * (turn - Math.floor(turn))) / 1000);
};

describe('where seams are seen', () => {
  test('two panels are joined at the sides, six gores at the sides and between', () => {
    expect(turnsOf({})).toEqual([0.25, 0.75]);
    expect(turnsOf({ cut: { kind: 'gored', gores: 6 } })).toHaveLength(6);
  });

  test('a circle in one piece is joined behind', () => {
    const raw = { cut: { kind: 'circle', fraction: '1/4', pieces: 1 } };
    expect(turnsOf(raw)).toEqual([0.5]);
  });

  test('a wrap is joined at its sides only: its ends lie over one another', () => {
    expect(turnsOf({ cut: { kind: 'wrap' } })).toEqual([0.25, 0.75]);
  });

  test('the wearer’s left is to the right of who faces her, and in the middle from her left', () => {
    expect(acrossOf('front', 0.25)).toBeCloseTo(1, 9);
    expect(acrossOf('side', 0.25)).toBeCloseTo(0, 9);
    expect(acrossOf('back', 0.75)).toBeCloseTo(1, 9);
    expect(Math.abs(acrossOf('front', 0.5))).toBeCloseTo(2, 9);
  });

  test('of two seams as near to a side, the one further forward serves', () => {
    const eight = [1, 3, 5, 7, 9, 11, 13, 15].map((i) => i / 16);
    expect(nearestTo(eight, 0.25, 1 / 8)).toBe(3 / 16);
    expect(nearestTo(eight, 0.75, 1 / 8)).toBe(13 / 16);
    expect(nearestTo([0], 0.25, 1 / 8)).toBeNull();
  });
});

describe('stretches', () => {
  test('the back is the right half from the side, and is not seen from before', () => {
    expect(stretchesSeen('side', { from: 0.25, to: 0.75 })).toEqual([[0, 1]]);
    expect(stretchesSeen('front', { from: 0.25, to: 0.75 })).toEqual([]);
    expect(stretchesSeen('back', { from: -0.5, to: 0.5 })).toEqual([[-1, 1]]);
  });

  test('those that touch become one', () => {
    expect(
      joined([
        [0, 1],
        [-1, -0.5],
        [-0.5, 0],
      ]),
    ).toEqual([[-1, 1]]);
    expect(
      joined([
        [-1, -0.5],
        [0, 1],
      ]),
    ).toHaveLength(2);
  });
});
