import type { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import type { Ordinate, Panels, Part, Rounds } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import type { Work } from '../works.ts';

/**
 * The marks of a panel that is chalked at the fold: quarters are at the double fold, or where a gathered edge is
 * quartered. Of panels that are marked piece by piece they are a quarter of the whole round.
 */
export interface Marks {
  readonly waistQuarter: Figure<Mm>;
  readonly hemQuarter: Figure<Mm>;
  readonly cutLength: Figure<Mm>;
  /** Bottom of the cloth below its top edge: the cut length, and on a curve what its sides rise. */
  readonly bottom: Figure<Mm>;
  /** Quarter width at the raw top edge, where the casing is mirrored over its fold. */
  readonly casingEnd: Figure<Mm>;
  /** Quarter width at the raw hem edge after trimming, mirrored over the hem fold. */
  readonly hemEnd: Figure<Mm>;
}

/** How the hem hangs. Of a skirt with unlike panels, what is said of a curve is said of its first panel. */
export interface Hang {
  readonly shape: 'straight' | 'curved';
  /** How much longer the side is than the centre where the hem is straight. */
  readonly sideExcess: Figure<Mm>;
  /** Angle at which the hems, and the rows along them, meet at a side seam. */
  readonly sideAngle: Figure;
  /** By how much the raw top edge rises from the centre to the sides: cloth that a curve takes beyond the cut length. */
  readonly extraDepth: Figure<Mm>;
  readonly waistOrdinates: readonly Ordinate[];
  readonly hemOrdinates: readonly Ordinate[];
  /** Whether an edge runs so far off the grain that the skirt must hang before its hem is trued. */
  readonly mustHang: boolean;
}

/**
 * How a maker puts the panels on the cloth: along their centre fold; as straight lengths of the cloth's width, cut or
 * torn across; each piece by its own measures on cloth folded once or not at all; or swung about a corner.
 */
export type Marking = 'at the fold' | 'straight widths' | 'by piece' | 'swung';

/** A skirt that does not close into a round: it goes round the body and over itself. */
export interface Overlap {
  /** How far its ends lie over one another at the waist. */
  readonly width: Figure<Mm>;
  /** Depth of the turned edges that show. */
  readonly facing: Figure<Mm>;
  readonly closes: 'ties' | 'buttons';
}

/** What a cut hands on: panels and what is known of them. */
export interface Draft {
  readonly kind: string;
  readonly marking: Marking;
  /** From the top down. */
  readonly rounds: Rounds;
  /** The panels of all rounds. */
  readonly panels: Panels;
  readonly marks: Marks;
  readonly hang: Hang;
  /** Seams that close the lowest round. */
  readonly sideSeams: number;
  readonly sideSeamAllowance: Figure<Mm>;
  readonly hemAllowance: Figure<Mm>;
  readonly hemTurnUnder: Mm;
  readonly margin: Figure<Mm>;
  /** From the top of the waist to the hem. */
  readonly finishedLength: Figure<Mm>;
  /** Of the panels, all rounds together: less than the finished length by what the waist stands above them. */
  readonly panelLength: Figure<Mm>;
  /** Round at the top, seam to seam. */
  readonly opening: Figure<Mm>;
  /** Round at the finished hem, seam to seam. */
  readonly hemRound: Figure<Mm>;
  readonly overlap: Overlap | null;
  /** Seams and edges of the panels; the hem round is sewn besides. */
  readonly works: readonly Work[];
  /** Pieces of the cut's own that are not panels: ties, facings. */
  readonly parts: readonly Part[];
  readonly notices: readonly Notice[];
}

/** A cut is one file that answers this; it is entered in `cuts/index.ts` and nowhere else. */
export interface Cut<Options extends { readonly kind: string }> {
  readonly kind: Options['kind'];
  /** Schema of its options with every default. */
  readonly options: (fields: Fields) => z.ZodObject & z.ZodType<Options>;
  /**
   * Kind of the waist where none is named, by the cut's options as they are written; a turned casing where this is left
   * out. What is not a waist's kind is refused as if it had been written.
   */
  readonly usualWaist?: (written: Readonly<Record<string, unknown>>) => string;
  /** `top` is what the waist asks of the panels. */
  readonly draft: (context: DraftContext, options: Options, top: TopNeed) => Draft;
  /** What of it can be taken hold of, besides its length and its hem, once it is drafted; nothing where this is left out. */
  readonly handles?: (
    context: DraftContext,
    options: Options,
    top: TopNeed,
    draft: Draft,
  ) => readonly OptionHandle[];
}
