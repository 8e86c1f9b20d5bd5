import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, stepsIn, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { ClothWeight, DraftContext } from '../context.ts';
import type { TopNeed } from '../top.ts';
import { LAYERS } from './common.ts';

/** Cloth of a tier for each unit of the one above: usual, and most that can be asked for. Common practice, no source. */
const USUAL_RATIO = 1.5;
export const MOST_RATIO = 3;
/** Past this a seam bunches: as in a casing, thick cloth takes less. Common practice, no source. */
const mostInASeam: Readonly<Record<ClothWeight, number>> = { light: 3, medium: 2.5, heavy: 2 };
/** More strips than this in one round is a slip of the pen. */
const MOST_STRIPS = 20;
/** A strip is this much wider than its two seams, however narrow the cloth. */
const LEAST_STRIP = 10;

/** One round of strips that are all alike. */
export interface TierRound {
  readonly strips: Figure;
  /** Raw edge to raw edge. */
  readonly strip: Figure<Mm>;
  /** Seam to seam, laid flat. */
  readonly round: Figure<Mm>;
}

interface Chosen {
  readonly tiers: number;
  readonly ratios?: readonly number[] | undefined;
  readonly fullness: number;
  readonly hemFloor: Mm;
}

/** The rounds of all tiers, from the top down, each reckoned from the one above it as that is chalked. */
export function tierRounds(
  context: DraftContext,
  chosen: Chosen,
  need: TopNeed,
  seam: Figure<Mm>,
): { tiers: readonly TierRound[]; notices: Notice[] } {
  const notices: Notice[] = [];
  const steps = chosen.tiers - 1;
  const given = chosen.ratios?.length ?? steps;
  if (given !== steps) notices.push(caution('skirt.tierList', { list: 'ratios', given, needed: steps }));
  const make = (round: Figure<Mm>, number: number): TierRound => {
    const made = stripsFor(context, round, seam);
    if (made.wanted)
      notices.push(
        caution('skirt.tooManyStrips', { tier: number, strips: made.tier.strips, wanted: made.wanted }),
      );
    return made.tier;
  };
  const tiers = [make(topRound(context, chosen, need), 1)];
  const usual = usualRatio(context, chosen, tiers[0]?.round ?? need.round);
  const most = figure.ratio(mostInASeam[context.clothWeight], 'skirt.mostGathered');
  for (let i = 0; i < steps; i++) {
    const asked = chosen.ratios?.[i];
    const ratio = asked === undefined ? usual : figure.ratio(asked, 'skirt.tierRatioAsked');
    if (ratio.value > most.value)
      notices.push(caution('skirt.tierBunched', { tier: i + 2, ratio, most, weight: context.clothWeight }));
    const above = tiers[i]?.round ?? need.round;
    const round = figure.length(mm(above.value * ratio.value), 'skirt.tierNextRound', { above, ratio });
    tiers.push(make(round, i + 2));
  }
  return { tiers, notices };
}

function topRound({ body }: DraftContext, { fullness }: Chosen, { round: least }: TopNeed): Figure<Mm> {
  const full = figure.length(mm(body.widest.value * fullness), 'skirt.fullRound', {
    girth: body.widest,
    fullness: figure.ratio(fullness, 'skirt.fullness'),
  });
  return figure.length(mm(Math.max(full.value, least.value)), 'skirt.tierTopRound', { full, least });
}

/** 1½; or, where the maker leaves all ratios to us, the same for each tier that gives the lowest one room to walk. */
function usualRatio({ body, stride }: DraftContext, chosen: Chosen, top: Figure<Mm>): Figure {
  const known = stride.checked || !body.adult;
  const least = Math.max(known ? stride.needed.value : 0, body.adult ? LAYERS.value * chosen.hemFloor : 0);
  const even = (least / top.value) ** (1 / (chosen.tiers - 1));
  if (chosen.ratios || even <= USUAL_RATIO) return figure.ratio(USUAL_RATIO, 'skirt.tierRatio');
  return figure.ratio(Math.min(MOST_RATIO, even), 'skirt.tierRatioWidened');
}

/** As many strips, all alike, as the round takes of this cloth; each cut to a mark, or whole where the next mark lies beside it. */
function stripsFor(
  { clothWidth: cloth, mark }: DraftContext,
  round: Figure<Mm>,
  seam: Figure<Mm>,
): { tier: TierRound; wanted: Figure | null } {
  const usable = Math.max(LEAST_STRIP, cloth.value - 2 * seam.value);
  const wanted = figure.count(
    Math.max(1, stepsIn(round.value, usable, 'up')),
    'skirt.tierStrips',
    { round, cloth, seam },
    { exact: round.value / usable },
  );
  const isTooMany = wanted.value > MOST_STRIPS;
  const strips = isTooMany ? figure.count(MOST_STRIPS, 'skirt.tierStripsMost') : wanted;
  const edges = figure.count(2 * strips.value, 'skirt.sideSeams');
  const whole = mm(Math.max(cloth.value, 2 * seam.value + LEAST_STRIP));
  const enough = mm((round.value + edges.value * seam.value) / strips.value);
  const chalked = roundTo(enough, mark, 'up');
  const strip =
    chalked > whole
      ? figure.length(whole, 'skirt.tierStripWhole')
      : figure.length(chalked, 'skirt.tierStrip', { round, edges, seam, strips }, { exact: enough });
  const flat = figure.length(mm(strips.value * strip.value - edges.value * seam.value), 'skirt.tierRound', {
    strips,
    strip,
    edges,
    seam,
  });
  return { tier: { strips, strip, round: flat }, wanted: isTooMany ? wanted : null };
}
