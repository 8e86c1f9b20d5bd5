import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { isCurrency, minorDigits, parseMoney, showMoney, times } from './money.ts';

const minorOf = (text: string | number, currency = 'CAD'): number | string => {
  const parsed = parseMoney(text, currency);
  return parsed.ok ? parsed.value.minor : parsed.fault;
};
const plain = (text: string): string => text.replaceAll(/[\u00a0\u202f]/g, ' ');

describe('prices as people write them', () => {
  test.each([
    ['12.50', 1250],
    ['12,50', 1250],
    ['12,5', 1250],
    ['12', 1200],
    [' 0.05 ', 5],
    [12.5, 1250],
    [0.1 + 0.7, 'tooManyDigits'],
    ['12.505', 'tooManyDigits'],
    ['-1', 'negativeMoney'],
    ['−1', 'negativeMoney'],
    [-1, 'negativeMoney'],
    ['1,234.50', 'notMoney'],
    ['1 234', 'notMoney'],
    ['12.', 'notMoney'],
    ['$12', 'notMoney'],
    ['1e3', 'notMoney'],
    ['', 'notMoney'],
    [NaN, 'notMoney'],
    [Infinity, 'notMoney'],
    ['99999999', 'notMoney'],
  ])('%s: %s', (text, expected) => {
    expect(minorOf(text)).toBe(expected);
  });

  test('yen have no cents', () => {
    expect(minorDigits('JPY')).toBe(0);
    expect(minorOf('1200', 'JPY')).toBe(1200);
    expect(minorOf('1200.5', 'JPY')).toBe('tooManyDigits');
    expect(plain(showMoney({ minor: 1200, currency: 'JPY' }, 'en-CA'))).toBe('¥1,200');
  });

  test('a currency is one that the world knows by three letters', () => {
    expect(['CAD', 'USD', 'EUR', 'JPY'].every(isCurrency)).toBe(true);
    expect(['cad', 'CA', 'DOLLAR', 'QQQ', ''].some(isCurrency)).toBe(false);
  });
});

describe('money printed', () => {
  test('as each language does', () => {
    expect(plain(showMoney({ minor: 1250, currency: 'CAD' }, 'en-CA'))).toBe('$12.50');
    expect(plain(showMoney({ minor: 1250, currency: 'CAD' }, 'fr-CA'))).toBe('12,50 $');
  });

  test('any amount in cents comes back as it went', () => {
    fc.assert(
      fc.property(fc.nat(999_999_999), fc.constantFrom('.', ','), (minor, mark) => {
        const text = `${String(Math.floor(minor / 100))}${mark}${String(minor % 100).padStart(2, '0')}`;
        expect(minorOf(text)).toBe(minor);
      }),
    );
  });
});

test('a price times a length is whole cents, never further than half a cent from the exact price', () => {
  fc.assert(
    fc.property(fc.nat(100_000), evenly(0, 500), (minor, amount) => {
      const price = times({ minor, currency: 'CAD' }, amount);
      expect(Number.isInteger(price.minor)).toBe(true);
      expect(Math.abs(price.minor - minor * amount)).toBeLessThanOrEqual(0.5);
      expect(price.currency).toBe('CAD');
    }),
  );
});
