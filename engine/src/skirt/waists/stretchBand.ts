import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { hipNeed } from '../goesOn.ts';
import { work } from '../works.ts';
import { bandWidth } from './bandWidth.ts';
import { gatherNotices, gatherRatioOf } from './elastic.ts';
import { bandHandle } from './handles.ts';
import { heldHeight, heldNotices } from './held.ts';
import { quartersOf, stripPart } from './strip.ts';
import type { Waist } from './waist.ts';

const heightLimits = { least: mm(10), most: mm(350) };

/** Defaults are common practice, no source. */
const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('stretch band'),
    /** Finished: 3 in lies under the belly, 8 to 10 in reach over it. */
    height: fields.usual(heightLimits, { inches: '3 in', metric: '8 cm' }),
    /** Band for each unit of waist where it sits. */
    bandShare: fields.percent(50, 100).prefault(85),
    /** How far the knit stretches, as a share of its own length. */
    mostStretch: z.number().min(1).max(3).default(1.5),
    seam: fields.usual({ least: mm(3), most: mm(60) }, { inches: '3/8 in', metric: '1 cm' }),
  });

export type StretchBandOptions = z.infer<ReturnType<typeof options>>;

/** Width of a knit as it is sold, open: about 150 cm. Common practice, no source. */
const KNIT_WIDTH = mm(1400);
const GATHER_ROWS = 2;

/** A doubled band of stretch knit that the panels are sewn to: worn under a growing belly or over it, and easy to sit in. */
export const stretchBand: Waist<StretchBandOptions> = {
  kind: 'stretch band',
  options,
  handles: (context, _, _draft, { above }) => [bandHandle(context, above.value, heightLimits)],
  top: (context, { height, seam }) => ({
    allowance: figure.length(seam, 'waist.seam'),
    turned: false,
    above: heldHeight(context, height),
    round: hipNeed(context.body),
    opens: false,
  }),
  plan(context, chosen, draft) {
    const { allowance: seam, above: height } = stretchBand.top(context, chosen);
    const { waist } = context.body;
    const { opening } = draft;
    const exact = mm(waist.value * chosen.bandShare);
    const band = figure.length(
      roundTo(exact, context.mark, 'up'),
      'waist.stretchBand',
      { waist, share: figure.percent(chosen.bandShare, 'waist.stretchShare') },
      { exact },
    );
    const most = figure.ratio(chosen.mostStretch, 'waist.stretchLimit');
    const reach = figure.length(mm(band.value * most.value), 'waist.stretchBandReach', { band, most });
    const gatherRatio = gatherRatioOf(opening, waist);
    const width = bandWidth(height, seam, context.mark);
    const part = stripPart({
      name: 'stretch band',
      cloth: 'knit',
      long: band,
      width,
      seam,
      longest: KNIT_WIDTH,
      mark: context.mark,
      // A knit stretches most across, so that the cloth's length runs up the body.
      grain: 'down',
      matches: quartersOf(band.value),
    });
    return {
      kind: stretchBand.kind,
      build: 'stretch band',
      topAllowance: seam,
      above: height,
      depth: mm(0),
      elastic: null,
      cord: null,
      closure: null,
      takenUp: null,
      gatherRatio,
      parts: [part],
      works: [
        work('band ends', figure.length(width.value, 'waist.joinLine', { width }), part.count),
        // Panels that the band reaches, stretched, are sewn to it as they are.
        ...(opening.value > reach.value
          ? [
              work(
                'gathering rows',
                figure.length(opening.value, 'waist.gatherLine', { top: opening }),
                GATHER_ROWS,
              ),
            ]
          : []),
        work('band seam', figure.length(opening.value, 'waist.bandSeamLine', { band: opening })),
      ],
      notices: [
        ...heldNotices(context, chosen.height, height),
        ...(draft.overlap ? [caution('waist.needsRound')] : []),
        ...reaches(context, reach, most),
        ...gatherNotices(gatherRatio, context.clothWeight),
      ],
    };
  },
};

/** The band, stretched, must pass over the hips. */
function reaches({ body, mark }: DraftContext, reach: Figure<Mm>, most: Figure): Notice[] {
  const needed = hipNeed(body);
  if (reach.value >= needed.value) return [];
  const exact = mm(needed.value / most.value);
  const enough = figure.length(
    roundTo(exact, mark, 'up'),
    'waist.stretchBandAsked',
    { needed, most },
    { exact },
  );
  return [caution('waist.bandDoesNotReach', { reach, needed, enough })];
}
