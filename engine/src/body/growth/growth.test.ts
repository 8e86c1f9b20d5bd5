import { describe, expect, test } from 'vitest';
import { centimetres, inches, mm, type Mm } from '../../units/index.ts';
import { length } from '../codes.ts';
import { growsShort, readGrowth } from './growth.ts';
import type { Growing } from './options.ts';

const growing: Growing = {
  reference: 'girls',
  ageMonths: 96,
  measuredOn: '2026-03-14',
  months: 24,
  shortWhen: inches(1),
};
const uprights = (height: Mm | null) => ({
  height: height === null ? null : length(height, 'body.height'),
  waistToHem: length(centimetres(60), 'body.waistToHem'),
  waistToFloor: null,
});
const read = (change: Partial<Growing> = {}, height: Mm | null = centimetres(127.6)) =>
  readGrowth(uprights(height), { ...growing, ...change });
const grown = (change: Partial<Growing> = {}) => {
  const { growth } = read(change);
  if (!growth) throw new Error('the middle girl grows');
  return growth;
};

describe('growth that can be told', () => {
  test('is that after the months wished for', () => {
    const { months, height, waistToFloor, hemRise, keep, short } = grown();
    expect(months.value).toBe(24);
    expect(height.value).toBeGreaterThan(1370);
    expect(waistToFloor).toBeNull();
    expect(keep.value).toBe(hemRise.value);
    expect(hemRise.value).toBeCloseTo(600 * (height.value / 1276 - 1), 9);
    expect(short?.on).toBe(growsShort(grown())[0]?.params['date']);
  });

  test('a skirt that is to fit two years, and is an inch short soon after the first, asks for a tuck', () => {
    expect(read().notices).toEqual([]);
    const [notice, ...more] = growsShort(grown());
    expect(more).toEqual([]);
    expect([notice?.level, notice?.code]).toEqual(['caution', 'body.growsShort']);
    expect(notice?.params).toMatchObject({ months: { value: 13 }, wanted: { value: 24 } });
    expect(notice?.params['date']).toMatch(/^2027-03-(1[4-9]|2[0-3])$/);
    expect(notice?.params['keep']).toMatchObject({ value: grown().keep.value, kind: 'length' });
  });

  test('one that is to fit half a year, or holds enough to let down, asks for nothing', () => {
    expect(growsShort(grown({ months: 6 }))).toEqual([]);
    expect(growsShort(grown({ months: 12 }))).toEqual([]);
    expect(growsShort(grown({ months: 13 }))).toHaveLength(1);
    expect(growsShort(grown(), grown().keep)).toEqual([]);
  });

  test('the inch that may be missing need not be kept: a little less than it is still told', () => {
    const { keep } = grown();
    const kept = (value: number) => length(mm(value), 'body.keepFor');
    expect(growsShort(grown(), kept(keep.value - 25.3))).toEqual([]);
    expect(growsShort(grown(), kept(keep.value - 25.5))).toHaveLength(1);
  });
});

describe('growth that can’t be told says why, and leaves the skirt alone', () => {
  test.each([
    ['notMeasured', {}, null],
    ['age', { ageMonths: 23 }, centimetres(85)],
    ['age', { ageMonths: 241 }, centimetres(163)],
    ['age', { ageMonths: NaN }, centimetres(163)],
    ['farFromUsual', {}, centimetres(163)],
    ['farFromUsual', {}, inches(36)],
  ] as const)('%s: %j, %s mm', (why, change, height) => {
    const { growth, notices } = read(change, height);
    expect(growth).toBeNull();
    expect(notices).toMatchObject([{ level: 'caution', code: 'body.growthNotForecast', params: { why } }]);
  });
});
