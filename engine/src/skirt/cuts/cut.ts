import type { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Ordinate, Panels } from '../panel.ts';

/** The marks a maker chalks; quarters are at the double fold, or where a gathered edge is quartered. */
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

/** How the hem hangs. */
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

/** What a cut hands on: panels and what is known of them. */
export interface Draft {
  readonly kind: string;
  /** How its panels are marked: along their centre fold, or as straight widths cut or torn across. */
  readonly marking: 'at the fold' | 'straight widths';
  readonly panels: Panels;
  readonly marks: Marks;
  readonly hang: Hang;
  /** Seams that join panels into a round. */
  readonly sideSeams: number;
  readonly sideSeamAllowance: Figure<Mm>;
  readonly hemAllowance: Figure<Mm>;
  readonly hemTurnUnder: Mm;
  readonly margin: Figure<Mm>;
  readonly finishedLength: Figure<Mm>;
  /** Round at the top, seam to seam. */
  readonly opening: Figure<Mm>;
  /** Round at the finished hem, seam to seam. */
  readonly hemRound: Figure<Mm>;
  readonly notices: readonly Notice[];
}

/** A cut is one file that answers this; it is entered in `cuts/index.ts` and nowhere else. */
export interface Cut<Options extends { readonly kind: string }> {
  readonly kind: Options['kind'];
  /** Schema of its options with every default. */
  readonly options: (fields: Fields) => z.ZodObject & z.ZodType<Options>;
  /** `topAllowance` is the cloth that the waist needs above the top fold. */
  readonly draft: (context: DraftContext, options: Options, topAllowance: Figure<Mm>) => Draft;
}
