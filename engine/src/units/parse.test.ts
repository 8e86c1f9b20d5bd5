import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm } from './mm.ts';
import { lengthUnits, parseLength, type LengthUnit } from './parse.ts';

const valueOf = (text: string | number, bareUnit?: LengthUnit): number => {
  const parsed = parseLength(text, bareUnit);
  if (!parsed.ok) throw new Error(`${String(text)}: ${parsed.fault}`);
  return parsed.value;
};
const faultOf = (text: string | number, bareUnit?: LengthUnit): string => {
  const parsed = parseLength(text, bareUnit);
  return parsed.ok ? `read as ${String(parsed.value)} mm` : parsed.fault;
};

describe('a length as people write it', () => {
  test.each([
    ['28 3/8', 720.725],
    ['28⅜"', 720.725],
    ['28.375 in', 720.725],
    ['28-3/8 in', 720.725],
    ['28 3 / 8 in', 720.725],
    ['28⅜ po', 720.725],
    ['28⅜”', 720.725],
    ['28 ³⁄₈ in', 720.725],
    ['28³⁄₈ in', 720.725],
    ['72,1 cm', 721],
    ['72.1cm', 721],
    ['0.95 m', 950],
    [',95 m', 950],
    ['950 mm', 950],
    ['1 yd 2 in', 965.2],
    ['1 vg 2 po', 965.2],
    [`5' 4"`, 1625.6],
    [`5'4"`, 1625.6],
    ['5′4″', 1625.6],
    ['5 ft 4 in.', 1625.6],
    ['5 pi 4 ½ po', 1638.3],
    ['1 m 5 cm', 1050],
    ['2 ½ in', 63.5],
    ['2½ inches', 63.5],
    ['³⁄₁₆ in', 4.7625],
    ['3/16 in', 4.7625],
    ['0 in', 0],
    ['  12 IN  ', 304.8],
    ['12\u00a0cm', 120],
    ['12\u202fcm', 120],
  ])('%s is %d mm', (text, expected) => {
    expect(valueOf(text, 'in')).toBeCloseTo(expected, 9);
  });

  test.each([
    ['10 pouces', 254],
    ['1 pouce', 25.4],
    ['2 verges', 1828.8],
    ['1 verge', 914.4],
    ['3 pieds', 914.4],
    ['1 pied', 304.8],
    ['72,1 centimètres', 721],
    ['1 centimètre', 10],
    ['1,5 mètre', 1500],
    ['2 mètres', 2000],
    ['6 millimètres', 6],
  ])('French: %s is %d mm', (text, expected) => {
    expect(valueOf(text)).toBeCloseTo(expected, 9);
  });

  test('comma and point are the same decimal mark', () => {
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(999), fc.constantFrom(...lengthUnits), (whole, part, unit) => {
        const digits = String(part).padStart(3, '0');
        expect(valueOf(`${String(whole)},${digits} ${unit}`)).toBe(
          valueOf(`${String(whole)}.${digits} ${unit}`),
        );
      }),
    );
  });

  test('a bare number takes the unit of its document, whether text or number', () => {
    for (const unit of lengthUnits) {
      expect(valueOf('12.5', unit)).toBe(valueOf(`12.5 ${unit}`));
      expect(valueOf(12.5, unit)).toBe(valueOf(`12.5 ${unit}`));
    }
    expect(valueOf(`5' 4`, 'in')).toBeCloseTo(1625.6, 9);
  });

  test('any mixed number of sixteenths is that many sixteenths, however its fraction is written', () => {
    fc.assert(
      fc.property(fc.nat(99), fc.integer({ min: 1, max: 15 }), (whole, part) => {
        const expected = inches(whole + part / 16);
        const raised = String(part).replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit)));
        for (const text of [`${String(whole)} ${String(part)}/16`, `${String(whole)}${raised}⁄₁₆`])
          expect(valueOf(`${text} in`)).toBeCloseTo(expected, 9);
      }),
    );
  });
});

describe('what is not a length is refused by name', () => {
  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['1 000 mm', 'thousandsSeparator'],
    ['1\u202f000 mm', 'thousandsSeparator'],
    [`1'000 mm`, 'thousandsSeparator'],
    ['1 000,5 mm', 'thousandsSeparator'],
    ['1,000.5 mm', 'thousandsSeparator'],
    ['1.000,5 mm', 'thousandsSeparator'],
    ['1,000,000 mm', 'thousandsSeparator'],
    ['-5 in', 'negative'],
    ['−5 in', 'negative'],
    ['- 5 in', 'negative'],
    ['3/0 in', 'zeroDenominator'],
    ['28 3/0 in', 'zeroDenominator'],
    ['5 furlongs', 'unknownUnit'],
    ['1e309', 'unknownUnit'],
    ['1e3 mm', 'unknownUnit'],
    ['NaN', 'notALength'],
    ['Infinity', 'notALength'],
    ['twelve inches', 'notALength'],
    ['in 12', 'notALength'],
    ['+5 in', 'notALength'],
    ['5 - 3 in', 'notALength'],
    ['1/2/3 in', 'notALength'],
    ['5..2 in', 'noUnit'],
    ['<b>5 in</b>', 'notALength'],
    ['9'.repeat(400), 'notALength'],
    ['4 in 5 ft', 'unitOrder'],
    ['4 in 5 in', 'unitOrder'],
    ['5 cm 4 in', 'unitOrder'],
  ])('%s: %s', (text, fault) => {
    expect(faultOf(text, 'in')).toBe(fault);
  });

  test('a number that is none, or is below nothing', () => {
    expect(faultOf(Infinity, 'in')).toBe('notFinite');
    expect(faultOf(Number('1e309'), 'in')).toBe('notFinite');
    expect(faultOf(NaN, 'in')).toBe('notFinite');
    expect(faultOf(-1, 'in')).toBe('negative');
  });

  test('a number without its unit where the document has none', () => {
    expect(faultOf('28 3/8')).toBe('noUnit');
    expect(faultOf(12)).toBe('noUnit');
    expect(faultOf(`5' 4`)).toBe('noUnit');
  });

  test('a number before another without its unit: nobody can tell what it counts', () => {
    expect(faultOf('2 3 in', 'ft')).toBe('noUnit');
    expect(faultOf('1 1/2 1/4 in', 'yd')).toBe('noUnit');
  });

  test('no text makes it throw, and no text is read as less than nothing or as no number', () => {
    const scraps = fc.constantFrom(
      ...'0 1 12 000 . , / ⁄ - − ½ ³ ₁₆ in " \' cm mm m yd po e NaN'.split(' '),
      ' ',
      '\u00a0',
    );
    const texts = fc.oneof(
      fc.string(),
      fc.array(scraps, { maxLength: 12 }).map((each) => each.join('')),
    );
    fc.assert(
      fc.property(texts, fc.option(fc.constantFrom(...lengthUnits), { nil: undefined }), (text, unit) => {
        const parsed = parseLength(text, unit);
        if (parsed.ok) expect(parsed.value).toBeGreaterThanOrEqual(mm(0));
        if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });
});
