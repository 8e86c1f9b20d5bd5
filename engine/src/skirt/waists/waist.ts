import type { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { OptionHandle } from '../handle.ts';
import type { Part } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import type { Work } from '../works.ts';

/** How the waist is made: turned from the panels, a strip sewn on as a casing, or a band sewn on flat or folded. */
export type WaistBuild = 'turned' | 'strip' | 'band' | 'stretch band';

export interface WaistElastic {
  readonly width: Figure<Mm>;
  readonly cut: Figure<Mm>;
  /** Whether it runs all the way round or along the back only. */
  readonly where: 'round' | 'back';
}

export interface Cord {
  readonly width: Figure<Mm>;
  readonly cut: Figure<Mm>;
  /** What hangs free at each end when the skirt is spread flat. */
  readonly freeEnd: Figure<Mm>;
}

/** Where the waist opens. */
export interface Closure {
  readonly kind: 'zip' | 'placket';
  /** How far the opening goes down from the top of the waist. */
  readonly depth: Figure<Mm>;
  /** How far the band's ends lie over one another. */
  readonly overlap: Figure<Mm>;
  readonly buttons: number;
}

/** What takes up the difference between the panels' top and a waist that does not stretch. */
export interface TakenUp {
  readonly by: 'gathers' | 'darts' | 'nothing';
  readonly difference: Figure<Mm>;
  /** Darts only: how many, and the width and length of each. */
  readonly darts: number;
  readonly dartWidth: Figure<Mm> | null;
  readonly dartLength: Figure<Mm> | null;
}

/** What holds the skirt up, once it is known what it holds. */
export interface WaistPlan {
  readonly kind: string;
  readonly build: WaistBuild;
  /** Cloth of the panels above their top line. */
  readonly topAllowance: Figure<Mm>;
  /** How far the waist's own piece stands above the panels' top line. */
  readonly above: Figure<Mm>;
  /** Part of the panels below their top line that the waist's own stitching takes up. */
  readonly depth: Mm;
  readonly elastic: WaistElastic | null;
  readonly cord: Cord | null;
  readonly closure: Closure | null;
  readonly takenUp: TakenUp | null;
  /** Cloth round the top for each unit of waist. */
  readonly gatherRatio: Figure;
  readonly parts: readonly Part[];
  readonly works: readonly Work[];
  readonly notices: readonly Notice[];
}

/** A waist is one file that answers this; it is entered in `waists/index.ts` and nowhere else. */
export interface Waist<Options extends { readonly kind: string }> {
  readonly kind: Options['kind'];
  /** Schema of its options with every default. */
  readonly options: (fields: Fields) => z.ZodObject & z.ZodType<Options>;
  /** What it asks of the panels below it. */
  readonly top: (context: DraftContext, options: Options) => TopNeed;
  readonly plan: (context: DraftContext, options: Options, draft: Draft) => WaistPlan;
  /** What of it can be taken hold of. */
  readonly handles: (
    context: DraftContext,
    options: Options,
    draft: Draft,
    waist: WaistPlan,
  ) => readonly OptionHandle[];
}
