import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { distanceTo, lengthOf, pointAt } from '../../geometry/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { Panel, PanelShape, PieceShape } from '../panel.ts';
import type { WaistPlan } from '../waists/index.ts';
import { work } from '../works.ts';
import type { Planned, Pockets, SeamSide } from './extra.ts';
import { bagWidthFor, handOf, openingFor } from './hand.ts';
import { pocketBag } from './pocketBag.ts';
import { seamAt } from './seamsOf.ts';

export const pocketBelowLimits = { least: mm(0), most: mm(600) };

/** Pockets in the side seams. Defaults are common practice, no source. */
export const pocketOptions = (fields: Fields) =>
  z.strictObject({
    count: z.literal([1, 2]).default(2),
    /** Where one is enough: the wearer's side. */
    side: z.enum(['left', 'right']).default('right'),
    /** Round the knuckles, the thumb laid in the palm, where it was measured. */
    hand: fields.length({ least: mm(80), most: mm(400) }).optional(),
    /** From the panels' top line down to the opening. */
    below: fields.length(pocketBelowLimits).optional(),
    seam: fields.usual({ least: mm(6), most: mm(40) }, { inches: '1/2 in', metric: '1.2 cm' }),
    cloth: z.enum(['skirt', 'lining']).default('skirt'),
  });

export type PocketOptions = z.infer<ReturnType<typeof pocketOptions>>;

/** Where the opening of a grown wearer begins, and a child's as a share of its height. Common practice, no source. */
const GROWN_BELOW = inches(3);
const BELOW_SHARE = 0.046;
const CHILD_BELOW = inches(2);
/** The bag's straight edge beyond the opening; the least between an opening, or a bag, and other stitching. */
const HEADROOM = inches(1);
const CLEAR = inches(0.5);
/** A bag that hangs less than this below its straight edge holds nothing. */
const LEAST_DROOP = inches(0.5);

/** In-seam pockets sized to the hand, clear of waist and hem; null where no seam lies at a side, or none is long enough. */
export function planPockets(
  context: DraftContext,
  chosen: PocketOptions,
  draft: Draft,
  waist: WaistPlan,
): Planned<Pockets> {
  const { mark } = context;
  const [first] = draft.rounds;
  const wanted: readonly SeamSide[] = chosen.count === 2 ? ['left', 'right'] : [chosen.side];
  const seams = wanted.map((side) => seamAt(draft, first, side)).filter((each) => each !== null);
  const [at] = seams;
  if (!at) return { extra: null, notices: [caution('skirt.pocketsNeedSideSeams')] };

  const hand = handOf(context.body, chosen.hand);
  const opening = openingFor(hand, mark);
  const bagWidth = bagWidthFor(hand, mark);
  const headroom = figure.length(roundTo(HEADROOM, mark, 'nearest'), 'skirt.pocketHeadroom');
  const side = mm(Math.min(...seams.flatMap(({ before, after }) => [sideOf(before), sideOf(after)])));
  // Below the first round of panels the seams of the next lie elsewhere; above the hem its stitching holds.
  const last = side - CLEAR - (draft.rounds.length > 1 ? 0 : draft.hemAllowance.value);
  const below = belowOf(context, chosen, waist, mm(last - opening.value));
  if (!below) return { extra: null, notices: [caution('skirt.pocketsNoRoom', { opening })] };
  // The bag hangs behind tucks, so what they take up it does not have.
  const hangs = side + first.fromHem - (context.inTucks?.value ?? 0) - draft.hemAllowance.value - CLEAR;
  const straight = opening.value + 2 * headroom.value;
  const most = hangs - (below.value - headroom.value + straight);
  const droop = roundTo(mm(Math.min(bagWidth.value / 2, most)), mark, 'down');
  if (droop < LEAST_DROOP) return { extra: null, notices: [caution('skirt.pocketsNoRoom', { opening })] };

  const wantedSeam = figure.length(chosen.seam, 'skirt.pocketSeam');
  // Bag and side are one line of stitching: the bag has the side's own allowance.
  const seam = draft.sideSeamAllowance;
  const bag: PieceShape = pocketBag({
    opening: opening.value,
    headroom: headroom.value,
    width: bagWidth.value,
    droop,
    seam: seam.value,
  });
  const hang = figure.length(droop, 'skirt.pocketDroop');
  const line = figure.length(mm(straight), 'skirt.pocketSeamLine', { opening, headroom });
  const round = bag.edges.filter(({ name }) => name !== 'left').flatMap(({ finished }) => finished);
  const { shape } = at.before;
  const heightAt = (down: number): Mm => mm(first.fromHem + aboveHem(shape, mm(down)));
  const count = figure.count(seams.length, 'skirt.pocketCount');
  const extra: Pockets = {
    count,
    sides: seams.map((each) => each.side),
    opening,
    below,
    bagDepth: figure.length(mm(opening.value + headroom.value + droop), 'skirt.pocketBagDepth', {
      opening,
      headroom,
      hang,
    }),
    bagWidth,
    headroom,
    seam,
    cloth: chosen.cloth,
    takes: { from: heightAt(below.value + opening.value), to: heightAt(below.value) },
    parts: [
      {
        name: 'pocket bag',
        count: 2 * seams.length,
        cloth: chosen.cloth,
        shape: bag,
        grain: 'down',
        mirrored: true,
        measures: [
          figure.length(mm(bagWidth.value + 2 * seam.value), 'skirt.pocketCutWidth', {
            width: bagWidth,
            seam,
          }),
          figure.length(mm(straight + droop + 2 * seam.value), 'skirt.pocketCutLength', { line, hang, seam }),
        ],
      },
    ],
    works: [
      work('pocket seam', line, 2 * seams.length),
      work('pocket bag', figure.length(lengthOf(round), 'skirt.pocketBagLine'), seams.length),
    ],
    notices: noticesOf({
      draft,
      waist,
      seam: wantedSeam,
      sides: seams.map((each) => each.side),
      asked: wanted.length,
    }),
  };
  return { extra, notices: [] };
}

