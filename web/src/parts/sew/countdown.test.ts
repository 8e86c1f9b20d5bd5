import { expect, test } from 'vitest';
import { clockText, endOf, endText } from './countdown.ts';

test.each([
  [0, '0:00'],
  [-5000, '0:00'],
  [1, '0:01'],
  [59_999, '1:00'],
  [270_000, '4:30'],
  [3_599_000, '59:59'],
  [3_600_000, '1:00:00'],
  [7_509_000, '2:05:09'],
  [86_400_000, '24:00:00'],
])('%d ms left', (left, text) => {
  expect(clockText(left)).toBe(text);
});

test('a wait ends its minutes later', () => {
  expect(clockText(endOf(1_000_000, 150) - 1_000_000)).toBe('2:30:00');
});

test('the end is told by the clock on the wall, with its day where it is not today', () => {
  const now = new Date(2026, 10, 25, 15, 0).getTime();
  expect(endText(endOf(now, 45), now, 'en-GB')).toBe('15:45');
  expect(endText(endOf(now, 24 * 60), now, 'en-GB')).toMatch(/Thursday.*15:00/);
});
