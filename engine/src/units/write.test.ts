import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { MM_PER_INCH, mm, parseLength, writeLength, type MeasureSystem } from './index.ts';

const systems: readonly MeasureSystem[] = ['inches', 'metric'];
const readBack = (text: string): number => {
  const parsed = parseLength(text);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.fault}`);
  return parsed.value;
};

describe('lengths as a document writes them', () => {
  test.each([
    [33.125 * MM_PER_INCH, '33 1/8 in', '84.1375 cm'],
    [0.75 * MM_PER_INCH, '3/4 in', '1.905 cm'],
    [MM_PER_INCH / 16, '1/16 in', '0.15875 cm'],
    [2 * MM_PER_INCH, '2 in', '5.08 cm'],
    [842, '842 mm', '84.2 cm'],
    [12.34, '12.34 mm', '1.234 cm'],
    [100 / 3, '33.33 mm', '3.333 cm'],
    [0, '0 in', '0 cm'],
    [1e-9, '0 in', '0 cm'],
    [-1e-9, '0 in', '0 cm'],
  ])('%f mm: %s, %s', (value, inches, metric) => {
    expect(writeLength(mm(value), 'inches')).toBe(inches);
    expect(writeLength(mm(value), 'metric')).toBe(metric);
  });

  test('anything is read back within a hundredth of a millimetre, from plain ASCII', () => {
    fc.assert(
      fc.property(evenly(0, 20_000), fc.constantFrom(...systems), (value, system) => {
        const text = writeLength(mm(value), system);
        expect(text).toMatch(/^[\d ./a-z]+$/);
        expect(Math.abs(readBack(text) - value)).toBeLessThan(0.01);
      }),
    );
  });

  test('every chalk mark is read back as itself in either system', () => {
    fc.assert(
      fc.property(
        fc.nat(2000),
        fc.constantFrom(MM_PER_INCH / 16, MM_PER_INCH / 8, MM_PER_INCH / 4, 1, 2, 5),
        fc.constantFrom(...systems),
        (marks, mark, system) => {
          expect(readBack(writeLength(mm(marks * mark), system))).toBeCloseTo(marks * mark, 8);
        },
      ),
    );
  });
});
