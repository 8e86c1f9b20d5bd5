import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { ClothWeight, DraftContext } from '../context.ts';

/**
 * Most cloth a casing holds for each unit of waist before it bunches, and least for it to gather at all.
 * Common practice, no source.
 */
const mostGathered: Readonly<Record<ClothWeight, number>> = { light: 3, medium: 2.5, heavy: 2 };
const LEAST_GATHERED = 1.15;

export const narrow = { least: mm(1), most: mm(150) };
export const elasticWidthLimits = { least: mm(3), most: mm(100) };

/** Options of any casing that elastic runs through all the way round. */
export const elasticOptions = (fields: Fields) => ({
  elasticWidth: fields.usual(elasticWidthLimits, { inches: '3/4 in', metric: '2 cm' }),
  /** Room for the elastic to move in its tunnel. */
  ease: fields.usual(narrow, { inches: '1/4 in', metric: '0.5 cm' }),
  /** Elastic for each unit of waist: 0.933 is 2 in off a 30 in waist. Common practice, no source. */
  elasticShare: fields.percent(50, 100).prefault(93.3),
  join: fields.usual(narrow, { inches: '1/2 in', metric: '1 cm' }),
  /** How far this elastic stretches, as a share of its own length. */
  mostStretch: z.number().min(1).max(3).default(1.6),
});

export type ElasticOptions = z.infer<z.ZodObject<ReturnType<typeof elasticOptions>>>;

/** Elastic to cut for the whole round, at a mark, never cut tighter than its share. */
export function elasticCut(waist: Figure<Mm>, chosen: ElasticOptions, mark: Mm): Figure<Mm> {
  const exact = mm(waist.value * chosen.elasticShare + chosen.join);
  return figure.length(
    roundTo(exact, mark, 'up'),
    'waist.elasticCut',
    {
      waist,
      share: figure.percent(chosen.elasticShare, 'waist.elasticShare'),
      join: figure.length(chosen.join, 'waist.elasticJoin'),
    },
    { exact },
  );
}

/** The elastic must stretch over the hips; a body as wide at the waist as at the hip needs no stretch to speak of. */
export function stretchNotices(context: DraftContext, chosen: ElasticOptions, cut: Figure<Mm>): Notice[] {
  const { hip } = context.body;
  const join = figure.length(chosen.join, 'waist.elasticJoin');
  const stretch = figure.ratio(hip.value / (cut.value - chosen.join), 'waist.stretch', { hip, cut, join });
  const most = chosen.mostStretch;
  if (stretch.value <= most) return [];
  // Length that would stretch just far enough.
  const exact = mm(hip.value / most + chosen.join);
  const enough = figure.length(
    roundTo(exact, context.mark, 'up'),
    'waist.elasticAsked',
    { hip, most: figure.ratio(most, 'waist.stretchLimit'), join },
    { exact },
  );
  return [caution('waist.elasticOverstretched', { cut, hip, stretch, enough })];
}

/** Cloth round the top for each unit of waist. */
export const gatherRatioOf = (opening: Figure<Mm>, waist: Figure<Mm>): Figure =>
  figure.ratio(opening.value / waist.value, 'skirt.gatherRatio', { opening, waist });

/** Whether a casing can hold so much cloth, and gathers at all. */
export function gatherNotices(ratio: Figure, weight: ClothWeight): Notice[] {
  const most = figure.ratio(mostGathered[weight], 'skirt.mostGathered');
  if (ratio.value > most.value) return [caution('skirt.bunched', { ratio, most, weight })];
  if (ratio.value < LEAST_GATHERED)
    return [
      caution('skirt.barelyGathered', { ratio, least: figure.ratio(LEAST_GATHERED, 'skirt.leastGathered') }),
    ];
  return [];
}
