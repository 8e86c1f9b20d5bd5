import { describe, expect, test } from 'vitest';
import { point } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { fonts } from '../testing/fonts.ts';
import { footBelow, startBefore } from './font.ts';
import { label } from './make.ts';

const { regular, bold } = fonts;

describe('an open font', () => {
  test('width grows with size and with words', () => {
    const once = regular.widthOf('hem line', mm(4));
    expect(regular.widthOf('hem line', mm(8))).toBeCloseTo(2 * once);
    expect(regular.widthOf('hem line hem line', mm(4))).toBeCloseTo(2 * once + regular.widthOf(' ', mm(4)));
    expect(regular.widthOf('', mm(4))).toBe(0);
    expect(bold.widthOf('hem line', mm(4))).toBeGreaterThan(once);
  });

  test('it has what the papers print: eighths, sixteenths, signs, French, arrows', () => {
    expect(regular.missing('⅛¼⅜½⅝¾⅞ ³⁄₁₆ ×÷√−±² éèàçœŒ «\u00a0»\u202f“”’ ←↑→↓ –—…°•')).toEqual([]);
    expect(bold.missing('⅛¼⅜½⅝¾⅞ ³⁄₁₆ ×÷√−±² éèàçœŒ «\u00a0»\u202f“”’ ←↑→↓ –—…°•')).toEqual([]);
  });

  test('it names what it lacks, each once', () => {
    expect(regular.missing('ᐃᓄᒃ ᐃ hem')).toEqual(['ᐃ', 'ᓄ', 'ᒃ']);
  });

  test('outlines advance by the width that was measured', () => {
    const word = 'WAIST AVENUE ½';
    const outlines = regular.outlines(`${word}|`);
    const last = outlines.at(-1)?.x ?? 0;
    expect(last / regular.unitsPerEm).toBeCloseTo(regular.widthOf(word, mm(1)), 1);
    expect(outlines).toHaveLength(Array.from(word).length + 1);
  });

  test('words aligned to their end begin their whole width before it', () => {
    const mark = label(point(0, 0), '13½ in', { align: 'end', size: mm(5) });
    expect(startBefore(mark, fonts)).toBeCloseTo(regular.widthOf('13½ in', mm(5)));
    expect(startBefore({ ...mark, align: 'middle' }, fonts)).toBeCloseTo(
      regular.widthOf('13½ in', mm(5)) / 2,
    );
    expect(startBefore({ ...mark, align: 'start' }, fonts)).toBe(0);
  });

  test('a capital hangs from the point, stands on it, or is halved by it', () => {
    const mark = label(point(0, 0), 'H', { size: mm(10) });
    expect(footBelow(mark)).toBe(0);
    expect(footBelow({ ...mark, baseline: 'middle' })).toBeCloseTo(3.3);
    expect(footBelow({ ...mark, baseline: 'top' })).toBeCloseTo(6.6);
  });
});
