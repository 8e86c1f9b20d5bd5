import type { Figure, Notice } from '../../figure/index.ts';
import type { Path } from '../../geometry/index.ts';
import type { Marking, Panel } from '../../skirt/index.ts';
import type { Mm } from '../../units/index.ts';
import type { CutPiece } from '../cutPieces.ts';
import type { Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import type { MoreTable } from '../lays/loose.ts';
import type { LaidPiece, Table } from '../lays/table.ts';
import type { LeftOver, Rest } from './rest.ts';

/** What one skirt takes of one cloth. */
export interface Wanted {
  /** Whose it is, as her pieces are labelled; empty for a skirt by itself. */
  readonly wearer: string;
  readonly mains: readonly [CutPiece, ...CutPiece[]];
  readonly parts: readonly CutPiece[];
  readonly marking: Marking;
  /** Seams that join panels of this cloth: where a pattern has to meet. */
  readonly seams: readonly PanelSeam[];
}

/** The right edge of one panel, as it is drawn, sewn to the left edge of the next. */
export interface PanelSeam {
  readonly before: Panel;
  readonly after: Panel;
}

/** A length of one cloth at hand, as it was measured: before its wash, unless it or the cloth was washed. */
export interface ClothLength {
  readonly name: string;
  /** Null for the bolt that is cut from as long as it takes. */
  readonly length: Mm | null;
  readonly width: Mm;
  /** Whether it has had its wash, though the cloth was bought unwashed: then it does not change again. */
  readonly washed: boolean;
  /** Places that nothing may be cut from. */
  readonly flaws: readonly Flaw[];
}

/** A rectangle of spoilt cloth: from the length's beginning, and from one edge, selvage counted. */
export interface Flaw {
  readonly along: Mm;
  readonly across: Mm;
  readonly length: Mm;
  readonly width: Mm;
}

/** A piece on the table, and whose it is. */
export interface FoundPiece extends LaidPiece {
  readonly wearer: string;
}

/** One length of cloth as it lies, folded as the way asks, after its wash. What lies beyond the last piece is uncut. */
export interface FoundTable extends Table {
  readonly from: ClothLength;
  /** The first of all, or what it is besides: cloth beside or beyond what was folded, or another length. */
  readonly where: 'first' | MoreTable['where'];
  /** What it takes of that length, unfolded, to the end of its last piece: none where it lies on cloth that was taken before. */
  readonly used: Mm;
  readonly pieces: readonly FoundPiece[];
  readonly flaws: readonly Path[];
  /** The largest rectangle that is left of it, as a maker would keep it; null where that is a rag. */
  readonly leftOver: LeftOver | null;
  /** On the last table of a length at hand: what of that lies beyond, untouched; null where that is a rag. */
  readonly uncut: Rest | null;
  /**
   * Where stripes are folded off the middle: what is left of the lower layer beyond the upper one's selvage, and under
   * what is left along it, as long as the table; null where that is a rag.
   */
  readonly beneath: Rest | null;
}

/** The best lay that was found for all that is cut from one cloth. */
export interface FoundCloth {
  readonly fabric: Fabric;
  readonly kind: LayKind;
  readonly tables: readonly FoundTable[];
  /** Cloth that is used, all lengths together, after the wash and before it. */
  readonly clothAfter: Figure<Mm>;
  readonly clothBefore: Figure<Mm>;
  /** What the shop cuts off the bolt; 0 where what is at hand is enough. */
  readonly toBuy: Figure<Mm>;
  /** The same skirts laid one after the other, each in the best way that is made by hand; null where one can't be. */
  readonly byHand: Figure<Mm> | null;
  /** Before the wash: by hand less found; never below 0. */
  readonly saved: Figure<Mm> | null;
  /** No lay of this way takes less (after the wash). */
  readonly lowerBound: Figure<Mm>;
  /** Whether nothing more can be saved as the shop sells it. */
  readonly proven: boolean;
  readonly evaluations: number;
  /** A lay with a problem among its notices does not fit. */
  readonly fits: boolean;
  readonly notices: readonly Notice[];
}

/** All that is to be laid on one cloth. */
export interface ClothJob {
  readonly fabric: Fabric;
  /** In the order of their use: the oldest remnant first, the bolt last. */
  readonly lengths: readonly [ClothLength, ...ClothLength[]];
  readonly wanted: readonly Wanted[];
}
