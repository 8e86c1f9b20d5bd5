import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { figure } from '../codes.ts';
import { mm } from '../../units/index.ts';
import { work } from '../works.ts';
import { adultHemFloor, commonOptions, cutLength, hemOf, lengthsOf, roundOf } from './common.ts';
import type { Cut } from './cut.ts';
import { sewn, turned } from './edges.ts';
import { goreHang } from './goreHang.ts';
import { goreLevels } from './goreLevels.ts';
import { gorePanels } from './gorePanels.ts';
import { goreMarks } from './goreMarks.ts';
import { goresOf } from './goreWidths.ts';
import { goredHandles } from './goredHandles.ts';
import { frontHemLimits, fullnessLimits, hemRoundLimits } from './limits.ts';
import { oneRound, seamSide } from './round.ts';

/** Defaults are common practice, no source. */
const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('gored'),
    gores: z.literal([4, 6, 8, 10]).default(6),
    /** Width of the front gore for each unit of another's, from top to hem. */
    front: z.number().min(0.5).max(3).default(1),
    /** Finished hem of the front gore where the maker wants one of her own; the others share the rest. */
    frontHem: fields.length(frontHemLimits).optional(),
    /** Cloth round the top for each unit of the widest part of the body, where the skirt is pulled on. */
    fullness: z.number().min(fullnessLimits.least).max(fullnessLimits.most).default(1.2),
    /** Least that the hem is wider, all round, than the top that is pulled on or than the hips of a fitted skirt. */
    leastFlare: fields.usual({ least: mm(0), most: mm(4000) }, { inches: '24 in', metric: '60 cm' }),
    hemFloor: adultHemFloor(fields),
    /** Finished hem all round, where the maker wants one of her own. */
    hemRound: fields.length(hemRoundLimits).optional(),
    ...commonOptions(fields),
  });

export type GoredOptions = z.infer<ReturnType<typeof options>>;

/**
 * Panels narrow at the waist and wide at the hem. Pulled on, each is a piece of a ring; where the waist opens, its top is fitted
 * and its sides widen to the hips first. What is asked of the round is shared out, and each half width chalked at the next mark.
 */
export const gored: Cut<GoredOptions> = {
  kind: 'gored',
  options,
  handles: goredHandles,
  // Turned down on the arc of a gore, a casing falls too short to lie flat.
  usualWaist: () => 'separate casing',
  draft(context, chosen, need) {
    const { finished, panel: length } = lengthsOf(context, need);
    const hem = hemOf(context, chosen.hem);
    const margin = figure.length(chosen.margin, 'skirt.margin');
    const seam = figure.length(chosen.sideSeam, 'skirt.sideSeam');
    const gores = goresOf(chosen.gores, chosen.front, seam);
    const levels = goreLevels(context, chosen, need, gores, length);
    const cut = cutLength(length, need.allowance, hem, margin, context.mark);
    const side = sewn(seam.value);
    const panels = gorePanels(context, gores, levels, {
      length,
      need,
      top: { depth: need.allowance.value, turned: need.turned },
      hem: turned(hem.value),
      left: side,
      right: side,
      // What rounding up added to the cut length is margin too.
      margin: mm(cut.value - length.value - need.allowance.value - hem.value),
    });
    const hung = goreHang({ context, gores, levels, length, need, hem });
    const marks = goreMarks({ context, gores, levels, cut, length, need, hem, rise: hung.hang.extraDepth });
    const opening = levels.fitted
      ? figure.length(levels.fitted.value, 'skirt.fittedTop', { round: levels.fitted })
      : roundOf('skirt.opening', marks.waistQuarter, seam, chosen.gores);
    const hemRound = roundOf('skirt.hemRound', marks.hemQuarter, seam, chosen.gores);
    return {
      kind: gored.kind,
      marking: 'by piece',
      ...oneRound(panels, { length, top: opening, bottom: hemRound, seams: chosen.gores }),
      marks,
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
      works: [work('gore seam', seamSide(panels[0].shape, need.allowance, hem), chosen.gores)],
      parts: [],
      notices: [...levels.notices, ...hung.notices],
    };
  },
};
