import type { Path } from '../../geometry/index.ts';
import type { Panel } from '../../skirt/index.ts';
import type { Mm } from '../../units/index.ts';
import type { PartLabel } from '../cutPieces.ts';

/** What runs along a side of the cloth as it lies on the table. */
export type TableEdge =
  'selvage' | 'selvages' | 'fold' | 'two folds' | 'fold and two ends' | 'two ends' | 'raw end' | 'cut edge';

/** A piece, or the half of one that lies against a fold, on the table. Bolt runs along x, y goes across. */
export interface LaidPiece {
  readonly outline: Path;
  /** Panels that this outline cuts: two where it is cut through two layers. Empty for parts. */
  readonly panels: readonly Panel[];
  /** Parts that it cuts. Empty for panels. */
  readonly parts: readonly PartLabel[];
  readonly onFold: boolean;
  readonly turned: boolean;
}

/** The cloth as it lies on the table, folded as this lay asks. */
export interface Table {
  readonly along: Mm;
  readonly across: Mm;
  readonly layers: 1 | 2 | 4;
  readonly top: TableEdge;
  readonly bottom: TableEdge;
  readonly left: TableEdge;
  readonly right: TableEdge;
  readonly pieces: readonly LaidPiece[];
  /** What is cut from it already: of cloth that was folded and is opened out. */
  readonly cut?: readonly Path[];
}
