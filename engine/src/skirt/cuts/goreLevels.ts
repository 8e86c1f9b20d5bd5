import type { Figure, Notice } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { hipNeed } from '../goesOn.ts';
import type { TopNeed } from '../top.ts';
import { floorOf, LAYERS, stepOf } from './common.ts';
import { frontHemHalves, halvesOf, roundOfHalves, wider, type Gores, type Halves } from './goreWidths.ts';
import { hemRoundFor } from './hemRound.ts';

export interface GoresWanted {
  readonly fullness: number;
  readonly hemFloor: Mm;
  readonly leastFlare: Mm;
  readonly hemRound?: Mm | undefined;
  readonly frontHem?: Mm | undefined;
}

/** Half widths of the gores from the top down. */
export interface GoreLevels {
  readonly top: Halves;
  /** Where the skirt is fitted to the waist above its hip line. */
  readonly hip: { readonly level: Figure<Mm>; readonly halves: Halves } | null;
  readonly hem: Halves;
  /** Round that the top is sewn to, as the waist asks for it; null where it is as it was chalked. */
  readonly fitted: Figure<Mm> | null;
  readonly notices: readonly Notice[];
}

/** With what goes over the hips, the 2 in or 5 cm of ease that published blocks have there. */
const HIP_MORE = { inches: inches(1), metric: mm(25) } as const;
/** A fitted top is chalked to the finest line of a ruler: what is too much is too much at every edge of every gore. */
const FINEST = { inches: inches(1 / 16), metric: mm(1) } as const;
/** A hip line further down the panel than this is left to the hem. */
const LOWEST_HIP = 0.8;
const HIGHEST_HIP = mm(20);
/** Each gore is a quarter of a circle at most, its seams as far from upright as from level. */
const WIDEST_TURN = Math.PI / 4;
/** Least from the apex to the raw top. */
const CLEAR = 20;

/** How far below the panels' top the hips are widest; null where the skirt ends there. */
export function hipLevelOf({ body }: DraftContext, { above }: TopNeed, length: Mm): Figure<Mm> | null {
  const { hipDepth } = body;
  const value = mm(Math.max(HIGHEST_HIP, hipDepth.value - above.value));
  return value > LOWEST_HIP * length ? null : figure.length(value, 'skirt.hipLevel', { hipDepth, above });
}

/** What goes over the hips, and ease to move in. */
export function hipWanted(context: DraftContext): Figure<Mm> {
  const needed = hipNeed(context.body);
  const more = figure.length(isMetric(context) ? HIP_MORE.metric : HIP_MORE.inches, 'skirt.hipMore');
  return figure.length(mm(needed.value + more.value), 'skirt.hipWanted', { needed, more });
}

/** Inch marks are no whole number of millimetres. */
const isMetric = ({ mark }: DraftContext): boolean => Number.isInteger(mark);

export function goreLevels(
  context: DraftContext,
  wanted: GoresWanted,
  need: TopNeed,
  gores: Gores,
  length: Figure<Mm>,
): GoreLevels {
  const { mark } = context;
  const fitted = need.opens ? need.round : null;
  const finest = isMetric(context) ? FINEST.metric : FINEST.inches;
  const top = fitted
    ? halvesOf(gores, fitted, mm(Math.min(mark, finest)))
    : halvesOf(gores, pulledOn(context, wanted, need), mark);
  const hips = fitted ? halvesOf(gores, hipWanted(context), mark, top) : null;
  const level = fitted ? hipLevelOf(context, need, length.value) : null;
  const above = hips ?? top;
  const most = mostOf(gores, { above, top, depth: need.allowance.value }, length.value - (level?.value ?? 0));
  const hem = hemOf(context, wanted, gores, above, most);
  const hip =
    level && hips ? { level, halves: wider(hips, between(top, hem.halves, level, length)) } : null;
  return { top, hip, hem: hem.halves, fitted, notices: hem.notices };
}

/** A top that passes over the hips: as full as asked, and never too tight to go on. */
function pulledOn({ body }: DraftContext, { fullness }: GoresWanted, { round }: TopNeed): Figure<Mm> {
  const full = figure.length(mm(body.widest.value * fullness), 'skirt.fullRound', {
    girth: body.widest,
    fullness: figure.ratio(fullness, 'skirt.fullness'),
  });
  return figure.length(mm(Math.max(full.value, round.value)), 'skirt.goresTop', { full, round });
}

interface Most {
  readonly front: Mm;
  readonly other: Mm;
  readonly round: Figure<Mm>;
}

/** Finished half widths to which the gores can flare, and the round of all that keeps each within its own. */
function mostOf(
  { front, units, seam }: Gores,
  { above, top, depth }: { readonly above: Halves; readonly top: Halves; readonly depth: Mm },
  below: number,
): Most {
  const most = (name: keyof Halves): Mm => {
    // The apex of the curves stays above the raw top.
    const turn = Math.min(
      WIDEST_TURN,
      (top[name].value - seam.value) / (depth + 2 * seam.value + CLEAR),
    );
    return mm(above[name].value - seam.value + turn * below);
  };
  const widest = { front: most('front'), other: most('other') };
  const round = mm(2 * units.value * Math.min(widest.front / front.value, widest.other));
  return { ...widest, round: figure.length(round, 'skirt.hemRoundMost') };
}

function hemOf(
  context: DraftContext,
  wanted: GoresWanted,
  gores: Gores,
  above: Halves,
  most: Most,
): { readonly halves: Halves; readonly notices: readonly Notice[] } {
  const { mark } = context;
  const round = roundOfHalves(gores, above);
  const quarter = floorOf(context, wanted.hemFloor);
  const found = hemRoundFor({
    floor: figure.length(mm(4 * quarter.value), 'skirt.roundFloor', { quarter, layers: LAYERS }),
    flare: figure.length(mm(round.value + wanted.leastFlare), 'skirt.roundAndFlare', {
      round,
      flare: figure.length(wanted.leastFlare, 'skirt.leastFlare'),
    }),
    step: stepOf(context),
    above: round,
    most: { ...most.round, value: roundTo(most.round.value, mark, 'down') },
    asked: wanted.hemRound,
  });
  if (wanted.frontHem === undefined)
    return { halves: halvesOf(gores, found.round, mark, above), notices: found.notices };
  const own = frontHemHalves(gores, { asked: wanted.frontHem, round: found.round, mark, above, most });
  return { halves: own.halves, notices: [...found.notices, ...own.notices] };
}

/** Half widths on straight sides from top to hem. */
function between(top: Halves, hem: Halves, level: Figure<Mm>, length: Figure<Mm>): Halves {
  const at = (name: keyof Halves): Figure<Mm> => {
    const [from, to] = [top[name], hem[name]];
    const value = mm(from.value + ((to.value - from.value) * level.value) / length.value);
    return figure.length(value, 'skirt.goreOnStraight', { top: from, hem: to, level, length });
  };
  return { front: at('front'), other: at('other') };
}
