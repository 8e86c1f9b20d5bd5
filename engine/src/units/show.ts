import { MM_PER_INCH, MM_PER_METRE, MM_PER_YARD, mm, type Mm } from './mm.ts';
import { stepsIn, type Direction } from './round.ts';

/** The two ways to measure that a maker chooses from. */
export type MeasureSystem = 'inches' | 'metric';

/** Languages of numbers: a BCP 47 tag that `Intl` knows, and the short names of the units in it. */
export interface NumberWords {
  readonly locale: string;
  readonly inch: string;
  readonly yard: string;
  readonly centimetre: string;
  readonly metre: string;
  readonly millimetre: string;
}

export interface ShowLength {
  readonly system: MeasureSystem;
  /** Finest mark shown: 1/16, 1/8 or 1/4 in; 1, 2 or 5 mm. */
  readonly mark: Mm;
  readonly words: NumberWords;
}

const glyphs: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const lowered = '₀₁₂₃₄₅₆₇₈₉';
const inDigits = (value: number, digits: string): string =>
  String(value).replace(/\d/g, (digit) => digits.charAt(Number(digit)));

/** `11¼`, `⅜`, `0`: a count of `parts` of a whole as a true fraction; `parts` a power of two. */
export function fraction(count: number, parts: number): string {
  const whole = Math.floor(count / parts);
  let over = count - whole * parts;
  let under = parts;
  while (over > 0 && over % 2 === 0 && under % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return String(whole);
  const part =
    glyphs[`${String(over)}/${String(under)}`] ?? `${inDigits(over, raised)}⁄${inDigits(under, lowered)}`;
  return whole === 0 ? part : `${String(whole)}${part}`;
}

const formatters = new Map<string, Intl.NumberFormat>();
/** A decimal number in the reader's language, without thousands separators. */
export function decimal(value: number, words: NumberWords, most: number, least = 0): string {
  const key = `${words.locale} ${String(most)} ${String(least)}`;
  let format = formatters.get(key);
  if (!format) {
    format = new Intl.NumberFormat(words.locale, {
      maximumFractionDigits: most,
      minimumFractionDigits: least,
      useGrouping: false,
    });
    formatters.set(key, format);
  }
  return format.format(value);
}

/** No-break space: a number never parts from its unit at the end of a line. */
const GAP = '\u00a0';

/** Finest lines on a ruler. */
const RULER = { inches: mm(MM_PER_INCH / 16), metric: mm(1) } as const;

const INCH_PARTS: readonly number[] = [1, 2, 4, 8, 16];

/** Whether a length lies on a line of the ruler: sixteenths of an inch, or millimetres. */
export function liesOnLine(value: Mm, system: MeasureSystem): boolean {
  const lines = value / RULER[system];
  return Math.abs(lines - Math.round(lines)) < 1e-6;
}

/**
 * A length at the finest mark a maker can chalk: `11¼ in`, `28.6 cm`. One that lies on a line of the ruler
 * already, such as a chosen 5 mm or ³⁄₁₆ in, is shown as it is: rounded, a sum of such lengths would not add up.
 */
export function showLength(value: Mm, how: ShowLength, direction: Direction = 'nearest'): string {
  const size = mm(Math.abs(value));
  const mark = liesOnLine(size, how.system) ? mm(Math.min(RULER[how.system], how.mark)) : how.mark;
  const steps = stepsIn(size, mark, direction);
  const sign = value < 0 && steps > 0 ? '−' : '';
  if (how.system === 'inches') {
    // A document may be chalked in millimetres and read in inches: a ruler has halves of halves only.
    const parts = Math.round(MM_PER_INCH / mark);
    if (!INCH_PARTS.includes(parts)) return showLength(value, { ...how, mark: RULER.inches }, direction);
    return `${sign}${fraction(steps, parts)}${GAP}${how.words.inch}`;
  }
  return `${sign}${decimal((steps * mark) / 10, how.words, 1)}${GAP}${how.words.centimetre}`;
}

/** Small lengths as they are, where rounding to a chalk mark would hide them: `5.6 mm`, `0.22 in`. */
export function showFine(value: Mm, how: ShowLength): string {
  return how.system === 'inches'
    ? `${decimal(value / MM_PER_INCH, how.words, 2)}${GAP}${how.words.inch}`
    : `${decimal(value, how.words, 1)}${GAP}${how.words.millimetre}`;
}

/** A length at the shop's counter, never less than it is: `1⅞ yd`, `1.7 m`. */
export function showShopLength(value: Mm, how: ShowLength): string {
  return how.system === 'inches'
    ? `${fraction(stepsIn(value, mm(MM_PER_YARD / 8), 'up'), 8)}${GAP}${how.words.yard}`
    : `${decimal(stepsIn(value, mm(MM_PER_METRE / 100), 'up') / 100, how.words, 2)}${GAP}${how.words.metre}`;
}
