import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Part } from '../panel.ts';
import { buttonWorks } from '../buttons.ts';
import { work, type Work } from '../works.ts';
import { bandWidth } from './bandWidth.ts';
import { forExpecting } from './expecting.ts';
import { bandHandle } from './handles.ts';
import { heldHeight, heldNotices } from './held.ts';
import { seamOption } from './foldedStrip.ts';
import { openingHandles, openingLimits, openingOf } from './opening.ts';
import { stripPart } from './strip.ts';
import { takeUp, takeUpOptions } from './takeUp.ts';
import type { Waist } from './waist.ts';

const heightLimits = { least: mm(10), most: mm(150) };

/** Defaults are common practice, no source; published blocks have 3 cm of ease at the waist. */
const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('plain waistband'),
    height: fields.usual(heightLimits, { inches: '1 1/2 in', metric: '4 cm' }),
    seam: seamOption(fields),
    ease: fields.usual({ least: mm(0), most: mm(100) }, { inches: '1 in', metric: '2.5 cm' }),
    opens: z.enum(['zip', 'placket']).default('zip'),
    /** From the top of the waist down, where the maker wants one of her own. */
    openingDepth: fields.length(openingLimits).optional(),
    overlap: fields.usual({ least: mm(0), most: mm(150) }, { inches: '1 in', metric: '2.5 cm' }),
    ...takeUpOptions(fields),
  });

export type PlainBandOptions = z.infer<ReturnType<typeof options>>;

/** Finished width of a bound placket. Common practice, no source. */
const PLACKET = { inches: inches(1), metric: mm(25) } as const;
const seamOf = ({ seam }: PlainBandOptions): Figure<Mm> => figure.length(seam, 'waist.seam');

/** Round of the closed band, at a mark, never tighter than the waist and its ease. */
function closedBand({ body, mark }: DraftContext, { ease }: PlainBandOptions): Figure<Mm> {
  const exact = mm(body.waist.value + ease);
  return figure.length(
    roundTo(exact, mark, 'up'),
    'waist.band',
    { waist: body.waist, ease: figure.length(ease, 'waist.bandEase') },
    { exact },
  );
}

/** A band that does not stretch, with an opening below it so that it passes over the hips. */
export const plainBand: Waist<PlainBandOptions> = {
  kind: 'plain waistband',
  options,
  handles: (context, _, draft, waist) => [
    bandHandle(context, waist.above.value, heightLimits),
    ...openingHandles(context, draft, waist),
  ],
  top: (context, chosen) => ({
    allowance: seamOf(chosen),
    turned: false,
    above: heldHeight(context, chosen.height),
    round: closedBand(context, chosen),
    opens: true,
  }),
  plan(context, chosen, draft) {
    const [seam, height] = [seamOf(chosen), heldHeight(context, chosen.height)];
    const band = closedBand(context, chosen);
    const overlap = draft.overlap?.width ?? figure.length(chosen.overlap, 'waist.bandOverlap');
    const laid = figure.length(mm(band.value + overlap.value), 'waist.bandLaid', { band, overlap });
    // The edge of a wrap lies under the whole band, its overlap too; else the overlap stands free beside the opening.
    const taken = takeUp(context, chosen, {
      ...(draft.overlap ? { top: draft.rounds[0].top, band: laid } : { top: draft.opening, band }),
      panelLength: draft.panelLength.value,
    });
    const width = bandWidth(height, seam, context.mark);
    const part = stripPart({
      name: 'waistband',
      cloth: 'skirt',
      long: laid,
      width,
      seam,
      longest: context.clothWidth.value,
      mark: context.mark,
      grain: 'either',
      matches: [0, 1, 2, 3]
        .map((quarter) => mm(overlap.value + (quarter * band.value) / 4))
        .filter((at) => at > 1),
    });
    const opened = draft.overlap ? null : openingOf(context, draft, band, height, chosen.openingDepth);
    const placket = opened && chosen.opens === 'placket' ? placketOf(context, opened.below, seam) : null;
    return {
      kind: plainBand.kind,
      build: 'band',
      topAllowance: seam,
      above: height,
      depth: taken.depth,
      elastic: null,
      cord: null,
      closure: opened && { kind: chosen.opens, depth: opened.depth, overlap, buttons: 1 },
      takenUp: taken.takenUp,
      gatherRatio: taken.gathered,
      parts: placket ? [part, placket] : [part],
      works: [
        ...taken.works,
        ...(part.count > 1
          ? [work('strip join', figure.length(width.value, 'waist.joinLine', { width }), part.count - 1)]
          : []),
        work('band seam', figure.length(laid.value, 'waist.bandSeamLine', { band: laid })),
        work('band fold', figure.length(laid.value, 'waist.bandFoldLine', { band: laid })),
        work('band ends', figure.length(height.value, 'waist.bandEndLine', { height }), 2),
        ...(opened ? closing(opened.below, chosen.opens) : []),
      ],
      notices: [
        ...heldNotices(context, chosen.height, height),
        ...taken.notices,
        ...(opened?.notices ?? []),
        ...forExpecting(context),
      ],
    };
  },
};

/** A strip that binds both edges of the slit. */
function placketOf(context: DraftContext, below: Figure<Mm>, seam: Figure<Mm>): Part {
  const finished = Number.isInteger(context.mark) ? PLACKET.metric : PLACKET.inches;
  return stripPart({
    name: 'placket',
    cloth: 'skirt',
    long: figure.length(mm(2 * below.value), 'waist.placketLength', { below }),
    width: bandWidth(figure.length(finished, 'waist.placketWidth'), seam, context.mark),
    seam,
    longest: context.clothWidth.value,
    mark: context.mark,
    grain: 'either',
    matches: [below.value],
  });
}

/** Both edges of the opening are sewn; the band above it is buttoned. */
function closing(below: Figure<Mm>, opens: PlainBandOptions['opens']): Work[] {
  const both = mm(2 * below.value);
  return [
    opens === 'zip'
      ? work('zip', figure.length(both, 'waist.zipLine', { below }))
      : work('placket', figure.length(both, 'waist.placketLine', { below }), 2),
    ...buttonWorks(1),
  ];
}
