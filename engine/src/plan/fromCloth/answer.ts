import type { LayKind } from '../../cloth/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';

/** What can be made of a length of cloth. Null where nothing of this cut can. */
export interface FromCloth {
  readonly have: Mm;
  /** Which length at hand it is; null for one that was only asked about. */
  readonly at: { readonly name: string; readonly width: Mm } | null;
  /** The longest finished skirt with everything else as planned, what it takes before the wash, and what is left then. */
  readonly longest: Figure<Mm> | null;
  readonly takes: Figure<Mm> | null;
  /** How the longest is laid. */
  readonly way: LayKind | null;
  readonly left: Figure<Mm> | null;
  /**
   * The fullest at the planned length: cloth round for each unit of the widest part, and its hem mark. Null too where
   * the cut has no fullness to choose.
   */
  readonly fullest: { readonly fullness: Figure; readonly hemQuarter: Figure<Mm> } | null;
  /** The most single rows of the usual ribbon that have room on the longest, all else as planned. */
  readonly mostRows: Figure | null;
  /** How many skirts as planned, laid one after the other. */
  readonly count: Figure;
  /** What can't be had from it, and what to do. */
  readonly notices: readonly Notice[];
}
