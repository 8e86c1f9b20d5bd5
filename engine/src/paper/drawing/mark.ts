import type { Path, Point } from '../../geometry/index.ts';
import type { Mm, Radians } from '../../units/index.ts';
import type { Ink, Style } from './style.ts';

/** Lines, arcs, and what they enclose when `closed`. */
export interface PathMark {
  readonly kind: 'path';
  readonly paths: readonly Path[];
  readonly closed: boolean;
  readonly style: Style;
}

export interface CircleMark {
  readonly kind: 'circle';
  readonly centre: Point;
  readonly radius: Mm;
  readonly style: Style;
}

export const headNames = ['none', 'arrow', 'tick'] as const;
export type HeadName = (typeof headNames)[number];

/** A straight line with heads: the long side of an arrowhead, or of a tick, is `size`. */
export interface ArrowMark {
  readonly kind: 'arrow';
  readonly from: Point;
  readonly to: Point;
  readonly tail: HeadName;
  readonly head: HeadName;
  readonly size: Mm;
  readonly style: Style;
}

export type TextAlign = 'start' | 'middle' | 'end';
/** What of the letters lies at the mark's point: their foot, the middle of a capital, the top of a capital. */
export type TextBaseline = 'foot' | 'middle' | 'top';

/** One line of words. `size` is the em height in millimetres (11 pt = 3.88 mm); a capital is 0.66 of it. */
export interface TextMark {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  readonly size: Mm;
  readonly align: TextAlign;
  readonly baseline: TextBaseline;
  readonly bold: boolean;
  /** Turn about `at`, from +x towards +y: clockwise as it is seen. */
  readonly angle: Radians;
  readonly ink: Ink;
  /** A rim in the colour of what they stand on, that keeps the words clear of lines they cross. */
  readonly halo: Ink | null;
}

/** Scaled about the origin, then turned, then moved. */
export interface Placement {
  readonly dx: Mm;
  readonly dy: Mm;
  readonly scale: number;
  readonly angle: Radians;
}

/** What a group is to somebody who hears the page read. Marks outside any role are ornament there. */
export const roleNames = [
  'heading1',
  'heading2',
  'heading3',
  'paragraph',
  'list',
  'listItem',
  'table',
  'row',
  'headerCell',
  'cell',
  'figure',
  'ornament',
] as const;
export type RoleName = (typeof roleNames)[number];

export interface GroupMark {
  readonly kind: 'group';
  /** Name of the layer; may be empty. */
  readonly name: string;
  readonly role: RoleName | null;
  /** Text equivalent of a figure; empty elsewhere. */
  readonly alt: string;
  readonly placement: Placement;
  readonly marks: readonly Mark[];
}

export type Mark = PathMark | CircleMark | ArrowMark | TextMark | GroupMark;

/** A picture at true size: x to the right and y down from the top left corner, in millimetres. */
export interface Drawing {
  readonly width: Mm;
  readonly height: Mm;
  readonly title: string;
  /** The same in words, for those who can't see it. */
  readonly description: string;
  readonly marks: readonly Mark[];
}
