import { MM_PER_INCH, mm, type Mm } from './mm.ts';

/** Units a person may write a length in. */
export const lengthUnits = ['in', 'cm', 'mm', 'm', 'yd', 'ft'] as const;
export type LengthUnit = (typeof lengthUnits)[number];

/** Why a text is not a length; the words for each are in the catalogues. */
export type LengthFault =
  | 'empty'
  | 'notALength'
  | 'unknownUnit'
  | 'noUnit'
  | 'thousandsSeparator'
  | 'zeroDenominator'
  | 'negative'
  | 'notFinite'
  | 'unitOrder';

export type ParsedLength =
  { readonly ok: true; readonly value: Mm } | { readonly ok: false; readonly fault: LengthFault };

const millimetresPer: Readonly<Record<LengthUnit, number>> = {
  in: MM_PER_INCH,
  cm: 10,
  mm: 1,
  m: 1000,
  yd: 36 * MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
};

/** English and French names: a document's value never depends on its language, so both are always read. */
const namesOf: Readonly<Record<LengthUnit, string>> = {
  in: `in ins inch inches " ″ ” '' po pouce pouces`,
  cm: 'cm centimetre centimetres centimeter centimeters centimètre centimètres',
  mm: 'mm millimetre millimetres millimeter millimeters millimètre millimètres',
  m: 'm metre metres meter meters mètre mètres',
  yd: 'yd yds yard yards vg verge verges',
  ft: `ft foot feet ' ′ ’ pi pied pieds`,
};
const unitNamed = new Map(
  lengthUnits.flatMap((unit) => namesOf[unit].split(' ').map((name) => [name, unit] as const)),
);

const singleGlyphs = new Map(
  ['½ 1/2', '⅓ 1/3', '⅔ 2/3', '¼ 1/4', '¾ 3/4', '⅛ 1/8', '⅜ 3/8', '⅝ 5/8', '⅞ 7/8'].map((pair) => {
    const [glyph = '', plain = ''] = pair.split(' ');
    return [glyph, plain] as const;
  }),
);
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';
const plainDigit = (digit: string): string => String(Math.max(RAISED.indexOf(digit), LOWERED.indexOf(digit)));

/** Longest text worth reading; anything longer is junk. */
const LONGEST_TEXT = 60;

const plainFractions = (text: string): string =>
  text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (glyph) => ` ${singleGlyphs.get(glyph) ?? ''}`)
    .replace(/([\d)])([⁰¹²³⁴⁵⁶⁷⁸⁹])/g, '$1 $2')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉]/g, plainDigit)
    .replace(/⁄/g, '/')
    .replace(/[\u00a0\u202f\u2009]/g, ' ');

const fault = (reason: LengthFault): ParsedLength => ({ ok: false, fault: reason });

// number: a decimal (point or comma), a fraction, or a whole number with a fraction ("28 3/8", "28-3/8").
const quantity =
  /^\s*(?:(\d+)(?:\s+|\s*-\s*)(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+))\s*([^\d\s.,/+-]*)\.?/u;

/**
 * Reads a length as a person writes it: `28 3/8`, `28⅜"`, `28.375 in`, `72,1 cm`, `1 yd 2 in`.
 *
 * Comma and point are both decimal marks; thousands separators are refused.
 * @param bareUnit unit of a number written without one; without it such a number is refused.
 */
export function parseLength(text: string | number, bareUnit?: LengthUnit): ParsedLength {
  if (typeof text === 'number') return fromNumber(text, bareUnit);
  if (text.length > LONGEST_TEXT) return fault('notALength');
  let rest = plainFractions(text).trim();
  if (rest === '') return fault('empty');
  if (/^[-−]/.test(rest)) return fault('negative');
  if (/\d[\s'’]\d{3}(?!\d)(?!\s*\/)/.test(rest) || /\d[.,]\d+[.,]\d/.test(rest))
    return fault('thousandsSeparator');
  let total = 0;
  let smallestSoFar = Infinity;
  while (rest !== '') {
    const match = quantity.exec(rest);
    if (!match) return fault('notALength');
    rest = rest.slice(match[0].length).trim();
    const [, whole, over, under, loneOver, loneUnder, decimal, name] = match;
    const top = over ?? loneOver;
    const bottom = under ?? loneUnder;
    if (bottom !== undefined && Number(bottom) === 0) return fault('zeroDenominator');
    const value =
      decimal !== undefined
        ? Number(decimal.replace(',', '.'))
        : Number(whole ?? 0) + Number(top) / Number(bottom);
    const unit = name ? unitNamed.get(name.toLowerCase()) : bareUnit;
    if (name && !unit) return fault('unknownUnit');
    if (!unit) return fault('noUnit');
    // Only the last part may do without its unit: in "2 3 in" nobody can tell what the 2 counts.
    if (!name && rest !== '') return fault(quantity.test(rest) ? 'noUnit' : 'notALength');
    if (millimetresPer[unit] >= smallestSoFar) return fault('unitOrder');
    smallestSoFar = millimetresPer[unit];
    total += value * millimetresPer[unit];
  }
  return Number.isFinite(total) ? { ok: true, value: mm(total) } : fault('notFinite');
}

function fromNumber(value: number, bareUnit: LengthUnit | undefined): ParsedLength {
  if (!Number.isFinite(value)) return fault('notFinite');
  if (value < 0) return fault('negative');
  if (!bareUnit) return fault('noUnit');
  return { ok: true, value: mm(value * millimetresPer[bareUnit]) };
}
