import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../units/index.ts';
import { fonts } from '../testing/fonts.ts';
import type { Span } from './block.ts';
import { wrap } from './wrap.ts';

const size = mm(4);
const lines = (spans: readonly Span[], width: number) => wrap(spans, mm(width), size, fonts);
const textOf = (line: { readonly runs: readonly { readonly text: string }[] }) =>
  line.runs.map(({ text }) => text).join('');
const plain = (text: string, width: number) => lines([{ text, bold: false }], width).map(textOf);

const words = fc.string({
  unit: fc.constantFrom('a', 'b', 'W', 'é', '½', ' ', '\u00a0', '-', ','),
  maxLength: 60,
});
const spans = fc.array(fc.record({ text: words, bold: fc.boolean() }), { maxLength: 4 });

describe('wrapping', () => {
  test('no line is wider than asked, as long as one letter fits', () => {
    fc.assert(
      fc.property(spans, fc.double({ min: 6, max: 120, noNaN: true }), (text, width) => {
        for (const line of lines(text, width)) expect(line.width).toBeLessThanOrEqual(width + 1e-6);
      }),
      { numRuns: 200 },
    );
  });

  test('no letter is lost, none changes weight', () => {
    const letters = (of: readonly { readonly text: string; readonly bold: boolean }[]) =>
      of.flatMap(({ text, bold }) =>
        Array.from(text.replace(/ /g, '')).map((letter) => `${letter}${bold ? '*' : ''}`),
      );
    fc.assert(
      fc.property(spans, fc.double({ min: 6, max: 120, noNaN: true }), (text, width) => {
        expect(letters(lines(text, width).flatMap(({ runs }) => runs))).toEqual(letters(text));
      }),
      { numRuns: 200 },
    );
  });

  test('a line is as full as it can be: the next word would not have fitted', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('a', 'hem', 'ribbon', 'casing'), { minLength: 1, maxLength: 40 }),
        (all) => {
          const set = plain(all.join(' '), 40);
          set.slice(1).forEach((line, i) => {
            const next = line.split(' ')[0] ?? '';
            expect(fonts.regular.widthOf(`${set[i] ?? ''}${next}`, size)).toBeGreaterThan(40);
          });
        },
      ),
      { numRuns: 100 },
    );
  });

  test('a number never parts from its unit', () => {
    for (let width = 16; width < 60; width++)
      for (const line of plain('chalk the hem at 18¾\u00a0in and the waist at 13½\u202fpo', width)) {
        expect(line).not.toMatch(/[¾½]\s*$/);
      }
  });

  test('a word too long for any line is parted between letters, accents with them', () => {
    const set = plain('Rindfleische\u0301tikettierung'.repeat(3), 30);
    expect(set.length).toBeGreaterThan(3);
    for (const line of set) expect(line).not.toMatch(/^\p{M}/u);
  });

  test('a line may end after a hyphen between letters, never within a range of numbers', () => {
    expect(plain('two-panel', 10)).toEqual(['two-', 'panel']);
    expect(plain('size 12-14', fonts.regular.widthOf('size 12-', size))).toEqual(['size ', '12-14']);
  });

  test('a line end in the words ends the line, twice leaves a blank one', () => {
    expect(plain('fold\nchalk\n\ncut', 90).map((line) => line.trim())).toEqual(['fold', 'chalk', '', 'cut']);
  });

  test('runs stand one after the other', () => {
    const [line] = lines(
      [
        { text: 'chalk ', bold: true },
        { text: 'the hem', bold: false },
      ],
      90,
    );
    expect(line?.runs.map(({ text }) => text)).toEqual(['chalk ', 'the hem']);
    expect(line?.runs[1]?.x).toBeCloseTo(fonts.bold.widthOf('chalk ', size));
  });
});
