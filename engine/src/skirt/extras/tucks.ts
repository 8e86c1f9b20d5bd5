import type { Figure, Notice } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext, DraftGiven } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { WaistPlan } from '../waists/index.ts';
import { work } from '../works.ts';
import type { GrowthTucks, Planned, Pockets } from './extra.ts';
import { letsDownOf } from './letsDown.ts';
import { tuckDepths } from './tuckDepths.ts';
import type { TuckOptions } from './tuckOptions.ts';

/** Between a tuck and other stitching. Common practice, no source. */
const CLEAR = inches(0.5);
/** Past this share of its length a line that is stitched to a longer one no longer eases unseen. Common practice, no source. */
const EASED = 0.015;

/** Length of the panels that tucks take up; null where a deeper hem holds it. */
export function takenUp(given: DraftGiven, chosen: TuckOptions): Figure<Mm> | null {
  if (chosen.how === 'deep hem') return null;
  const { count, depth } = tuckDepths(given, chosen, letsDownOf(given, chosen).letsDown);
  return figure.length(mm(2 * count.value * depth.value), 'skirt.inTucks', { count, depth });
}

/** Tucks below the waist, or a deeper hem, with what they do on this skirt. */
export function planTucks(
  context: DraftContext,
  chosen: TuckOptions,
  draft: Draft,
  waist: WaistPlan,
  pockets: Pockets | null,
): Planned<GrowthTucks> {
  const wish = letsDownOf(context, chosen);
  if (chosen.how === 'deep hem') return deepHem(wish.letsDown, draft, wish.notices);
  const { count, depth, notices } = tuckDepths(context, chosen, wish.letsDown);
  const below = belowOf(context, chosen, waist, pockets);
  const space = figure.length(mm(count.value > 1 ? depth.value + 2 * context.mark : 0), 'skirt.tuckSpace');
  const flat = (2 * count.value + 1) * depth.value + (count.value - 1) * space.value;
  const reach = figure.length(mm(below.value + flat), 'skirt.tuckReach');
  const [first] = draft.rounds;
  const grows = (first.bottom.value - first.top.value) / Math.max(1, first.length);
  const round = figure.length(
    mm(first.top.value + grows * Math.min(first.length, below.value)),
    'skirt.tuckLine',
  );
  return {
    extra: {
      how: 'tucks',
      count,
      depth,
      letsDown: figure.length(mm(2 * count.value * depth.value), 'skirt.inTucks', { count, depth }),
      below,
      space,
      reach,
      parts: [],
      works: [work('tuck', round, count.value)],
      notices: [...wish.notices, ...notices, ...noRoom(draft, reach), ...onCurve(draft, depth, round)],
    },
    notices: [],
  };
}

function deepHem(letsDown: Figure<Mm>, draft: Draft, notices: readonly Notice[]): Planned<GrowthTucks> {
  const hem = draft.hemAllowance;
  if (hem.value < letsDown.value)
    return { extra: null, notices: [caution('skirt.deepHemLeftOut', { hem, letsDown })] };
  const none = figure.length(mm(0), 'skirt.tuckDepth');
  return {
    extra: {
      how: 'deep hem',
      count: figure.count(0, 'skirt.tuckCount'),
      depth: none,
      letsDown,
      below: none,
      space: none,
      reach: none,
      parts: [],
      works: [],
      notices,
    },
    notices: [],
  };
}

/** Clear of the waist's stitching, its darts, its opening, and of pockets: all that a tuck must not be sewn across. */
function belowOf(
  { mark }: DraftContext,
  chosen: TuckOptions,
  waist: WaistPlan,
  pockets: Pockets | null,
): Figure<Mm> {
  const least = Math.max(
    waist.depth,
    waist.takenUp?.dartLength?.value ?? 0,
    (waist.closure?.depth.value ?? 0) - waist.above.value,
    pockets ? pockets.below.value + pockets.bagDepth.value : 0,
  );
  const value = Math.max(least + CLEAR, chosen.below ?? 0);
  return figure.length(roundTo(mm(value), mark, 'up'), 'skirt.tuckBelow');
}

/** Tucks lie in the first round of panels, clear of the hem or of the seam below. */
function noRoom(draft: Draft, reach: Figure<Mm>): Notice[] {
  const [first] = draft.rounds;
  const hem = draft.rounds.length > 1 ? 0 : draft.hemAllowance.value;
  const room = figure.length(mm(Math.max(0, first.length - hem - CLEAR)), 'skirt.tuckRoom');
  return reach.value > room.value ? [caution('skirt.tucksNoRoom', { reach, room })] : [];
}

/** On a skirt that widens, the two lines that are stitched together differ by what it widens between them. */
function onCurve(draft: Draft, depth: Figure<Mm>, round: Figure<Mm>): Notice[] {
  const [{ top, bottom, length }] = draft.rounds;
  const value = mm((2 * depth.value * (bottom.value - top.value)) / Math.max(1, length));
  if (value <= EASED * round.value) return [];
  const excess = figure.length(value, 'skirt.tuckExcess', {
    depth,
    bottom,
    top,
    length: figure.length(mm(Math.max(1, length)), 'skirt.tierLength'),
  });
  return [caution('skirt.tuckOnCurve', { excess })];
}
