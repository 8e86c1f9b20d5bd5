import { z } from 'zod';
import { usualKind, type Fields } from '../../fields/index.ts';
import { mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import { work } from '../works.ts';
import {
  elasticCut,
  elasticOptions,
  elasticWidthLimits,
  gatherNotices,
  gatherRatioOf,
  narrow,
  stretchNotices,
} from './elastic.ts';
import { elasticWorks } from './elasticWorks.ts';
import { forExpecting } from './expecting.ts';
import { turnedHandle } from './handles.ts';
import { turnedTop } from './turnedTop.ts';
import type { Waist } from './waist.ts';

const options = (fields: Fields) =>
  z.strictObject({
    kind: usualKind('turned casing'),
    ...elasticOptions(fields),
    turnUnder: fields.usual(narrow, { inches: '1/4 in', metric: '0.5 cm' }),
  });

export type TurnedCasingOptions = z.infer<ReturnType<typeof options>>;

/**
 * The top edge turned to the inside along a fold, with elastic run through the tunnel. Depth = elastic + ease
 * + turn-under: ¾ in elastic takes 1¼ in (published tutorials' figure; references to fold-down casings agree).
 */
export const turnedCasing: Waist<TurnedCasingOptions> = {
  kind: 'turned casing',
  options,
  handles: (context, { elasticWidth, ease, turnUnder }) => [
    turnedHandle(context, {
      key: 'elasticWidth',
      width: elasticWidth,
      limits: elasticWidthLimits,
      rest: ease + turnUnder,
    }),
  ],
  top: (context, { elasticWidth, ease, turnUnder }) =>
    turnedTop(
      context,
      figure.length(mm(elasticWidth + ease + turnUnder), 'waist.casing', {
        elastic: figure.length(elasticWidth, 'waist.elastic'),
        ease: figure.length(ease, 'waist.elasticEase'),
        turnUnder: figure.length(turnUnder, 'waist.turnUnder'),
      }),
    ),
  plan(context, chosen, draft) {
    const { opening } = draft;
    const { waist } = context.body;
    const cut = elasticCut(waist, chosen, context.mark);
    const gatherRatio = gatherRatioOf(opening, waist);
    const { allowance, above } = turnedCasing.top(context, chosen);
    const width = figure.length(chosen.elasticWidth, 'waist.elastic');
    return {
      kind: turnedCasing.kind,
      build: 'turned',
      topAllowance: allowance,
      above,
      depth: mm(chosen.elasticWidth + chosen.ease),
      elastic: { width, cut, where: 'round' },
      cord: null,
      closure: null,
      takenUp: null,
      gatherRatio,
      parts: [],
      works: [
        work('casing', figure.length(opening.value, 'waist.casingRound', { round: opening })),
        ...elasticWorks(width, draft.rounds[0].seams),
      ],
      notices: [
        ...(draft.overlap ? [caution('waist.needsRound')] : []),
        ...stretchNotices(context, chosen, cut),
        ...gatherNotices(gatherRatio, context.clothWeight),
        ...forExpecting(context),
      ],
    };
  },
};
