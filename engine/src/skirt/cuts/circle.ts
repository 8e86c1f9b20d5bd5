import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { boundsOf } from '../../geometry/index.ts';
import { inches, mm, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { PanelShape } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import { work } from '../works.ts';
import {
  circlePieces,
  fullTurn,
  hemRadiusOf,
  pieceCounts,
  shareOf,
  sharesOfACircle,
  type CircleDrawn,
  type PieceCount,
} from './circlePieces.ts';
import { commonOptions, cutLength, hemOf, LAYERS, lengthsOf, roundOf } from './common.ts';
import type { Cut, Marks } from './cut.ts';
import { levelHang } from './hang.ts';
import { hemLimits } from './limits.ts';
import { rawEnd } from './rawEnd.ts';
import { oneRound, seamSide } from './round.ts';

const options = (fields: Fields) => {
  const { sideSeam, margin } = commonOptions(fields);
  return z.strictObject({
    kind: z.literal('circle'),
    /** How much of a whole circle the skirt is. */
    fraction: z.enum(sharesOfACircle).default('1/2'),
    /** Pieces it is cut in; `auto` takes the fewest that the cloth is wide enough for. */
    pieces: z.literal(['auto', ...pieceCounts]).default('auto'),
    sideSeam,
    /** Cloth below the hem fold; the fuller the circle, the narrower where it is not given. */
    hem: fields.length(hemLimits).optional(),
    hemTurnUnder: fields.length({ least: mm(0), most: mm(60) }).optional(),
    margin,
  });
};

export type CircleOptions = z.infer<ReturnType<typeof options>>;

/**
 * A ring, or a part of one, about one middle: radius of the waist = round ÷ 2π ÷ fraction, of the hem that and the length.
 * Cut in one piece it has one seam at the back; in two, seams at the sides; in four, at the sides, in front and behind.
 */
export const circle: Cut<CircleOptions> = {
  kind: 'circle',
  options,
  // Turned down on so tight an arc, a casing falls too short to lie flat.
  usualWaist: () => 'separate casing',
  draft(context, chosen, need) {
    const { finished, panel: length } = lengthsOf(context, need);
    const { hem, turnUnder } = circleHem(context, chosen);
    const margin = figure.length(chosen.margin, 'skirt.margin');
    const seam = figure.length(chosen.sideSeam, 'skirt.sideSeam');
    const cut = cutLength(length, need.allowance, hem, margin, context.mark);
    const { drawn, notices } = asTheClothAllows(context, chosen, (pieces) =>
      circlePieces({ context, share: chosen.fraction, pieces, need, length, seam, hem, cut }),
    );
    const { radius, panels, seams, halfSweep } = drawn;
    const hung = levelHang({
      context,
      apex: radius,
      halfSweep,
      length,
      insteadOf: null,
      top: need,
      hemAllowance: hem,
    });
    const marks = marksOf({ chosen, radius, length, cut, need, hem, rise: hung.hang.extraDepth });
    const opening = roundOf('skirt.opening', marks.waistQuarter, seam, seams);
    const hemRound = roundOf('skirt.hemRound', marks.hemQuarter, seam, seams);
    return {
      kind: circle.kind,
      marking: 'swung',
      ...oneRound(panels, { length, top: opening, bottom: hemRound, seams }),
      marks,
      hang: hung.hang,
      sideSeamAllowance: seam,
      hemAllowance: hem,
      hemTurnUnder: turnUnder,
      margin,
      finishedLength: finished,
      panelLength: length,
      opening,
      hemRound,
      overlap: null,
      works: [work('side seam', seamSide(panels[0].shape, need.allowance, hem), seams)],
      parts: [],
      notices: [...notices, ...hung.notices.map(asOfACircle)],
    };
  },
};

/** Past half a circle a hem is turned once, ¼ in; half a circle takes ½ in, less a usual hem. Common practice, no source. */
function circleHem(context: DraftContext, chosen: CircleOptions): { hem: Figure<Mm>; turnUnder: Mm } {
  const share = shareOf[chosen.fraction];
  // Inch marks are no whole number of millimetres.
  const metric = Number.isInteger(context.mark);
  const usual = share > 0.5 ? [0.25, 6] : share === 0.5 ? [0.5, 12] : [0.75, 20];
  const [inInches = 0.75, inMillimetres = 20] = usual;
  const depth = chosen.hem ?? (metric ? mm(inMillimetres) : inches(inInches));
  const under = chosen.hemTurnUnder ?? (share > 0.5 ? mm(0) : metric ? mm(6) : inches(0.25));
  const hem = hemOf(context, depth);
  return { hem, turnUnder: mm(Math.min(under, hem.value / 2)) };
}

/** As asked, or in the fewest pieces that the cloth is wide enough for; cloth too narrow for any is told of. */
function asTheClothAllows(
  { clothWidth }: DraftContext,
  chosen: CircleOptions,
  draw: (pieces: PieceCount) => CircleDrawn,
): { drawn: CircleDrawn; notices: Notice[] } {
  const fits = ({ panels }: CircleDrawn): boolean =>
    panels.every(({ shape }) => across(shape) <= clothWidth.value);
  const most = draw(chosen.pieces === 'auto' ? 4 : chosen.pieces);
  const fewer = chosen.pieces === 'auto' ? ([1, 2] as const) : [];
  for (const pieces of fewer) {
    const drawn = draw(pieces);
    if (fits(drawn)) return { drawn, notices: [] };
  }
  if (fits(most)) return { drawn: most, notices: [] };
  const more = most.panels.length < 4 ? 'yes' : 'no';
  return {
    drawn: most,
    notices: [caution('skirt.circleTooWide', { radius: most.hemRadius, cloth: clothWidth, more })],
  };
}

/** What a piece takes of the cloth's width; it has no grain to keep to, so it may be turned a quarter. */
function across(shape: PanelShape): Mm {
  const { width, height } = boundsOf(shape.cut);
  return mm(Math.min(width, height));
}

/** A circle leans every way off the grain: to name one angle would say less. */
const asOfACircle = (notice: Notice): Notice =>
  notice.code === 'skirt.offGrain' ? caution('skirt.circleDrops') : notice;

interface MarksInput {
  readonly chosen: CircleOptions;
  readonly radius: Figure<Mm>;
  readonly length: Figure<Mm>;
  readonly cut: Figure<Mm>;
  readonly need: TopNeed;
  readonly hem: Figure<Mm>;
  readonly rise: Figure<Mm>;
}

/** Quarters of the whole round of cloth, seam allowances with it, on the radii that are chalked. */
function marksOf({ chosen, radius, length, cut, need, hem, rise }: MarksInput): Marks {
  const share = shareOf[chosen.fraction];
  const quarterAt = (at: Figure<Mm>): Figure<Mm> =>
    figure.length(mm((2 * Math.PI * share * at.value) / 4), 'skirt.circleQuarter', {
      turn: fullTurn,
      fraction: figure.ratio(share, 'skirt.circleFraction'),
      radius: at,
      layers: LAYERS,
    });
  const waistQuarter = quarterAt(radius);
  const hemQuarter = quarterAt(hemRadiusOf(radius, length));
  const flare = figure.length(mm(hemQuarter.value - waistQuarter.value), 'skirt.flareAtFold', {
    hem: hemQuarter,
    top: waistQuarter,
  });
  const end = (code: 'skirt.widerEnd' | 'skirt.narrowerEnd', quarter: Figure<Mm>, depth: Figure<Mm>) => {
    const exact = rawEnd(code, quarter, { flare, depth, length });
    // A casing deeper than the radius leaves no cloth at its raw edge, and no less than none.
    return figure.length(mm(Math.max(0, exact)), code, { quarter, flare, depth, length }, { exact });
  };
  return {
    waistQuarter,
    hemQuarter,
    cutLength: cut,
    bottom: figure.length(mm(cut.value + rise.value), 'skirt.bottom', { cut, rise }),
    casingEnd: end('skirt.narrowerEnd', waistQuarter, need.allowance),
    hemEnd: end('skirt.widerEnd', hemQuarter, hem),
  };
}
