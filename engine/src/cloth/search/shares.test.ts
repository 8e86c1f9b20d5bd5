import { describe, expect, test } from 'vitest';
import { partOf, shared } from './shares.ts';

/** Shares of so many equal parts, added up as a search does. */
function partsOf(count: number): [number, number][] {
  let from = 0;
  return Array.from({ length: count }, () => {
    const to = from + 1 / count;
    const part: [number, number] = [from, to];
    from = to;
    return part;
  });
}

describe('a time that stands still at its end is over for every part of it', () => {
  test('however the shares add up', () => {
    for (let count = 1; count <= 60; count++)
      for (const [from, to] of partsOf(count))
        expect(partOf({ seed: 1, spent: () => 1 }, from, to).spent?.()).toBeGreaterThanOrEqual(1);
  });

  test('of trials and of what is left after them', () => {
    for (let count = 2; count <= 9; count++) {
      const shares = shared({ seed: 1, spent: () => 1 }, count, 0.1);
      for (let at = 0; at < count; at++) expect(shares.trial(at).spent?.()).toBeGreaterThanOrEqual(1);
      expect(shares.rest(0).spent?.()).toBeGreaterThanOrEqual(1);
    }
  });
});

test('before its end a part goes by its own share', () => {
  expect(partOf({ seed: 1, spent: () => 0.5 }, 0.25, 0.75).spent?.()).toBeCloseTo(0.5);
  expect(partOf({ seed: 1, spent: () => 0.2 }, 0.25, 0.75).spent?.()).toBeLessThan(0);
});
