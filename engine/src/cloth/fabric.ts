import type { Figure, Notice } from '../figure/index.ts';
import { mm, roundTo, longest, type Mm } from '../units/index.ts';
import { caution, figure } from './codes.ts';
import { reckoned, type ChangeOptions, type ClothOptions, type PatternOptions } from './options.ts';

/** What repeats on a cloth once it is washed; null in a direction in which nothing does. */
export interface Pattern {
  readonly across: Mm | null;
  readonly along: Mm | null;
  /** A line (or crossing) of it, from the cloth's beginning and from its edge, selvage counted. */
  readonly at: { readonly across: Mm; readonly along: Mm };
  /** Whether it has to meet at the side seams. */
  readonly match: boolean;
}

/** What a pattern that has to meet is made of; null where none has to. */
export function patternKind({ pattern }: Pick<Fabric, 'pattern'>): 'stripes' | 'bands' | 'checks' | null {
  if (pattern?.match !== true) return null;
  if (pattern.across === null) return 'bands';
  return pattern.along === null ? 'stripes' : 'checks';
}

/** The cloth as it will lie on the table after its wash. */
export interface Fabric {
  readonly lengthwise: Figure;
  readonly crosswise: Figure;
  readonly selvage: Figure<Mm>;
  /** Width after the wash between the selvages, and with one selvage used as the waist edge. */
  readonly usable: Figure<Mm>;
  readonly usableFromSelvage: Figure<Mm>;
  readonly oneWay: boolean;
  readonly step: Figure<Mm>;
  readonly least: Figure<Mm>;
  /** Room for the scissors between any two pieces; 0 where one cut parts them. */
  readonly between: Figure<Mm>;
  /** What repeats on it; null on plain cloth. */
  readonly pattern: Pattern | null;
  readonly notices: readonly Notice[];
}

/** Reads the cloth. Prewashed cloth does not change again; otherwise the wash is reckoned with, never both. */
export function readFabric(chosen: ClothOptions): Fabric {
  const lengthwise = changeOf(chosen.change.lengthwise, chosen.washed);
  const crosswise = changeOf(chosen.change.crosswise, chosen.washed);
  const width = figure.length(chosen.width, 'cloth.width');
  const selvage = figure.length(chosen.selvage, 'cloth.selvage');
  const isRange =
    !chosen.washed &&
    [chosen.change.lengthwise, chosen.change.crosswise].some((c) => typeof c !== 'number' && 'to' in c);
  return {
    lengthwise,
    crosswise,
    selvage,
    ...usableWidths(width, crosswise, selvage),
    oneWay: chosen.oneWay,
    step: figure.length(chosen.step, 'cloth.step'),
    least: figure.length(chosen.least, 'cloth.least'),
    between: figure.length(chosen.between, 'cloth.between'),
    pattern: chosen.pattern ? washedPattern(chosen.pattern, lengthwise.value, crosswise.value) : null,
    notices: isRange ? [caution('cloth.changeIsRange', { lengthwise, crosswise })] : [],
  };
}

/** What of a width can be cut from after the wash: between its selvages, and from one of them. */
export function usableWidths(
  width: Figure<Mm>,
  change: Figure,
  selvage: Figure<Mm>,
): Pick<Fabric, 'usable' | 'usableFromSelvage'> {
  const without = (selvages: number): Figure<Mm> =>
    figure.length(
      mm(Math.max(1, width.value * (1 - change.value) - selvages * selvage.value)),
      'cloth.usable',
      { width, change, selvages: figure.count(selvages, 'cloth.selvages'), selvage },
    );
  return { usable: without(2), usableFromSelvage: without(1) };
}

/** A pattern changes in the wash as its cloth does; null where nothing of it repeats, for then there is nothing to meet. */
function washedPattern(
  { across, along, at, match }: PatternOptions,
  lengthwise: number,
  crosswise: number,
): Pattern | null {
  if (across === undefined && along === undefined) return null;
  const over = (length: Mm): Mm => mm(length * (1 - crosswise));
  const down = (length: Mm): Mm => mm(length * (1 - lengthwise));
  return {
    across: across === undefined ? null : over(across),
    along: along === undefined ? null : down(along),
    at: { across: over(at.across), along: down(at.along) },
    match,
  };
}

function changeOf(change: ChangeOptions, washed: boolean): Figure {
  if (washed) return figure.percent(0, 'cloth.changeDone');
  if (typeof change === 'number') return figure.percent(change, 'cloth.change');
  if ('to' in change) return figure.percent(reckoned(change), 'cloth.changeUpper');
  const before = figure.length(change.before, 'cloth.squareBefore');
  const after = figure.length(change.after, 'cloth.squareAfter');
  return figure.percent(reckoned(change), 'cloth.changeMeasured', { before, after });
}

/**
 * Length to buy so that `needed` is left after the first wash: needed / (1 − change), not needed × (1 + change).
 * Dimensional change as ISO 5077 defines it; `change` is a ratio in [0, 1).
 */
export function beforeWash(needed: Figure<Mm>, change: Figure): Figure<Mm> {
  return figure.length(mm(needed.value / (1 - change.value)), 'cloth.beforeWash', { needed, change });
}

/** What the shop cuts: up to its next step, and at least its least length. Exact steps stay. */
export function toBuy(needed: Figure<Mm>, fabric: Pick<Fabric, 'step' | 'least'>): Figure<Mm> {
  const rounded = roundTo(longest(needed.value, fabric.least.value), fabric.step.value, 'up');
  return figure.length(rounded, 'cloth.toBuy', { needed, step: fabric.step, least: fabric.least });
}

/**
 * What the shop cuts off the bolt for what is used of it, told after the wash and before it; of a cloth with bands that meet
 * a repeat more, for its end is trimmed until one lies where it has to.
 */
export function boughtOff(used: Figure<Mm>, before: Figure<Mm>, fabric: Fabric): Figure<Mm> {
  const { pattern, lengthwise } = fabric;
  if (pattern?.match !== true || pattern.along === null) return toBuy(before, fabric);
  const repeat = figure.length(pattern.along, 'cloth.repeat');
  const trimmed = figure.length(mm(used.value + pattern.along), 'cloth.withRepeat', { used, repeat });
  return toBuy(beforeWash(trimmed, lengthwise), fabric);
}

/** What a length is bought for, before the shop's step; null where nothing is bought. */
export const boughtFor = ({ inputs: { needed } }: Figure<Mm>): Figure<Mm> | null =>
  needed && isLength(needed) ? needed : null;

const isLength = (figure: Figure): figure is Figure<Mm> => figure.kind === 'length';
