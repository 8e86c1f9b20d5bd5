import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { english, french } from '../testing/numberWords.ts';
import { inches, metres, mm, yards, type Mm } from './mm.ts';
import { parseLength } from './parse.ts';
import { roundTo, stepsIn } from './round.ts';
import {
  decimal,
  fraction,
  showFine,
  showLength,
  showShopLength,
  type MeasureSystem,
  type NumberWords,
  type ShowLength,
} from './show.ts';

const EIGHTH = inches(1 / 8);
const how = (system: MeasureSystem, words: NumberWords, mark?: Mm): ShowLength => ({
  system,
  words,
  mark: mark ?? (system === 'inches' ? EIGHTH : mm(2)),
});
/** A no-break space prints like a space. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('fractions', () => {
  test.each([
    [0, 8, '0'],
    [3, 8, '⅜'],
    [8, 8, '1'],
    [90, 8, '11¼'],
    [3, 16, '³⁄₁₆'],
    [29, 16, '1¹³⁄₁₆'],
    [24, 16, '1½'],
  ])('%d parts of %d are %s', (count, parts, expected) => {
    expect(fraction(count, parts)).toBe(expected);
  });
});

describe('lengths in words', () => {
  test('in inches, to the chosen mark', () => {
    expect(plain(showLength(inches(11.25), how('inches', english)))).toBe('11¼ in');
    expect(plain(showLength(inches(11.25), how('inches', french)))).toBe('11¼ po');
    expect(plain(showLength(inches(11.3), how('inches', english)))).toBe('11¼ in');
    expect(plain(showLength(inches(11.3), how('inches', english, inches(1 / 16))))).toBe('11⁵⁄₁₆ in');
    expect(plain(showLength(inches(11.3), how('inches', english, inches(1 / 4)), 'up'))).toBe('11½ in');
  });

  test('in centimetres, with the mark of the language', () => {
    expect(plain(showLength(mm(721), how('metric', english, mm(1))))).toBe('72.1 cm');
    expect(plain(showLength(mm(721), how('metric', french, mm(1))))).toBe('72,1 cm');
    expect(plain(showLength(mm(721.2), how('metric', english)))).toBe('72.2 cm');
    expect(plain(showLength(mm(12_345), how('metric', french, mm(5))))).toBe('1234,5 cm');
  });

  test('a length that lies on a line of the ruler is shown as it is, however coarse the chalk', () => {
    expect(plain(showLength(mm(5), how('metric', english)))).toBe('0.5 cm');
    expect(plain(showLength(mm(5.1), how('metric', english)))).toBe('0.6 cm');
    expect(plain(showLength(inches(3 / 16), how('inches', english)))).toBe('³⁄₁₆ in');
  });

  test('less than nothing, as a change may be, carries its sign', () => {
    expect(plain(showLength(inches(-1.5), how('inches', english)))).toBe('−1½ in');
    expect(plain(showLength(mm(-0.3), how('inches', english)))).toBe('0 in');
    expect(plain(showLength(mm(-0.3), how('metric', english)))).toBe('0 cm');
  });

  test('small lengths that a chalk mark would hide', () => {
    expect(plain(showFine(mm(5.6), how('metric', french)))).toBe('5,6 mm');
    expect(plain(showFine(mm(5.6), how('inches', english)))).toBe('0.22 in');
  });

  test('decimals have no thousands separator in any language', () => {
    expect(decimal(1_234_567.5, english, 1)).toBe('1234567.5');
    expect(decimal(1_234_567.5, french, 1)).toBe('1234567,5');
    expect(decimal(2, english, 2, 2)).toBe('2.00');
  });

  test('the number and its unit never part at the end of a line', () => {
    for (const words of [english, french])
      for (const system of ['inches', 'metric'] as const) {
        const show = how(system, words);
        for (const text of [showLength(mm(700), show), showFine(mm(7), show), showShopLength(mm(700), show)])
          expect(text).not.toContain(' ');
      }
  });
});

describe('at the counter', () => {
  test('eighths of a yard, or metres', () => {
    expect(plain(showShopLength(yards(1.875), how('inches', english)))).toBe('1⅞ yd');
    expect(plain(showShopLength(yards(2.375), how('inches', french)))).toBe('2⅜ vg');
    expect(plain(showShopLength(metres(1.7), how('metric', english)))).toBe('1.7 m');
    expect(plain(showShopLength(metres(1.7), how('metric', french)))).toBe('1,7 m');
  });

  test('never less than was meant, in either system', () => {
    const lengths = evenly(0, 50_000).map(mm);
    fc.assert(
      fc.property(lengths, fc.constantFrom('inches', 'metric'), (length, system) => {
        const parsed = parseLength(showShopLength(length, how(system, english)));
        expect(parsed.ok && parsed.value).toBeGreaterThanOrEqual(length - 0.01);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('what is printed reads back', () => {
  const systems: readonly (readonly [MeasureSystem, readonly Mm[]])[] = [
    ['inches', [inches(1 / 16), inches(1 / 8), inches(1 / 4)]],
    ['metric', [mm(1), mm(2), mm(5)]],
  ];
  for (const [system, marks] of systems)
    for (const [language, words] of Object.entries({ english, french }))
      test(`${system}, ${language}`, () => {
        fc.assert(
          fc.property(evenly(0, 9000).map(mm), fc.constantFrom(...marks), (length, mark) => {
            // What lies on a line of the ruler is shown as it is; the rest at its nearest mark.
            const line = system === 'inches' ? inches(1 / 16) : mm(1);
            fc.pre(Math.abs(length / line - Math.round(length / line)) > 1e-6 || length === 0);
            const parsed = parseLength(showLength(length, how(system, words, mark)));
            expect(parsed.ok && parsed.value).toBeCloseTo(roundTo(length, mark, 'nearest'), 6);
            const shop = parseLength(showShopLength(length, how(system, words, mark)));
            const step = system === 'inches' ? yards(1 / 8) : mm(10);
            expect(shop.ok && shop.value).toBeCloseTo(stepsIn(length, step, 'up') * step, 6);
          }),
          { numRuns: 1000 },
        );
      });
});