const sideOf = ({ shape }: Panel): Mm => lengthOf(edgeOf(shape, 'right'));

const edgeOf = (shape: PanelShape, name: 'right' | 'hem') =>
  shape.edges.find((edge) => edge.name === name)?.finished ?? [];

/** Height above its own hem of a place so far down a panel's side. */
const aboveHem = (shape: PanelShape, down: Mm): Mm =>
  distanceTo(edgeOf(shape, 'hem'), pointAt(edgeOf(shape, 'right'), down));

/** Where the opening begins: as asked or as usual, clear of the waist's stitching, and no lower than the seam allows. */
function belowOf(
  { body, mark }: DraftContext,
  { below }: PocketOptions,
  waist: WaistPlan,
  most: Mm,
): Figure<Mm> | null {
  const usual = body.adult ? GROWN_BELOW : body.height ? mm(body.height.value * BELOW_SHARE) : CHILD_BELOW;
  const least = roundTo(mm(waist.depth + CLEAR), mark, 'up');
  const lowest = roundTo(most, mark, 'down');
  if (lowest < least) return null;
  const wish = roundTo(below ?? usual, mark, 'nearest');
  return figure.length(mm(Math.min(lowest, Math.max(least, wish))), 'skirt.pocketBelow');
}

interface Found {
  readonly draft: Draft;
  readonly waist: WaistPlan;
  readonly seam: Figure<Mm>;
  readonly sides: readonly SeamSide[];
  readonly asked: number;
}

function noticesOf({ draft, waist, seam, sides, asked }: Found): Notice[] {
  const has = draft.sideSeamAllowance;
  // An opening of the waist that has no seam behind is made in a side seam.
  const opensAtSide = waist.closure !== null && !draft.overlap && !seamAt(draft, draft.rounds[0], 'back');
  return [
    ...(has.value < seam.value - HAIR ? [caution('skirt.pocketsNeedSeam', { has, seam })] : []),
    ...(sides.length < asked ? [caution('skirt.pocketsOneSide')] : []),
    ...(opensAtSide ? [caution('skirt.pocketAtOpening')] : []),
  ];
}

const HAIR = 0.01;
