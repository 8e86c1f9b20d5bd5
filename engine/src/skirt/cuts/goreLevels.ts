import type { Figure, Notice } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { hipNeed } from '../goesOn.ts';
import type { TopNeed } from '../top.ts';
import { floorOf, LAYERS, stepOf } from './common.ts';
import {
  areAlike,
  frontHemHalves,
  halvesOf,
  roundOfHalves,
  wider,
  type Gores,
  type Halves,
} from './goreWidths.ts';
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

/** Whether all the gores are alike; those of a fitted skirt, or of unlike widths, are drawn from their seams. */
export const allAlike = ({ top, hem }: GoreLevels): boolean => areAlike(top) && areAlike(hem);

/** Whether each is one piece of a ring from raw side to raw side. */
export const ringed = (levels: GoreLevels): boolean => !levels.fitted && allAlike(levels);

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
/** How far a side leans in from the hips for each unit up, and how much longer it may be for each unit of half the waist. */
const MOST_LEAN = 0.6;
const MOST_BOW = 0.4;

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
  const finest = isMetric(context) ? FINEST.metric : FINEST.inches;
  const level = need.opens ? hipLevelOf(context, need, length.value) : null;
  const fitted = need.opens ? fittedRound(gores, need.round, hipWanted(context), { level, length }) : null;
  const top = fitted
    ? halvesOf(gores, fitted, mm(Math.min(mark, finest)))
    : halvesOf(gores, pulledOn(context, wanted, need), mark);
  const hips = fitted ? halvesOf(gores, hipWanted(context), mark, top) : null;
  const above = hips ?? top;
  const most = mostOf(gores, { above, top, level, length, depth: need.allowance.value });
  const hem = hemOf(context, wanted, gores, above, most);
  const hip = level && hips ? { level, halves: wider(hips, between(top, hem.halves, level, length)) } : null;
  return { top, hip, hem: hem.halves, fitted, notices: hem.notices };
}

/**
 * The top that the waist asks for. Where the hips are so much wider that the sides could not lean in as far, it is wider, and
 * gathered or darted onto the waist.
 */
function fittedRound(
  { front, units }: Gores,
  round: Figure<Mm>,
  hips: Figure<Mm>,
  at: { readonly level: Figure<Mm> | null; readonly length: Figure<Mm> },
): Figure<Mm> {
  const span = at.level?.value ?? at.length.value;
  const narrowest = (round.value / units.value / 2) * Math.min(1, front.value);
  // Sides are of one length on all gores: the waist of the narrowest must be wide enough to bow up to that of the widest.
  const bowed = Math.sqrt((span + MOST_BOW * narrowest) ** 2 - span ** 2);
  const leans = Math.min(MOST_LEAN * span, bowed);
  const least = mm(hips.value - (2 * units.value * leans) / Math.max(1, front.value));
  return least > round.value ? figure.length(least, 'skirt.fittedTopWider', { round, hips }) : round;
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
  at: {
    readonly above: Halves;
    readonly top: Halves;
    readonly level: Figure<Mm> | null;
    readonly length: Figure<Mm>;
    readonly depth: Mm;
  },
): Most {
  const most = (name: keyof Halves): Mm => {
    const [top, above] = [at.top[name].value - seam.value, at.above[name].value - seam.value];
    // The apex of the curves stays above the raw top.
    const turn = Math.min(WIDEST_TURN, top / (at.depth + 2 * seam.value + CLEAR));
    return at.level
      ? mm(above + turn * (at.length.value - at.level.value))
      : mm(Math.max(above, top + turn * at.length.value));
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
