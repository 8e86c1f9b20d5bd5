import type { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';

/** What holds the skirt up, once it is known what it holds. */
export interface WaistPlan {
  readonly kind: string;
  /** Cloth above the top fold. */
  readonly topAllowance: Figure<Mm>;
  /** Part of the skirt below the top fold that the waist's own stitching takes up. */
  readonly depth: Mm;
  readonly elastic: { readonly width: Figure<Mm>; readonly cut: Figure<Mm> } | null;
  /** Cloth round the top for each unit of waist. */
  readonly gatherRatio: Figure;
  readonly notices: readonly Notice[];
}

/** A waist is one file that answers this; it is entered in `waists/index.ts` and nowhere else. */
export interface Waist<Options extends { readonly kind: string }> {
  readonly kind: Options['kind'];
  /** Schema of its options with every default. */
  readonly options: (fields: Fields) => z.ZodObject & z.ZodType<Options>;
  /** Cloth that it needs above the top fold. */
  readonly topAllowance: (options: Options) => Figure<Mm>;
  /** `opening` is the seam-to-seam round at the top. */
  readonly plan: (context: DraftContext, options: Options, opening: Figure<Mm>) => WaistPlan;
}
