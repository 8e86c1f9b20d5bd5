import { expect, test } from 'vitest';
import { planOf } from '../testing/requests.ts';

const codes = (own: Record<string, unknown>, other: Record<string, unknown>): string[] =>
  planOf({ cut: { kind: 'tiered' }, cloth: own, contrast: [{ pieces: ['tier 2'], cloth: other }] })
    .notices.map(({ notice }) => notice.code)
    .filter((code) => code.endsWith('Apart'));
const change = (percent: number) => ({ change: { lengthwise: percent, crosswise: percent } });

test('cloths that change alike and are as heavy go together without a word', () => {
  expect(codes({}, {})).toEqual([]);
  expect(codes(change(5), change(4))).toEqual([]);
  expect(codes({ washed: true }, { washed: true, ...change(9) })).toEqual([]);
});

test('one that still shrinks beside one that does not is told, whichever it is', () => {
  expect(codes({ washed: true }, {})).toEqual(['cloth.shrinkApart']);
  expect(codes({}, { washed: true })).toEqual(['cloth.shrinkApart']);
  expect(codes(change(3), change(8))).toEqual(['cloth.shrinkApart']);
});

test('light cloth sewn to heavier is told', () => {
  expect(codes({ weight: 'medium' }, { weight: 'light' })).toEqual(['cloth.weighApart']);
});
