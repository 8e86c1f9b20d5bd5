import { mm, type Mm } from '../../units/index.ts';

/** A colour on paper: `#rrggbb`. */
export type Ink = string;

/** Kinds of line. `chalk` a line to be chalked, `fold` a line to be folded on, `hidden` an edge that lies beneath. */
export const dashNames = ['solid', 'chalk', 'fold', 'hidden'] as const;
export type DashName = (typeof dashNames)[number];

/** Fillings that are told apart in black and white: drawn as real lines, so that every printer prints them. */
export const patternNames = ['none', 'diagonal', 'dots', 'cross'] as const;
export type PatternName = (typeof patternNames)[number];

export interface Style {
  /** Colour of the outline; `null`: none. */
  readonly stroke: Ink | null;
  /** Colour of the area; `null`: the paper shows. Several paths are filled even-odd: a path inside another is a hole. */
  readonly fill: Ink | null;
  readonly width: Mm;
  readonly dash: DashName;
  readonly pattern: PatternName;
  /** How much of line and area covers what lies beneath, 0 to 1; without it all. A pattern is always drawn in full. */
  readonly opacity?: number;
}

/** Inks of the house: dark enough for any printer, and all told apart by lightness alone. */
export const inks = {
  ink: '#231f1c',
  grey: '#6d6761',
  rule: '#b3aca3',
  wash: '#efece6',
  paper: '#ffffff',
} as const;

export const plainStyle: Style = {
  stroke: inks.ink,
  fill: null,
  width: mm(0.3),
  dash: 'solid',
  pattern: 'none',
};

/** A style from what differs from a plain 0.3 mm dark line. */
export const style = (changes: Partial<Style> = {}): Style => ({ ...plainStyle, ...changes });

/** Lengths on and off, in millimetres, of each kind of line at its usual width; empty for an unbroken line. */
const dashLengths: Readonly<Record<DashName, readonly number[]>> = {
  solid: [],
  chalk: [3, 1.8],
  fold: [7, 1.5, 0.8, 1.5],
  hidden: [0.4, 1.2],
};

/** Dashes of a line; they grow with lines thicker than 0.5 mm, so that the gaps stay open. */
export function dashesOf(line: Style): readonly Mm[] {
  const growth = Math.max(1, line.width / 0.5);
  return dashLengths[line.dash].map((length) => mm(length * growth));
}
