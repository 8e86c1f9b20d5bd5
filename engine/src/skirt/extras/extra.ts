import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { Part, PartCloth } from '../panel.ts';
import type { Work } from '../works.ts';

/** What every extra adds to a drafted skirt; each has numbers of its own besides. */
export interface Extra {
  readonly parts: readonly Part[];
  readonly works: readonly Work[];
  readonly notices: readonly Notice[];
}

/** A stretch of a seam, by its lower and its upper end above the finished hem, on the panel laid flat. */
export interface Takes {
  readonly from: Mm;
  readonly to: Mm;
}

/** A seam in which pockets and slits are made, by where it is worn. */
export type SeamSide = 'left' | 'right' | 'back';

/** Pockets in the side seams. */
export interface Pockets extends Extra {
  /** One, or one on each side. */
  readonly count: Figure;
  readonly sides: readonly SeamSide[];
  /** Length of the opening in the seam: the hand flat, and ease. */
  readonly opening: Figure<Mm>;
  /** From the panels' top line down the seam to where the opening begins. */
  readonly below: Figure<Mm>;
  /** How far the bag hangs below the opening's start, and how wide it is. */
  readonly bagDepth: Figure<Mm>;
  readonly bagWidth: Figure<Mm>;
  /** How far the bag's straight edge goes on above and below the opening. */
  readonly headroom: Figure<Mm>;
  /** Side-seam allowance at the pocket, and that of the bag. */
  readonly seam: Figure<Mm>;
  readonly cloth: PartCloth;
  /** The opening in its seam: no row runs across it. */
  readonly takes: Takes;
}

/** Side or back seams left open from the hem up. */
export interface Slits extends Extra {
  readonly where: 'sides' | 'left side' | 'right side' | 'back';
  readonly sides: readonly SeamSide[];
  readonly count: Figure;
  /** Of the opening, from the finished hem up. */
  readonly height: Figure<Mm>;
  /** Finished depth of the strips that face its edges. */
  readonly facing: Figure<Mm>;
  /** The opening in its seam: a row that crosses it is cut there. */
  readonly takes: Takes;
}

/** The cloth that lining and, where it is asked for, pocket bags are cut from. */
export interface LiningCloth {
  readonly name: string;
  /** Bolt width, and what is left along each of its edges. */
  readonly width: Figure<Mm>;
  readonly selvage: Figure<Mm>;
  /** Of one metre or one yard, as written; null where it is not told. */
  readonly price: string | null;
}

/** A skirt of lighter cloth inside the skirt. */
export interface Lining extends Extra {
  /** Finished, from the panels' top line to its own hem. */
  readonly length: Figure<Mm>;
  readonly hem: Figure<Mm>;
  /** Round at its top and at its hem, seam to seam. */
  readonly top: Figure<Mm>;
  readonly round: Figure<Mm>;
  /** From the panels' top line down to where it is sewn on. */
  readonly starts: Figure<Mm>;
  readonly cloth: LiningCloth;
}

/** Length kept in hand for a child who grows. */
export interface GrowthTucks extends Extra {
  readonly how: 'tucks' | 'deep hem';
  /** 0 for a deep hem. */
  readonly count: Figure;
  /** Of one tuck, fold to stitching: it takes up twice as much. 0 for a deep hem. */
  readonly depth: Figure<Mm>;
  /** All that can be let down. */
  readonly letsDown: Figure<Mm>;
  /** From the panels' top line down to the stitching of the first tuck. */
  readonly below: Figure<Mm>;
  /** Flat panel between the lower line of a tuck and the upper line of the next. */
  readonly space: Figure<Mm>;
  /** From the panels' top line down the flat panel to below which no tuck is stitched or lies. 0 for a deep hem. */
  readonly reach: Figure<Mm>;
}

export interface Extras {
  readonly pockets: Pockets | null;
  readonly slits: Slits | null;
  readonly lining: Lining | null;
  readonly tucks: GrowthTucks | null;
  /** There where anything is cut from it. */
  readonly liningCloth: LiningCloth | null;
  /** Of what was asked for and can't be made, and of extras that meet one another. */
  readonly notices: readonly Notice[];
}

export type ExtraName = 'pockets' | 'slits' | 'lining' | 'tucks';

/** An extra, or why there is none. */
export interface Planned<E extends Extra> {
  readonly extra: E | null;
  readonly notices: readonly Notice[];
}
