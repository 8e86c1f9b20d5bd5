import { z } from 'zod';
import { usualKind, type Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { longest, mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure, type SkirtFigureCode } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Around, Panels, PanelShape } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import { work } from '../works.ts';
import {
  adultHemFloor,
  commonOptions,
  cutLength,
  floorOf,
  hemOf,
  LAYERS,
  lengthsOf,
  roundOf,
  stepOf,
} from './common.ts';
import type { Cut, Marks } from './cut.ts';
import { sewn, turned } from './edges.ts';
import { flaredHandles, WIDEST_SWEEP } from './flaredHandles.ts';
import { flatHang, levelHang } from './hang.ts';
import { fullnessLimits, hemAtFoldLimits } from './limits.ts';
import { chalkedEnd } from './rawEnd.ts';
import { cutTogether } from './rise.ts';
import { riseOf } from './riseOf.ts';
import { oneRound, seamSide } from './round.ts';
import { ringOf, ringShape } from './ringShape.ts';
import { straightShape, straightSideExcess } from './straightShape.ts';

const options = (fields: Fields) =>
  z.strictObject({
    kind: usualKind('flared'),
    /** Cloth round the top for each unit of the widest part of the body. */
    fullness: z.number().min(fullnessLimits.least).max(fullnessLimits.most).default(1.5),
    /** Least that the hem mark lies outside the waist mark; without it two skirts in three narrow downwards. */
    leastFlare: fields.usual({ least: mm(0), most: mm(1000) }, { inches: '2 in', metric: '5 cm' }),
    hemFloor: adultHemFloor(fields),
    /** The hem mark at the double fold, where the maker wants one of her own. */
    hemAtFold: fields.length(hemAtFoldLimits).optional(),
    hemline: z.enum(['auto', 'straight', 'level']).default('auto'),
    /** How much longer the side may be than the centre before a straight hem is curved. */
    levelTolerance: fields.usual({ least: mm(0), most: mm(100) }, { inches: '6 mm', metric: '6 mm' }),
    ...commonOptions(fields),
  });

export type FlaredOptions = z.infer<ReturnType<typeof options>>;

/**
 * Two flared panels, front and back, marked at the double fold by hand arithmetic: top ÷ 4 = the larger of
 * waist and hip × fullness ÷ 4. The marks lie on the folds of casing and hem.
 */
export const flared: Cut<FlaredOptions> = {
  kind: 'flared',
  options,
  handles: (context, _, _top, draft) => flaredHandles(context, draft),
  draft(context, chosen, need) {
    const { mark } = context;
    const { finished, panel: length } = lengthsOf(context, need);
    const hem = hemOf(context, chosen.hem);
    const margin = figure.length(chosen.margin, 'skirt.margin');
    const seam = figure.length(chosen.sideSeam, 'skirt.sideSeam');
    const top = topQuarter(context, chosen);
    const { quarter, notices } = hemQuarter(context, chosen, top, seam, length);
    const cut = cutLength(length, need.allowance, hem, margin, mark);
    const flare = figure.length(mm(quarter.value - top.value), 'skirt.flareAtFold', { hem: quarter, top });
    const excess = straightSideExcess(length.value, flare.value);
    const curved =
      flare.value > 0 &&
      (chosen.hemline === 'level' || (chosen.hemline === 'auto' && excess > chosen.levelTolerance));
    const side = sewn(seam.value);
    const allowances = {
      top: { depth: need.allowance.value, turned: need.turned },
      hem: turned(hem.value),
      left: side,
      right: side,
      length: length.value,
      // What rounding up added to the cut length is margin too.
      margin: mm(cut.value - length.value - need.allowance.value - hem.value),
    };
    const ring = ringOf(top.value, quarter.value, length.value);
    // Front and back are cut at one go, by the higher of their tops.
    const cutRise = cutTogether([FRONT, BACK].map((around) => riseOf(context, around)));
    const shapeFor = (around: Around): PanelShape => {
      const rise = riseOf(context, around);
      return curved
        ? ringShape({ ...allowances, ...ring, rise, cutRise })
        : straightShape({ ...allowances, halfTop: top.value, halfHem: quarter.value, rise, cutRise });
    };
    const apex = figure.length(ring.radius, 'skirt.apexRadius', { top, hem: quarter, length });
    const hung = curved
      ? levelHang({
          context,
          apex,
          halfSweep: ring.halfSweep,
          length,
          insteadOf: { flare },
          top: need,
          hemAllowance: hem,
        })
      : flatHang({ length, flare, tolerance: chosen.levelTolerance, asked: chosen.hemline === 'straight' });
    const panels = frontAndBack(shapeFor);
    const opening = roundOf('skirt.opening', top, seam, 2);
    const hemRound = roundOf('skirt.hemRound', quarter, seam, 2);
    return {
      kind: flared.kind,
      marking: 'at the fold',
      ...oneRound(panels, { length, top: opening, bottom: hemRound, seams: 2 }),
      marks: marksOf({
        context,
        top,
        hem: quarter,
        cut,
        flare,
        length,
        need,
        hemAllowance: hem,
        curved,
        rise: hung.hang.extraDepth,
      }),
      hang: hung.hang,
      sideSeamAllowance: seam,
      hemAllowance: hem,
      hemTurnUnder: mm(Math.min(chosen.hemTurnUnder, hem.value / 2)),
      margin,
      finishedLength: finished,
      panelLength: length,
      opening,
      hemRound,
      overlap: null,
      works: [work('side seam', seamSide(panels[0].shape, need.allowance, hem), 2)],
      parts: [],
      notices: [...notices, ...hung.notices],
    };
  },
};

