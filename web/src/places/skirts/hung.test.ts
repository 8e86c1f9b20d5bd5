import { describe, expect, test } from 'vitest';
import { dayTouched, hung } from './hung.ts';
import type { SkirtRecord } from '../../store/index.ts';

const skirt = (id: string, family: string, made: number, touched: number): SkirtRecord => ({
  id,
  document: {},
  family,
  version: '',
  made,
  touched,
  settled: {},
  done: {},
  bought: {},
  timers: {},
  photo: false,
});

describe('skirts on the line', () => {
  test('the skirt touched last hangs first', () => {
    expect(hung([skirt('a', 'a', 1, 5), skirt('b', 'b', 2, 9)]).map(({ id }) => id)).toEqual(['b', 'a']);
  });

  test('versions hang side by side in the order they were made, where the family was touched last', () => {
    const skirts = [skirt('second', 'f', 4, 4), skirt('other', 'other', 2, 8), skirt('first', 'f', 1, 9)];
    expect(hung(skirts).map(({ id }) => id)).toEqual(['first', 'second', 'other']);
  });

  test('none is lost', () => {
    expect(hung([])).toEqual([]);
  });
});

describe('when it was last touched', () => {
  const noon = new Date(2026, 10, 25, 12).getTime();

  test('one minute before midnight is yesterday', () => {
    expect(dayTouched(new Date(2026, 10, 24, 23, 59).getTime(), noon, 'en-CA')).toBe('yesterday');
    expect(dayTouched(new Date(2026, 10, 25, 0, 1).getTime(), noon, 'fr-CA')).toBe('aujourd’hui');
  });

  test('past a week it is a date, and a clock that was set back does no harm', () => {
    expect(dayTouched(new Date(2026, 10, 1).getTime(), noon, 'en-CA')).toMatch(/2026/);
    expect(dayTouched(new Date(2026, 11, 1).getTime(), noon, 'en-CA')).toMatch(/2026/);
  });
});
