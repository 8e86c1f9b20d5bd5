import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { Part } from '../panel.ts';
import type { Work } from '../works.ts';

/** What every extra adds to a drafted skirt; each has numbers of its own besides. */
export interface Extra {
  readonly parts: readonly Part[];
  readonly works: readonly Work[];
  readonly notices: readonly Notice[];
}

/** Pockets in the side seams. */
export interface Pockets extends Extra {
  /** One, or one on each side. */
  readonly count: Figure;
  /** Length of the opening in the seam: the hand flat, and ease. */
  readonly opening: Figure<Mm>;
  /** From the panels' top line down to where the opening begins. */
  readonly below: Figure<Mm>;
  /** How far the bag hangs below the opening's start, and how wide it is. */
  readonly bagDepth: Figure<Mm>;
  readonly bagWidth: Figure<Mm>;
  /** Side-seam allowance at the pocket. */
  readonly seam: Figure<Mm>;
}

/** Side or back seams left open from the hem up. */
export interface Slits extends Extra {
  readonly where: 'sides' | 'left side' | 'right side' | 'back';
  readonly count: Figure;
  /** Of the opening, from the finished hem up. */
  readonly height: Figure<Mm>;
  /** Depth of its turned edges. */
  readonly facing: Figure<Mm>;
}

/** A skirt of lighter cloth inside the skirt. */
export interface Lining extends Extra {
  /** Finished, from the panels' top line to its own hem. */
  readonly length: Figure<Mm>;
  readonly hem: Figure<Mm>;
  readonly round: Figure<Mm>;
}

/** Length kept in hand for a child who grows. */
export interface GrowthTucks extends Extra {
  readonly how: 'tucks' | 'deep hem';
  readonly count: Figure;
  /** Of one tuck, fold to stitching: it takes up twice as much. 0 for a deep hem. */
  readonly depth: Figure<Mm>;
  /** All that can be let down. */
  readonly letsDown: Figure<Mm>;
  /** From the panels' top line down to the stitching of the first tuck. */
  readonly below: Figure<Mm>;
}

export interface Extras {
  readonly pockets: Pockets | null;
  readonly slits: Slits | null;
  readonly lining: Lining | null;
  readonly tucks: GrowthTucks | null;
}
