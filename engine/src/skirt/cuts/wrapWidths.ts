import type { Figure, Notice } from '../../figure/index.ts';
import { inches, longest, mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { TopNeed } from '../top.ts';
import { floorOf, LAYERS, stepOf } from './common.ts';
import { hipLevelOf, hipWanted } from './goreLevels.ts';
import { hemRoundFor } from './hemRound.ts';

export interface WrapWanted {
  readonly overlap?: Mm | undefined;
  readonly flare: number;
  readonly leastFlare: Mm;
  readonly hemFloor: Mm;
  readonly hemRound?: Mm | undefined;
}

/** Cloth beyond the lines of the panels' sides: seams, and the free edges, turned under and in. */
export interface WrapEdges {
  readonly seam: Figure<Mm>;
  readonly facing: Figure<Mm>;
}

/** Half widths of the panels at one level, raw side to raw side, at a mark. */
export interface WrapHalves {
  readonly back: Figure<Mm>;
  readonly front: Figure<Mm>;
}

export interface WrapWidths {
  readonly top: WrapHalves;
  readonly hem: WrapHalves;
  /** Round that the top closes to, and how far its ends lie over one another then. */
  readonly closed: Figure<Mm>;
  readonly overlap: Figure<Mm>;
  readonly notices: readonly Notice[];
}

/** Share of the waist that a wrap usually laps, and the least that holds together on an adult. Common practice, no source. */
const USUAL_SHARE = 0.25;
const ADULT_OVERLAP = { inches: inches(8), metric: mm(200) } as const;
/** Spread flat the skirt is one full circle at most. */
const WIDEST_TURN = 2 * Math.PI;
/** Least from the apex of the curves to the raw top. */
const CLEAR = 20;

export function wrapWidths(
  context: DraftContext,
  wanted: WrapWanted,
  need: TopNeed,
  { length, ...edges }: WrapEdges & { readonly length: Figure<Mm> },
): WrapWidths {
  const closed = need.round;
  const asked = overlapOf(context, wanted, closed);
  const hips = figure.length(mm(hipWanted(context).value + asked.overlap.value / 2), 'skirt.wrapHips', {
    hips: hipWanted(context),
    overlap: asked.overlap,
  });
  const level = hipLevelOf(context, need, length.value) ?? length;
  const lapped = figure.length(mm(closed.value + asked.overlap.value), 'skirt.wrapTop', {
    round: closed,
    overlap: asked.overlap,
  });
  // The apex of the curves stays above the raw top.
  const beyond = need.allowance.value + 2 * edges.facing.value + CLEAR;
  const turn = (top: number): number => Math.min(WIDEST_TURN, top / beyond);
  const least = mm(hips.value - turn(lapped.value) * level.value);
  const wantedTop =
    least > lapped.value ? figure.length(least, 'skirt.wrapTopWider', { hips, lapped }) : lapped;
  const top = halvesOf(context, { flat: wantedTop, closed }, edges);
  const flat = roundOfWrap(top, edges);
  const overlap = figure.length(mm(flat.value - closed.value), 'skirt.overlap', { flat, round: closed });
  const over = overHips({ flat, hips, level, length });
  const above = figure.length(mm(Math.max(flat.value, over.value)), 'skirt.wrapAbove', { flat, over });
  const hem = hemRoundFor({
    floor: floorWith(context, wanted, flat, closed),
    flare: flareOf(wanted, flat, over),
    step: stepOf(context),
    above,
    most: figure.length(
      roundTo(mm(Math.max(above.value, flat.value + turn(flat.value) * length.value)), context.mark, 'down'),
      'skirt.hemRoundMost',
    ),
    asked: wanted.hemRound,
  });
  const atHem = figure.length(mm((hem.round.value * closed.value) / flat.value), 'skirt.wrapClosedAtHem', {
    hem: hem.round,
    round: closed,
    flat,
  });
  const drawn = halvesOf(context, { flat: hem.round, closed: atHem }, edges);
  const kept = (one: Figure<Mm>, other: Figure<Mm>): Figure<Mm> => (one.value < other.value ? other : one);
  return {
    top,
    hem: { back: kept(drawn.back, top.back), front: kept(drawn.front, top.front) },
    closed,
    overlap,
    notices: [...asked.notices, ...hem.notices],
  };
}

function overlapOf(
  { body, mark }: DraftContext,
  wanted: WrapWanted,
  closed: Figure<Mm>,
): { readonly overlap: Figure<Mm>; readonly notices: readonly Notice[] } {
  if (wanted.overlap !== undefined) {
    const asked = figure.length(wanted.overlap, 'skirt.overlapAsked');
    if (asked.value <= closed.value) return { overlap: asked, notices: [] };
    const held = figure.length(closed.value, 'skirt.overlapMost', { round: closed });
    return { overlap: held, notices: [caution('skirt.overlapHeld', { asked, held })] };
  }
  const share = figure.length(mm(USUAL_SHARE * closed.value), 'skirt.overlapOfWaist', {
    round: closed,
    share: figure.ratio(USUAL_SHARE, 'skirt.overlapShare'),
  });
  // Inch marks are no whole number of millimetres.
  const enough = Number.isInteger(mark) ? ADULT_OVERLAP.metric : ADULT_OVERLAP.inches;
  if (!body.adult || share.value >= enough) return { overlap: share, notices: [] };
  return { overlap: figure.length(enough, 'skirt.overlapLeast'), notices: [] };
}

/** The makers' least round is of the skirt closed; the overlap at the hem comes to it. */
function floorWith(
  context: DraftContext,
  { hemFloor }: WrapWanted,
  flat: Figure<Mm>,
  closed: Figure<Mm>,
): Figure<Mm> {
  const quarter = floorOf(context, hemFloor);
  const floor = figure.length(mm(4 * quarter.value), 'skirt.roundFloor', { quarter, layers: LAYERS });
  return figure.length(mm((floor.value * flat.value) / closed.value), 'skirt.wrapFloor', {
    floor,
    flat,
    round: closed,
  });
}

/** Hem that covers the hips and half of the overlap there, on straight sides from the top. */
function overHips(at: {
  readonly flat: Figure<Mm>;
  readonly hips: Figure<Mm>;
  readonly level: Figure<Mm>;
  readonly length: Figure<Mm>;
}): Figure<Mm> {
  const { flat, hips, level, length } = at;
  const value = flat.value + ((hips.value - flat.value) * length.value) / level.value;
  return figure.length(mm(value), 'skirt.wrapOverHips', { flat, hips, length, level });
}

/** The largest of what is asked of the hem for each unit of the top, of the least flare, and of what covers the hips. */
function flareOf(wanted: WrapWanted, flat: Figure<Mm>, over: Figure<Mm>): Figure<Mm> {
  const times = figure.length(mm(flat.value * wanted.flare), 'skirt.wrapFlareTimes', {
    flat,
    times: figure.ratio(wanted.flare, 'skirt.wrapFlare'),
  });
  const plus = figure.length(mm(flat.value + wanted.leastFlare), 'skirt.roundAndFlare', {
    round: flat,
    flare: figure.length(wanted.leastFlare, 'skirt.leastFlare'),
  });
  const value = longest(times.value, plus.value, over.value);
  return figure.length(value, 'skirt.wrapFlared', { times, plus, over });
}

/** The back is half of what closes; each front a quarter, and half of the overlap. */
function halvesOf(
  { mark }: DraftContext,
  { flat, closed }: { readonly flat: Figure<Mm>; readonly closed: Figure<Mm> },
  { seam, facing }: WrapEdges,
): WrapHalves {
  const back = mm(closed.value / 4 + seam.value);
  // (flat − closed) ÷ 2 and closed ÷ 4 is flat ÷ 2 less closed ÷ 4.
  const front = mm((flat.value / 2 - closed.value / 4 + seam.value + facing.value) / 2);
  return {
    back: figure.length(
      roundTo(back, mark, 'up'),
      'skirt.wrapBackHalf',
      { round: closed, seam },
      { exact: back },
    ),
    front: figure.length(
      roundTo(front, mark, 'up'),
      'skirt.wrapFrontHalf',
      { flat, round: closed, seam, facing },
      { exact: front },
    ),
  };
}

/** Raw edges of a quarter of all the cloth round. */
export const wrapQuarter = ({ back, front }: WrapHalves): Figure<Mm> =>
  figure.length(mm(back.value / 2 + front.value), 'skirt.wrapQuarter', { back, front });

/** Spread flat, free edge to free edge as finished. */
export function roundOfWrap(halves: WrapHalves, { seam, facing }: WrapEdges): Figure<Mm> {
  const quarter = wrapQuarter(halves);
  return figure.length(mm(4 * quarter.value - 4 * seam.value - 2 * facing.value), 'skirt.wrapRound', {
    quarter,
    layers: LAYERS,
    seam,
    facing,
  });
}
