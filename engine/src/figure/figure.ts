import type { Minutes, Mm, Radians } from '../units/index.ts';

/** What a figure's number counts: decides how it is printed. Ratios are plain numbers, percent are ratios shown × 100. */
export type FigureKind = 'length' | 'ratio' | 'percent' | 'count' | 'minutes' | 'angle';

/**
 * A number that people see, with how it was got: the rule that produced it and the figures that went into
 * it. The words for a rule are in the catalogues; the numbers in them are these.
 */
export interface Figure<T extends number = number, Code extends string = string> {
  readonly value: T;
  readonly kind: FigureKind;
  readonly rule: Code;
  readonly inputs: Readonly<Record<string, Figure>>;
  /** The number before it was rounded to a mark that can be chalked, where it was. */
  readonly exact?: T;
  /** Half-width of the estimate's interval, in the figure's own unit, where it is an estimate. */
  readonly plusMinus?: T;
}

export type Inputs = Readonly<Record<string, Figure>>;
/** What some figures have besides: the number before it was rounded, and how far an estimate may be off. */
export interface Extra<T> {
  readonly exact?: T;
  readonly plusMinus?: T;
}

const none: Inputs = Object.freeze({});

/**
 * The makers of figures for one room. Naming the room's codes once makes a rule without words a type error.
 *
 * @example const { length } = figures<'cloth.beforeWash'>();
 */
export function figures<Code extends string>() {
  const of =
    <T extends number>(kind: FigureKind) =>
    (value: T, rule: Code, inputs: Inputs = none, extra: Extra<T> = {}): Figure<T, Code> => ({
      value,
      kind,
      rule,
      inputs,
      ...extra,
    });
  return {
    length: of<Mm>('length'),
    ratio: of<number>('ratio'),
    percent: of<number>('percent'),
    count: of<number>('count'),
    minutes: of<Minutes>('minutes'),
    angle: of<Radians>('angle'),
  };
}
