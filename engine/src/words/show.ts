import type { Figure } from '../figure/index.ts';
import {
  decimal,
  fraction,
  liesOnLine,
  MM_PER_INCH,
  mm,
  showFine,
  showLength,
  showShopLength,
  type Mm,
  type ShowLength,
} from '../units/index.ts';
import type { Catalogue, FigureCode } from './catalogue.ts';
import { fill } from './message.ts';

/** Lengths that are asked for at a counter: shown in yards or metres. */
const atTheCounter = new Set<string>([
  'cloth.toBuy',
  'cloth.step',
  'cloth.least',
  'supplies.buy',
  'supplies.step',
  'supplies.least',
  'supplies.spool',
  'thread.seam',
  'thread.needle',
  'thread.under',
  'thread.total',
  'thread.sum',
] satisfies FigureCode[]);

/** Needs: shown at the next mark up, never short of what they are. */
const needs = new Set<string>([
  'cloth.beforeWash',
  'cloth.headToTail',
  'cloth.abreast',
  'ribbon.total',
  'body.bareHem',
  'body.everydayHem',
  'skirt.openingNeeded',
  'skirt.openingNeededUnsure',
  'body.keepFor',
  'have.missing',
] satisfies FigureCode[]);

/** Lengths so small that a chalk mark would swallow them. */
const fine = new Set<string>([
  'skirt.sideExcess',
  'skirt.levelTolerance',
  'ribbon.takeUp',
  'ribbon.tuck',
] satisfies FigureCode[]);
/** Settings of the machine are in millimetres everywhere. */
const machine = new Set<string>(['sewing.stitchLength', 'sewing.zigzagWidth'] satisfies FigureCode[]);

const LONG = 3000;
const GAP = '\u00a0';

/** A figure's value as its reader sees it, without its name. */
export function showValue(figure: Figure, how: ShowLength, catalogue: Catalogue): string {
  const shown = plainValue(figure, how, catalogue);
  if (figure.plusMinus === undefined) return shown;
  const plusMinus = plainValue({ ...figure, value: figure.plusMinus }, how, catalogue);
  return fill(catalogue.papers.estimate, catalogue.numbers.locale, { value: shown, plusMinus });
}

/** The value alone, without an estimate's ±. */
export function plainValue(figure: Figure, how: ShowLength, catalogue: Catalogue): string {
  const { value } = figure;
  switch (figure.kind) {
    case 'length':
      return showLengthOf(figure.rule, mm(value), how);
    case 'ratio':
      return showRatio(value, how);
    case 'percent':
      return `${decimal(value * 100, how.words, 1)}${GAP}%`;
    case 'count':
      return decimal(value, how.words, 0);
    case 'minutes':
      return showMinutes(value, catalogue);
    case 'angle':
      return `${decimal((value * 180) / Math.PI, how.words, 1)}°`;
  }
}

function showLengthOf(rule: string, value: Mm, how: ShowLength): string {
  if (machine.has(rule)) return `${decimal(value, how.words, 1)}${GAP}${how.words.millimetre}`;
  if (fine.has(rule)) return showFine(value, how);
  if (atTheCounter.has(rule)) return showShopLength(value, how);
  // Nobody chalks three metres: totals are read in the unit that they are bought in.
  return how.system === 'metric' && value >= LONG
    ? showShopLength(value, how)
    : showLength(value, how, needs.has(rule) ? 'up' : 'nearest');
}

/** 1.5 is 1½ to somebody who measures in inches. */
function showRatio(value: number, how: ShowLength): string {
  const quarters = value * 4;
  const isPlain = how.system === 'inches' && value >= 1 && Math.abs(quarters - Math.round(quarters)) < 1e-9;
  if (isPlain) return fraction(Math.round(quarters), 4);
  return decimal(value, how.words, value < 1 ? 3 : 2);
}

export function showMinutes(value: number, { papers, numbers }: Catalogue): string {
  const whole = Math.round(value);
  const hours = Math.floor(whole / 60);
  const parts = { hours, minutes: whole % 60 };
  return fill(hours > 0 ? papers.hoursMinutes : papers.minutesOnly, numbers.locale, parts);
}

/**
 * A value as it stands in a sum: a length that lies on no line of a ruler is told finer than it can be chalked, or
 * the sum would not add up as printed.
 */
export function addable(figure: Figure, how: ShowLength, catalogue: Catalogue): string {
  const isPlain =
    figure.kind !== 'length' ||
    atTheCounter.has(figure.rule) ||
    fine.has(figure.rule) ||
    machine.has(figure.rule);
  const value = mm(figure.value);
  return isPlain || liesOnLine(value, how.system)
    ? plainValue(figure, how, catalogue)
    : showExact(value, how);
}

/** A length finer than it can be chalked: what a sum came to before it was rounded. */
export const showExact = (value: Mm, how: ShowLength): string =>
  how.system === 'inches'
    ? `${decimal(value / MM_PER_INCH, how.words, 2)}${GAP}${how.words.inch}`
    : `${decimal(value / 10, how.words, 2)}${GAP}${how.words.centimetre}`;
