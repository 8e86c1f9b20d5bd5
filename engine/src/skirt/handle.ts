import type { Mm } from '../units/index.ts';

/**
 * What of a skirt's own options can be taken hold of. Seams between tiers carry the number of the tier above them, from the
 * top down, from 1.
 */
export type OptionHandleName =
  | 'waistMark'
  | 'hemMark'
  | 'hem'
  | 'overlap'
  | 'casing'
  | 'band'
  | 'opening'
  | 'slit'
  | 'pocket'
  | 'tuck'
  | `tier ${number}`;

/** What a move writes among the options that offer it: lengths are written in the document's measure, numbers as they are. */
export interface Written {
  readonly lengths?: Readonly<Record<string, Mm>>;
  readonly numbers?: Readonly<Record<string, number | readonly number[]>>;
}

/** One thing to take hold of that a cut, a waist or an extra offers: its value now, how far it goes, and what moving it writes. */
export interface OptionHandle {
  readonly name: OptionHandleName;
  readonly value: Mm;
  readonly least: number;
  readonly most: number;
  /** Finest move. */
  readonly step: Mm;
  /** Where its steps are counted from; 0 where it is left out. */
  readonly from?: Mm;
  /** Whether the room of the ribbons ends lower by as much as it grows. */
  readonly lowersTop?: boolean;
  readonly writes: (value: Mm) => Written;
}
