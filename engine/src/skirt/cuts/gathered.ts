import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { longest, mm, roundTo, stepsIn, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { hipNeed } from '../goesOn.ts';
import type { Around, Panel, Panels, PanelShape } from '../panel.ts';
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
import type { Cut } from './cut.ts';
import { sewn, turned } from './edges.ts';
import { gatheredHandles } from './gatheredHandles.ts';
import { flatHang } from './hang.ts';
import { fullnessLimits, widthsLimits } from './limits.ts';
import { cutTogether } from './rise.ts';
import { riseOf } from './riseOf.ts';
import { aroundInTurn, oneRound, seamSide } from './round.ts';
import { straightShape } from './straightShape.ts';

/** It bounds what a slip of the pen can ask for. */
const MOST_WIDTHS = widthsLimits.most;

const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('gathered'),
    /** Cloth round for each unit of the widest part of the body, at least. */
    fullness: z.number().min(fullnessLimits.least).max(fullnessLimits.most).default(1.5),
    /** Widths of cloth, selvage to selvage; worked out from the fullness where it is not given. */
    widths: z.int().min(widthsLimits.least).max(MOST_WIDTHS).optional(),
    /** Whether whole widths are used, or each is cut down to what the fullness asks. */
    wholeWidths: z.boolean().default(true),
    hemFloor: adultHemFloor(fields),
    ...commonOptions(fields),
  });

export type GatheredOptions = z.infer<ReturnType<typeof options>>;

/** Straight widths of cloth, sewn selvage to selvage into a tube and gathered at the waist. */
export const gathered: Cut<GatheredOptions> = {
  kind: 'gathered',
  options,
  handles: (context, chosen, _, draft) => gatheredHandles(context, chosen, draft),
  draft(context, chosen, need) {
    const { finished, panel: length } = lengthsOf(context, need);
    const hem = hemOf(context, chosen.hem);
    const margin = figure.length(chosen.margin, 'skirt.margin');
    const seam = figure.length(chosen.sideSeam, 'skirt.sideSeam');
    const round = roundNeeded(context, chosen);
    const { widths, notices } = widthsFor(context, chosen, round, seam);
    const quarter = quarterOf(context, chosen, round, widths, seam);
    const cut = cutLength(length, need.allowance, hem, margin, context.mark);
    const half = mm((2 * quarter.value) / widths.value);
    const side = sewn(seam.value);
    // Widths are cut or torn straight across, by the highest of their tops.
    const cutRise = cutTogether(
      aroundInTurn(widths.value).map((around) => riseOf(context, around)),
      true,
    );
    const shapeFor = (around: Around): PanelShape =>
      straightShape({
        halfTop: half,
        halfHem: half,
        length: length.value,
        top: { depth: need.allowance.value, turned: need.turned },
        hem: turned(hem.value),
        left: side,
        right: side,
        margin: mm(cut.value - length.value - need.allowance.value - hem.value),
        rise: riseOf(context, around),
        cutRise,
      });
    const seams = widths.value;
    const panels = panelsOf(shapeFor, widths.value);
    const flare = figure.length(mm(0), 'skirt.flareAtFold', { hem: quarter, top: quarter });
    const hang = flatHang({ length, flare, tolerance: mm(0), asked: false });
    const opening = roundOf('skirt.opening', quarter, seam, seams);
    const hemRound = roundOf('skirt.hemRound', quarter, seam, seams);
    return {
      kind: gathered.kind,
      marking: 'straight widths',
      ...oneRound(panels, { length, top: opening, bottom: hemRound, seams }),
      marks: {
        waistQuarter: quarter,
        hemQuarter: quarter,
        cutLength: cut,
        bottom: cut,
        casingEnd: quarter,
        hemEnd: quarter,
      },
      hang: hang.hang,
      sideSeamAllowance: seam,
      hemAllowance: hem,
      hemTurnUnder: mm(Math.min(chosen.hemTurnUnder, hem.value / 2)),
      margin,
      finishedLength: finished,
      panelLength: length,
      opening,
      hemRound,
      overlap: null,
      works: [work('side seam', seamSide(panels[0].shape, need.allowance, hem), seams)],
      parts: [],
      notices,
    };
  },
};