const FRONT: Around = { from: -0.25, to: 0.25 };
const BACK: Around = { from: 0.25, to: 0.75 };

const frontAndBack = (shapeFor: (around: Around) => PanelShape): Panels => [
  { name: 'front', number: 1, shape: shapeFor(FRONT), around: FRONT },
  { name: 'back', number: 1, shape: shapeFor(BACK), around: BACK },
];

function topQuarter(context: DraftContext, chosen: FlaredOptions): Figure<Mm> {
  const girth = context.body.widest;
  const exact = mm((girth.value * chosen.fullness) / 4);
  return figure.length(
    roundTo(exact, context.mark, 'up'),
    'skirt.topQuarter',
    { girth, fullness: figure.ratio(chosen.fullness, 'skirt.fullness'), layers: LAYERS },
    { exact },
  );
}

/** The largest of the adult floor, the waist mark + least flare, and what a step needs; or the maker's own. */
function hemQuarter(
  context: DraftContext,
  chosen: FlaredOptions,
  top: Figure<Mm>,
  seam: Figure<Mm>,
  length: Figure<Mm>,
): { quarter: Figure<Mm>; notices: Notice[] } {
  const floor = floorOf(context, chosen.hemFloor);
  const flare = figure.length(mm(top.value + chosen.leastFlare), 'skirt.hemFromFlare', {
    top,
    flare: figure.length(chosen.leastFlare, 'skirt.leastFlare'),
  });
  const stride = strideQuarter(context, seam);
  const exact = longest(floor.value, flare.value, stride.value);
  const usual = figure.length(roundTo(exact, context.mark, 'up'), ...largestOf(floor, flare, stride), {
    exact,
  });
  const widest = roundTo(mm(top.value + WIDEST_SWEEP * length.value), context.mark, 'down');
  const asked = chosen.hemAtFold === undefined ? usual : askedQuarter(chosen.hemAtFold, context.mark);
  const notices: Notice[] = [];
  if (asked.value < top.value) {
    notices.push(caution('skirt.hemWidened', { asked, top }));
    return { quarter: figure.length(top.value, 'skirt.hemQuarterEqual', { top }), notices };
  }
  if (asked.value > widest) {
    const capped = figure.length(widest, 'skirt.hemQuarterAsked');
    notices.push(caution('skirt.flareCapped', { asked, capped }));
    return { quarter: capped, notices };
  }
  if (asked.value < floor.value) notices.push(caution('skirt.hemBelowFloor', { asked, floor }));
  return { quarter: asked, notices };
}

/** A child has no floor, and where no step is known there is none to speak of: a sum names only what counts. */
function largestOf(
  floor: Figure<Mm>,
  flare: Figure<Mm>,
  stride: Figure<Mm>,
): [SkirtFigureCode, Readonly<Record<string, Figure>>] {
  if (floor.value === 0)
    return stride.value === 0 ? ['skirt.hemOfFlare', { flare }] : ['skirt.hemOfStride', { flare, stride }];
  return stride.value === 0
    ? ['skirt.hemOfFloor', { floor, flare }]
    : ['skirt.hemQuarter', { floor, flare, stride }];
}

const askedQuarter = (asked: Mm, mark: Mm): Figure<Mm> =>
  figure.length(roundTo(asked, mark, 'up'), 'skirt.hemQuarterAsked', {}, { exact: asked });

function strideQuarter(context: DraftContext, seam: Figure<Mm>): Figure<Mm> {
  const need = stepOf(context);
  if (need.value === 0) return need;
  const edges = figure.count(4, 'skirt.sideSeams');
  const quarter = mm((need.value + edges.value * seam.value) / 4);
  return figure.length(quarter, 'skirt.hemFromStride', { need, edges, seam, layers: LAYERS });
}

interface MarksInput {
  readonly context: DraftContext;
  readonly top: Figure<Mm>;
  readonly hem: Figure<Mm>;
  readonly cut: Figure<Mm>;
  readonly flare: Figure<Mm>;
  readonly length: Figure<Mm>;
  readonly need: TopNeed;
  readonly hemAllowance: Figure<Mm>;
  readonly curved: boolean;
  readonly rise: Figure<Mm>;
}

/**
 * Mirrored over its fold, the raw edge of a straight panel is as wide as the skirt where it lands. On a ring
 * the sides are radii and simply run on: the raw edge is narrower at the top and wider at the hem.
 */
function marksOf(input: MarksInput): Marks {
  const { context, top, hem, cut, flare, length, need, hemAllowance, curved, rise } = input;
  const lean = (depth: Figure<Mm>) => ({ flare, depth, length });
  return {
    waistQuarter: top,
    hemQuarter: hem,
    cutLength: cut,
    bottom: curved ? figure.length(mm(cut.value + rise.value), 'skirt.bottom', { cut, rise }) : cut,
    // Above a seam the side runs on; above a fold of a straight panel it is mirrored.
    casingEnd: chalkedEnd(
      curved || !need.turned ? 'skirt.narrowerEnd' : 'skirt.widerEnd',
      top,
      lean(need.allowance),
      context.mark,
    ),
    hemEnd: chalkedEnd(
      curved ? 'skirt.widerEnd' : 'skirt.narrowerEnd',
      hem,
      lean(hemAllowance),
      context.mark,
    ),
  };
}
