import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { count, length } from '../codes.ts';
import { monthsAfter } from './calendar.ts';
import { referenceAges, type GrowthReference } from './reference.ts';
import { statureAt, zOf } from './stature.ts';

/** A child whose height was measured on a day, and the skirt that was measured for the child then. */
export interface Measured {
  readonly reference: GrowthReference;
  readonly ageMonths: number;
  /** YYYY-MM-DD. */
  readonly measuredOn: string;
  readonly height: Figure<Mm>;
  readonly waistToHem: Figure<Mm>;
  readonly waistToFloor: Figure<Mm> | null;
  /** Rise of the hem with which the skirt counts as too short. */
  readonly shortWhen: Mm;
}

/** The same with the child's place in the reference, which is kept: standard deviations from the median of that age. */
export interface GrowthLine extends Measured {
  readonly z: number;
}

/** Past this many standard deviations a height is a slip of the tape or of the age sooner than a child: 1 in 30,000. */
const IMPROBABLE = 4;

/** Null where no forecast is made: age outside 2 to 20 years, or a height improbable at that age. */
export function growthLine(measured: Measured): GrowthLine | null {
  const z = zOf(measured.reference, measured.ageMonths, measured.height.value);
  return z !== null && Math.abs(z) <= IMPROBABLE ? { ...measured, z } : null;
}

/**
 * The height on the child's own line. The reference knows no growth past 20 years: the height of that age stays. Without a time that
 * lies ahead, the height as measured.
 */
function onLine({ reference, ageMonths, z, height }: GrowthLine, months: number): Mm {
  const then = Math.min(ageMonths + months, referenceAges.most);
  return (months > 0 ? statureAt(reference, then, z) : null) ?? height.value;
}

/** Height after a number of months (at least 0). */
export function heightAfter(line: GrowthLine, months: number): Figure<Mm> {
  const growth = length(mm(onLine(line, months) - line.height.value), 'body.growth');
  return length(mm(line.height.value + growth.value), 'body.heightAfter', { height: line.height, growth });
}

type InProportion = 'body.waistToFloorAfter' | 'body.waistToHemAfter';

/** What runs along the body grows as the height does; an estimate stays as uncertain, in proportion. */
function inProportion(measure: Figure<Mm>, rule: InProportion, line: GrowthLine, months: number): Figure<Mm> {
  const { height } = line;
  const after = heightAfter(line, months);
  const grown = (value: Mm): Mm => mm((value * after.value) / height.value);
  const { plusMinus } = measure;
  return length(
    grown(measure.value),
    rule,
    { measure, after, height },
    plusMinus === undefined ? {} : { plusMinus: grown(plusMinus) },
  );
}

/** Waist to floor after a number of months; null where it was not measured. */
export const waistToFloorAfter = (line: GrowthLine, months: number): Figure<Mm> | null =>
  line.waistToFloor && inProportion(line.waistToFloor, 'body.waistToFloorAfter', line, months);

/** The finished length that reaches the same level after a number of months. */
export const waistToHemAfter = (line: GrowthLine, months: number): Figure<Mm> =>
  inProportion(line.waistToHem, 'body.waistToHemAfter', line, months);

function longerBy(rule: 'body.hemRise' | 'body.keepFor', line: GrowthLine, months: number): Figure<Mm> {
  const { waistToHem } = line;
  const longer = waistToHemAfter(line, months);
  return length(mm(longer.value - waistToHem.value), rule, { longer, waistToHem });
}

/** How far above its level the hem hangs after a number of months, the skirt's length unchanged. */
export const hemRiseAfter = (line: GrowthLine, months: number): Figure<Mm> =>
  longerBy('body.hemRise', line, months);

/** What a growth tuck or a deeper hem must hold, for the skirt to be let down to its level for so many months. */
export const keepFor = (line: GrowthLine, months: number): Figure<Mm> =>
  longerBy('body.keepFor', line, months);

/** When the skirt will be too short. */
export interface ShortThen {
  /** Whole months after the day of measuring within which it happens; the time itself is its `exact`. */
  readonly months: Figure;
  /** YYYY-MM-DD. */
  readonly on: string;
  /** The child's height then. */
  readonly height: Figure<Mm>;
}

/** In months: about four minutes, far within the day that is told. */
const TOLERANCE = 1e-4;

const riseAllowed = (shortWhen: Figure<Mm>, kept: Figure<Mm> | null): Figure<Mm> =>
  kept ? length(mm(shortWhen.value + kept.value), 'body.riseAllowed', { shortWhen, kept }) : shortWhen;

/** The height at which the skirt is too short: its finished length and the rise are then what its level asks for. */
function heightWhenShort({ height, waistToHem, shortWhen }: GrowthLine, kept: Figure<Mm> | null): Figure<Mm> {
  const rise = riseAllowed(length(shortWhen, 'body.shortWhen'), kept);
  const value = mm((height.value * (waistToHem.value + rise.value)) / waistToHem.value);
  return length(value, 'body.heightWhenShort', { height, waistToHem, rise });
}

/**
 * When the hem will have risen by `shortWhen`, with `kept` (in a growth tuck, in a deeper hem) let down before; null where that is
 * not before 20 years. The height follows from the rise; when the child reaches it is found by halving, to `TOLERANCE`.
 */
export function shortThen(line: GrowthLine, kept: Figure<Mm> | null = null): ShortThen | null {
  const height = heightWhenShort(line, kept);
  let [before, then] = [0, referenceAges.most - line.ageMonths];
  if (onLine(line, then) < height.value) return null;
  while (then - before > TOLERANCE) {
    const middle = (before + then) / 2;
    if (onLine(line, middle) < height.value) before = middle;
    else then = middle;
  }
  const on = monthsAfter(line.measuredOn, then);
  const months = count(Math.ceil(then), 'body.monthsUntilShort', {}, { exact: then });
  return on === null ? null : { months, on, height };
}