/** Round that the skirt must have, seam to seam: for its fullness, for a step, and to go on. */
function roundNeeded(context: DraftContext, chosen: GatheredOptions): Figure<Mm> {
  const { body } = context;
  const full = figure.length(mm(body.widest.value * chosen.fullness), 'skirt.fullRound', {
    girth: body.widest,
    fullness: figure.ratio(chosen.fullness, 'skirt.fullness'),
  });
  const step = stepOf(context);
  const floorQuarter = floorOf(context, chosen.hemFloor);
  const floor = figure.length(mm(4 * floorQuarter.value), 'skirt.roundFloor', {
    quarter: floorQuarter,
    layers: LAYERS,
  });
  const hip = hipNeed(body);
  return figure.length(longest(full.value, step.value, floor.value, hip.value), 'skirt.roundNeeded', {
    full,
    step,
    floor,
    hip,
  });
}

function widthsFor(
  context: DraftContext,
  chosen: GatheredOptions,
  round: Figure<Mm>,
  seam: Figure<Mm>,
): { widths: Figure; notices: Notice[] } {
  if (chosen.widths !== undefined)
    return { widths: figure.count(chosen.widths, 'skirt.widthsAsked'), notices: [] };
  const cloth = context.clothWidth;
  const usable = Math.max(1, cloth.value - 2 * seam.value);
  const exact = round.value / usable;
  const enough = Math.max(1, stepsIn(round.value, usable, 'up'));
  const value = Math.min(MOST_WIDTHS, enough);
  const widths = figure.count(value, 'skirt.widths', { round, cloth, seam }, { exact });
  const notices =
    enough > MOST_WIDTHS
      ? [
          caution('skirt.tooManyWidths', {
            widths,
            wanted: figure.count(enough, 'skirt.widths', { round, cloth, seam }),
          }),
        ]
      : [];
  return { widths, notices };
}

/** A quarter of all the cloth round, raw edge to raw edge: where the waist is quartered to share out its gathers. */
function quarterOf(
  context: DraftContext,
  chosen: GatheredOptions,
  round: Figure<Mm>,
  widths: Figure,
  seam: Figure<Mm>,
): Figure<Mm> {
  const cloth = context.clothWidth;
  if (chosen.wholeWidths)
    return figure.length(mm((widths.value * cloth.value) / 4), 'skirt.gatheredQuarter', {
      widths,
      cloth,
      layers: LAYERS,
    });
  const edges = figure.count(2 * widths.value, 'skirt.sideSeams');
  const asked = mm((round.value + edges.value * seam.value) / 4);
  // Panels are cut to a mark: round up each panel, then take the quarter of all.
  const enough = mm((4 * asked) / widths.value);
  const chalked = roundTo(enough, context.mark, 'up');
  // A width of cloth that is just enough is used whole: the mark above it would lie beside the cloth.
  const panel = enough <= cloth.value ? Math.min(chalked, cloth.value) : chalked;
  return figure.length(
    mm((panel * widths.value) / 4),
    'skirt.trimmedQuarter',
    { round, edges, seam, layers: LAYERS },
    { exact: asked },
  );
}

function panelsOf(shapeFor: (around: Around) => PanelShape, widths: number): Panels {
  const [first, ...rest] = aroundInTurn(widths);
  const panel = (around: Around, i: number): Panel => ({
    ...(widths === 2
      ? ({ name: i === 0 ? 'front' : 'back', number: 1 } as const)
      : ({ name: 'width', number: i + 1 } as const)),
    shape: shapeFor(around),
    around,
  });
  return [panel(first, 0), ...rest.map((around, i) => panel(around, i + 1))];
}
