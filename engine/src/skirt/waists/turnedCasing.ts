import { z } from 'zod';
import { usualKind, type Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { ClothWeight, DraftContext } from '../context.ts';
import type { Waist } from './waist.ts';

/**
 * Most cloth a casing holds for each unit of waist before it bunches, and least for it to gather at all.
 * Common practice, no source.
 */
const mostGathered: Readonly<Record<ClothWeight, number>> = { light: 3, medium: 2.5, heavy: 2 };
const LEAST_GATHERED = 1.15;

const narrow = { least: mm(1), most: mm(150) };

const options = (fields: Fields) =>
  z.strictObject({
    kind: usualKind('turned casing'),
    elasticWidth: fields.usual({ least: mm(3), most: mm(100) }, { inches: '3/4 in', metric: '2 cm' }),
    /** Room for the elastic to move in its tunnel. */
    ease: fields.usual(narrow, { inches: '1/4 in', metric: '0.5 cm' }),
    turnUnder: fields.usual(narrow, { inches: '1/4 in', metric: '0.5 cm' }),
    /** Elastic for each unit of waist: 0.933 is 2 in off a 30 in waist. Common practice, no source. */
    elasticShare: fields.percent(50, 100).prefault(93.3),
    join: fields.usual(narrow, { inches: '1/2 in', metric: '1 cm' }),
    /** How far this elastic stretches, as a share of its own length. */
    mostStretch: z.number().min(1).max(3).default(1.6),
  });

export type TurnedCasingOptions = z.infer<ReturnType<typeof options>>;

/**
 * The top edge turned to the inside along a fold, with elastic run through the tunnel. Depth = elastic + ease
 * + turn-under: ¾ in elastic takes 1¼ in (published tutorials' figure; references to fold-down casings agree).
 */
export const turnedCasing: Waist<TurnedCasingOptions> = {
  kind: 'turned casing',
  options,
  topAllowance: ({ elasticWidth, ease, turnUnder }) =>
    figure.length(mm(elasticWidth + ease + turnUnder), 'waist.casing', {
      elastic: figure.length(elasticWidth, 'waist.elastic'),
      ease: figure.length(ease, 'waist.elasticEase'),
      turnUnder: figure.length(turnUnder, 'waist.turnUnder'),
    }),
  plan(context, chosen, opening) {
    const waist = context.body.waist;
    const cut = elasticCut(waist, chosen, context.mark);
    const gatherRatio = figure.ratio(opening.value / waist.value, 'skirt.gatherRatio', { opening, waist });
    return {
      kind: turnedCasing.kind,
      topAllowance: turnedCasing.topAllowance(chosen),
      depth: mm(chosen.elasticWidth + chosen.ease),
      elastic: { width: figure.length(chosen.elasticWidth, 'waist.elastic'), cut },
      gatherRatio,
      notices: [...stretchNotices(context, chosen, cut), ...gatherNotices(gatherRatio, context.clothWeight)],
    };
  },
};

function elasticCut(waist: Figure<Mm>, chosen: TurnedCasingOptions, mark: Mm): Figure<Mm> {
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
function stretchNotices(context: DraftContext, chosen: TurnedCasingOptions, cut: Figure<Mm>): Notice[] {
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

function gatherNotices(ratio: Figure, weight: ClothWeight): Notice[] {
  const most = figure.ratio(mostGathered[weight], 'skirt.mostGathered');
  if (ratio.value > most.value) return [caution('skirt.bunched', { ratio, most, weight })];
  if (ratio.value < LEAST_GATHERED)
    return [
      caution('skirt.barelyGathered', { ratio, least: figure.ratio(LEAST_GATHERED, 'skirt.leastGathered') }),
    ];
  return [];
}
