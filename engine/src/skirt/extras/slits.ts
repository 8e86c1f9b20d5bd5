import { z } from 'zod';
import { walkerOf } from '../../body/index.ts';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { line, point } from '../../geometry/index.ts';
import { inches, longest, mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { PanelEdge, Part } from '../panel.ts';
import type { WaistPlan } from '../waists/index.ts';
import { slitNeeded } from '../slitNeeded.ts';
import { work } from '../works.ts';
import type { GrowthTucks, Planned, SeamSide, Slits } from './extra.ts';
import { pieceOf } from './piece.ts';
import { seamAt } from './seamsOf.ts';

export const slitLimits = { least: mm(20), most: mm(1500) };

/** Seams left open from the hem up. Defaults are common practice, no source. */
export const slitOptions = (fields: Fields) =>
  z.strictObject({
    where: z.enum(['sides', 'left side', 'right side', 'back']).default('sides'),
    /** From the finished hem up; what a step asks where it is not given. */
    height: fields.length(slitLimits).optional(),
    /** Finished depth of the strips that face its edges. */
    facing: fields.usual({ least: mm(10), most: mm(100) }, { inches: '1 in', metric: '2.5 cm' }),
  });

export type SlitOptions = z.infer<ReturnType<typeof slitOptions>>;

const seamsFor: Readonly<Record<SlitOptions['where'], readonly SeamSide[]>> = {
  sides: ['left', 'right'],
  'left side': ['left'],
  'right side': ['right'],
  back: ['back'],
};

/** Where no step is known, or none asks for a slit: this share of the finished length. Common practice, no source. */
const USUAL_SHARE = 0.3;
/** A slit ends this far below the waist's stitching, or the lowest tuck. Common practice, no source. */
const BELOW_WAIST = inches(1);
/** Of a facing strip: what is turned under on its free edge, and its seam at both ends. Common practice, no source. */
const UNDER = inches(0.25);
const END = inches(0.5);
/** Each edge is stitched twice, the facing on and its free edge down; a bar tack holds the end. */
const TACK = inches(0.5);

/** Slits as high as asked, or as high as the step asks; null where there is no seam to leave open. */
export function planSlits(
  context: DraftContext,
  chosen: SlitOptions,
  draft: Draft,
  waist: WaistPlan,
  tucks: GrowthTucks | null,
): Planned<Slits> {
  const lowest = draft.rounds.at(-1) ?? draft.rounds[0];
  const wanted = seamsFor[chosen.where];
  const found = wanted.filter((side) => seamAt(draft, lowest, side));
  const missing = wanted
    .filter((side) => !found.includes(side))
    .map((where) => caution('skirt.slitNoSeam', { where }));
  if (found.length === 0) return { extra: null, notices: missing };
  const { height, notices } = heightOf(context, chosen, draft, waist, tucks);
  const facing = figure.length(chosen.facing, 'skirt.slitFacing');
  const tack = figure.length(TACK, 'skirt.slitTack');
  const across = draft.rounds.length > 1 && height.value > lowest.length;
  const tier = figure.length(lowest.length, 'skirt.tierLength');
  return {
    extra: {
      where: found.length === wanted.length ? chosen.where : found[0] === 'left' ? 'left side' : 'right side',
      sides: found,
      count: figure.count(found.length, 'skirt.slitCount'),
      height,
      facing,
      takes: { from: mm(0), to: height.value },
      parts: [facingStrips(context, draft, height, facing, 2 * found.length)],
      works: [
        work(
          'slit edge',
          figure.length(mm(2 * height.value + tack.value), 'skirt.slitEdge', { height, tack }),
          2 * found.length,
        ),
      ],
      notices: [
        ...missing,
        ...notices,
        ...(across ? [caution('skirt.slitAcrossTiers', { height, tier })] : []),
      ],
    },
    notices: [],
  };
}

function heightOf(
  context: DraftContext,
  chosen: SlitOptions,
  draft: Draft,
  waist: WaistPlan,
  tucks: GrowthTucks | null,
): { height: Figure<Mm>; notices: Notice[] } {
  const { mark } = context;
  const stitched = longest(waist.depth, tucks?.reach.value ?? mm(0));
  const room = roundTo(mm(draft.panelLength.value - stitched - BELOW_WAIST), mark, 'down');
  const most = figure.length(mm(Math.max(mark, room)), 'skirt.slitMost');
  const wish =
    chosen.height === undefined
      ? solved(context, draft)
      : figure.length(
          roundTo(chosen.height, mark, 'nearest'),
          'skirt.slitAsked',
          {},
          { exact: chosen.height },
        );
  if (wish.value <= most.value) return { height: wish, notices: [] };
  return { height: most, notices: [caution('skirt.slitHeld', { wish, most })] };
}

/** What the step asks for where the hem is too narrow for it; else, and where no step is known, a usual share. */
function solved(context: DraftContext, draft: Draft): Figure<Mm> {
  const { body, mark } = context;
  const walker = walkerOf(body);
  const needed = walker && body.hemHeight ? slitNeeded(context, walker, draft, body.hemHeight) : null;
  if (needed && needed.value > 0) return needed;
  const length = draft.finishedLength;
  const share = figure.percent(USUAL_SHARE, 'skirt.slitShare');
  const exact = mm(length.value * USUAL_SHARE);
  return figure.length(roundTo(exact, mark, 'up'), 'skirt.slitUsual', { length, share }, { exact });
}

/** Strips sewn to the edges of the slit and turned inside: a seam allowance is too narrow to be turned for them. */
function facingStrips(
  { mark }: DraftContext,
  draft: Draft,
  height: Figure<Mm>,
  facing: Figure<Mm>,
  count: number,
): Part {
  const seam = draft.sideSeamAllowance;
  const under = figure.length(UNDER, 'skirt.slitUnder');
  const end = figure.length(END, 'skirt.slitEnd');
  const exactWidth = mm(facing.value + seam.value + under.value);
  const width = figure.length(
    roundTo(exactWidth, mark, 'up'),
    'skirt.slitFacingWidth',
    { facing, seam, under },
    { exact: exactWidth },
  );
  const exactLength = mm(height.value + 2 * end.value);
  const length = figure.length(
    roundTo(exactLength, mark, 'up'),
    'skirt.slitFacingLength',
    { height, end },
    { exact: exactLength },
  );
  const [right, bottom] = [facing.value, length.value - 2 * end.value];
  const corners = [point(0, 0), point(right, 0), point(right, bottom), point(0, bottom)] as const;
  const edge = (
    name: PanelEdge['name'],
    i: 0 | 1 | 2 | 3,
    allowance: number,
    turned: boolean,
  ): PanelEdge => ({
    name,
    finished: [line(corners[i], corners[((i + 1) % 4) as 0 | 1 | 2 | 3])],
    allowance: mm(allowance),
    turned,
  });
  return {
    name: 'slit facing',
    count,
    cloth: 'skirt',
    shape: pieceOf([
      edge('waist', 0, end.value, false),
      // What rounding up added to the width is turned under too.
      edge('right', 1, width.value - facing.value - seam.value, true),
      edge('hem', 2, end.value, false),
      edge('left', 3, seam.value, false),
    ]),
    grain: 'down',
    mirrored: false,
    measures: [width, length],
  };
}
