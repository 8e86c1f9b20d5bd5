import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import { hipNeed } from '../goesOn.ts';
import { work } from '../works.ts';
import { elasticCut, gatherNotices, gatherRatioOf, stretchNotices } from './elastic.ts';
import { elasticWorks } from './elasticWorks.ts';
import { forExpecting } from './expecting.ts';
import { foldedHeight, foldedStrip, foldedStripOptions, heldStrip } from './foldedStrip.ts';
import { stripHandle } from './handles.ts';
import { heldNotices } from './held.ts';
import { quartersOf, stripPart } from './strip.ts';
import type { Waist } from './waist.ts';

const options = (fields: Fields) =>
  z.strictObject({ kind: z.literal('separate casing'), ...foldedStripOptions(fields) });

export type SeparateCasingOptions = z.infer<ReturnType<typeof options>>;

/** A strip of the skirt's cloth, folded along its middle and sewn to the top, with elastic run through it. */
export const separateCasing: Waist<SeparateCasingOptions> = {
  kind: 'separate casing',
  options,
  handles: (context, chosen) => [stripHandle('casing', context, chosen)],
  top(context, chosen) {
    const { seam, height } = foldedStrip(heldStrip(context, chosen), context.mark);
    return { allowance: seam, turned: false, above: height, round: hipNeed(context.body), opens: false };
  },
  plan(context, asked, draft) {
    const chosen = heldStrip(context, asked);
    const { opening } = draft;
    const { waist } = context.body;
    const strip = foldedStrip(chosen, context.mark);
    const elastic = figure.length(chosen.elasticWidth, 'waist.elastic');
    const cut = elasticCut(waist, chosen, context.mark);
    const gatherRatio = gatherRatioOf(opening, waist);
    const part = stripPart({
      name: 'casing strip',
      cloth: 'skirt',
      long: opening,
      width: strip.width,
      seam: strip.seam,
      longest: context.clothWidth.value,
      mark: context.mark,
      grain: 'either',
      matches: quartersOf(opening.value),
    });
    const round = figure.length(opening.value, 'waist.casingRound', { round: opening });
    return {
      kind: separateCasing.kind,
      build: 'strip',
      topAllowance: strip.seam,
      above: strip.height,
      depth: mm(0),
      elastic: { width: elastic, cut, where: 'round' },
      cord: null,
      closure: null,
      takenUp: null,
      gatherRatio,
      parts: [part],
      works: [
        work(
          'casing join',
          figure.length(strip.width.value, 'waist.joinLine', { width: strip.width }),
          part.count,
        ),
        work('casing seam', round),
        work('casing', round),
        ...elasticWorks(elastic, draft.rounds[0].seams),
      ],
      notices: [
        ...heldNotices(context, foldedHeight(asked), strip.height),
        ...(draft.overlap ? [caution('waist.needsRound')] : []),
        ...stretchNotices(context, chosen, cut),
        ...gatherNotices(gatherRatio, context.clothWeight),
        ...forExpecting(context),
      ],
    };
  },
};
