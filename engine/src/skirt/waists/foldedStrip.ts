import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { elasticOptions } from './elastic.ts';
import { shareHeld } from './held.ts';

/** Seam allowance of a strip or band: ⅝ in. Common practice, no source. */
export const seamOption = (fields: Fields) =>
  fields.usual({ least: mm(3), most: mm(60) }, { inches: '5/8 in', metric: '1.5 cm' });

/** Options of a strip of cloth folded over elastic. */
export const foldedStripOptions = (fields: Fields) => ({
  ...elasticOptions(fields),
  /** Of the strip, shared by its two layers: the tunnel has half of it. */
  ease: fields.usual({ least: mm(2), most: mm(150) }, { inches: '1/2 in', metric: '1 cm' }),
  seam: seamOption(fields),
});

export type FoldedStripOptions = z.infer<z.ZodObject<ReturnType<typeof foldedStripOptions>>>;

export interface FoldedStrip {
  readonly seam: Figure<Mm>;
  /** As cut. */
  readonly width: Figure<Mm>;
  /** Finished, from the seam to the fold. */
  readonly height: Figure<Mm>;
}

/** How high the folded strip is to be. */
export const foldedHeight = ({ elasticWidth, ease }: FoldedStripOptions): Mm => mm(elasticWidth + ease / 2);

/** The same strip, narrower where the skirt is too short for it. */
export function heldStrip<Options extends FoldedStripOptions>(
  context: DraftContext,
  chosen: Options,
): Options {
  const share = shareHeld(context, foldedHeight(chosen));
  return share === 1
    ? chosen
    : { ...chosen, elasticWidth: mm(chosen.elasticWidth * share), ease: mm(chosen.ease * share) };
}

/**
 * A strip as wide as 2 × elastic + ease + 2 × seam allowance: 2 in of elastic, ½ in of ease and ⅝ in seams take 5¾ in
 * (published sewing-guideline sheet).
 */
export function foldedStrip({ elasticWidth, ease, seam }: FoldedStripOptions, mark: Mm): FoldedStrip {
  const allowance = figure.length(seam, 'waist.seam');
  const exact = mm(2 * elasticWidth + ease + 2 * seam);
  const width = figure.length(
    roundTo(exact, mark, 'up'),
    'waist.stripWidth',
    {
      elastic: figure.length(elasticWidth, 'waist.elastic'),
      ease: figure.length(ease, 'waist.stripEase'),
      seam: allowance,
    },
    { exact },
  );
  return {
    seam: allowance,
    width,
    height: figure.length(mm((width.value - 2 * seam) / 2), 'waist.stripHeight', { width, seam: allowance }),
  };
}
