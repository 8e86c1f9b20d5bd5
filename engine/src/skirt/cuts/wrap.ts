import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { buttonWorks } from '../buttons.ts';
import { work } from '../works.ts';
import { adultHemFloor, commonOptions, cutLength, hemOf, lengthsOf } from './common.ts';
import type { Cut } from './cut.ts';
import { hemRoundLimits, overlapLimits } from './limits.ts';
import { oneRound, seamSide } from './round.ts';
import { overlapNotices } from './wrapOpens.ts';
import { wrapHandles } from './wrapHandles.ts';
import { wrapPanels } from './wrapPanels.ts';
import { freeEdge, wrapHang, wrapMarks } from './wrapMarks.ts';
import { tiesOf } from './wrapTies.ts';
import { roundOfWrap, wrapWidths } from './wrapWidths.ts';

/** One at each end of the band: the under end is buttoned too. Common practice, no source. */
const BUTTONS = 2;

/** Defaults are common practice, no source. */
const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('wrap'),
    /** How far the ends lie over one another at the waist; a quarter of the waist, and 8 in on adults, where not given. */
    overlap: fields.length(overlapLimits).optional(),
    /** Depth of the turned free edges as it shows; their raw edge is turned under as the hem's is. */
    facing: fields.usual({ least: mm(6), most: mm(150) }, { inches: '1 in', metric: '2.5 cm' }),
    closes: z.enum(['ties', 'buttons']).default('ties'),
    /** Finished; where not given each tie goes round the waist once and has 15 in or 40 cm for the bow. */
    tieLength: fields.length({ least: mm(100), most: mm(4000) }).optional(),
    tieWidth: fields.usual({ least: mm(6), most: mm(150) }, { inches: '1 in', metric: '2.5 cm' }),
    /** Hem for each unit of the top, both spread flat, at least. */
    flare: z.number().min(1).max(4).default(1.5),
    /** Least that the hem is wider than the top, both spread flat. */
    leastFlare: fields.usual({ least: mm(0), most: mm(4000) }, { inches: '24 in', metric: '60 cm' }),
    hemFloor: adultHemFloor(fields),
    /** Finished hem spread flat, overlap included, where the maker wants one of her own. */
    hemRound: fields.length(hemRoundLimits).optional(),
    ...commonOptions(fields),
  });

export type WrapOptions = z.infer<ReturnType<typeof options>>;

/**
 * A back and two fronts that lie over one another: a piece of a ring spread flat, open in front. The overlap grows towards the
 * hem with the flare. Top and hem are shared among the panels and each half width chalked at the next mark; what rounding adds to
 * the top is overlap.
 */
export const wrap: Cut<WrapOptions> = {
  kind: 'wrap',
  options,
  handles: wrapHandles,
  usualWaist: () => 'plain waistband',
  draft(context, chosen, need) {
    const { finished, panel: length } = lengthsOf(context, need);
    const hem = hemOf(context, chosen.hem);
    const margin = figure.length(chosen.margin, 'skirt.margin');
    const seam = figure.length(chosen.sideSeam, 'skirt.sideSeam');
    const turnUnder = mm(Math.min(chosen.hemTurnUnder, hem.value / 2));
    const shown = figure.length(chosen.facing, 'skirt.facing');
    const facing = figure.length(mm(chosen.facing + turnUnder), 'skirt.facingDepth', {
      facing: shown,
      under: figure.length(turnUnder, 'skirt.facingUnder'),
    });
    const edges = { seam, facing };
    const widths = wrapWidths(context, chosen, need, { length, ...edges });
    const cut = cutLength(length, need.allowance, hem, margin, context.mark);
    const panels = wrapPanels(context, widths, {
      length,
      need,
      hem,
      ...edges,
      margin: mm(cut.value - length.value - need.allowance.value - hem.value),
    });
    const [left, back] = panels;
    const hung = wrapHang({ context, widths, edges, length, need, hem });
    const opening = roundOfWrap(widths.top, edges);
    const hemRound = roundOfWrap(widths.hem, edges);
    const facings = freeEdge(left.shape, need.allowance, hem);
    const closing =
      chosen.closes === 'ties' ? tiesOf(context, chosen, seam) : { parts: [], works: buttonWorks(BUTTONS) };
    return {
      kind: wrap.kind,
      marking: 'by piece',
      ...oneRound(panels, { length, top: opening, bottom: hemRound, seams: 2 }),
      marks: wrapMarks({ context, widths, cut, length, need, hem, rise: hung.hang.extraDepth }),
      hang: hung.hang,
      sideSeamAllowance: seam,
      hemAllowance: hem,
      hemTurnUnder: turnUnder,
      margin,
      finishedLength: finished,
      panelLength: length,
      opening,
      hemRound,
      overlap: { width: widths.overlap, facing: shown, closes: chosen.closes },
      works: [
        work('side seam', seamSide(back.shape, need.allowance, hem), 2),
        work('facing', facings, 2),
        ...closing.works,
      ],
      parts: closing.parts,
      notices: [...widths.notices, ...hung.notices, ...overlapNotices(context, widths, opening, hemRound)],
    };
  },
};
