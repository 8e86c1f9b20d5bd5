import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure, problem } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { hipNeed } from '../goesOn.ts';
import type { PartName } from '../panel.ts';
import { work } from '../works.ts';
import { gatherNotices, gatherRatioOf } from './elastic.ts';
import { elasticCatches } from './elasticWorks.ts';
import { forExpecting } from './expecting.ts';
import { foldedHeight, foldedStrip, foldedStripOptions, heldStrip } from './foldedStrip.ts';
import { stripHandle } from './handles.ts';
import { heldNotices } from './held.ts';
import { topHalves } from './frontTop.ts';
import { stripPart } from './strip.ts';
import { takeUp, takeUpOptions } from './takeUp.ts';
import type { Waist } from './waist.ts';

const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('flat front'),
    ...foldedStripOptions(fields),
    /** How much of the waist lies flat in front. */
    frontShare: fields.percent(25, 75).prefault(50),
    ...takeUpOptions(fields),
  });

export type FlatFrontOptions = z.infer<ReturnType<typeof options>>;

/** Flat front of the band, at a mark. */
function flatPart({ body, mark }: DraftContext, { frontShare }: FlatFrontOptions): Figure<Mm> {
  const exact = mm(body.waist.value * frontShare);
  return figure.length(
    roundTo(exact, mark, 'nearest'),
    'waist.flatFront',
    { waist: body.waist, share: figure.percent(frontShare, 'waist.frontShare') },
    { exact },
  );
}

/** A band: interfaced and flat in front, and a casing with elastic behind, caught in the band's side seams. */
export const flatFront: Waist<FlatFrontOptions> = {
  kind: 'flat front',
  options,
  handles: (context, chosen) => [stripHandle('band', context, chosen)],
  top(context, chosen) {
    const { seam, height } = foldedStrip(heldStrip(context, chosen), context.mark);
    const needed = hipNeed(context.body);
    const front = flatPart(context, chosen);
    // What the front holds flat is lost where it is pulled on: the back half must have the rest.
    const round = mm(2 * (needed.value - front.value));
    return {
      allowance: seam,
      turned: false,
      above: height,
      round: round > needed.value ? figure.length(round, 'waist.flatRound', { needed, front }) : needed,
      opens: false,
    };
  },
  plan(context, asked, draft) {
    const chosen = heldStrip(context, asked);
    const strip = foldedStrip(chosen, context.mark);
    const front = flatPart(context, chosen);
    const top = topHalves(draft);
    const taken = takeUp(context, chosen, {
      top: top.front,
      band: front,
      panelLength: draft.panelLength.value,
    });
    const laid = figure.length(mm(front.value + top.back.value), 'waist.flatLaid', { front, back: top.back });
    const width = figure.length(chosen.elasticWidth, 'waist.elastic');
    const cut = backElastic(context, chosen, front);
    const part = (name: PartName, long: Figure<Mm>) =>
      stripPart({
        name,
        cloth: 'skirt',
        long,
        width: strip.width,
        seam: strip.seam,
        longest: context.clothWidth.value,
        mark: context.mark,
        grain: 'either',
        matches: [mm(long.value / 2)],
      });
    const parts = [part('waistband', front), part('waistband back', top.back)];
    const behind = mm(Math.max(1, context.body.waist.value - front.value));
    const ofBack = figure.length(behind, 'waist.backWaist', { waist: context.body.waist, front });
    return {
      kind: flatFront.kind,
      build: 'band',
      topAllowance: strip.seam,
      above: strip.height,
      depth: taken.depth,
      elastic: { width, cut, where: 'back' },
      cord: null,
      closure: null,
      takenUp: taken.takenUp,
      gatherRatio: gatherRatioOf(draft.opening, context.body.waist),
      parts,
      works: [
        ...taken.works,
        work(
          'band ends',
          figure.length(strip.width.value, 'waist.joinLine', { width: strip.width }),
          parts.reduce((sum, { count }) => sum + count, 0),
        ),
        work('band seam', figure.length(laid.value, 'waist.bandSeamLine', { band: laid })),
        work('band fold', figure.length(laid.value, 'waist.bandFoldLine', { band: laid })),
        elasticCatches(width, 2),
      ],
      notices: [
        ...heldNotices(context, foldedHeight(asked), strip.height),
        ...(draft.overlap ? [caution('waist.needsRound')] : []),
        ...once([
          ...taken.notices,
          ...backNotices(context, chosen, { front, cut, laid }),
          ...gatherNotices(gatherRatioOf(top.back, ofBack), context.clothWeight),
        ]),
        ...forExpecting(context),
      ],
    };
  },
};

/** Front and back may both be too full: that is told once. */
const once = (notices: readonly Notice[]): Notice[] =>
  notices.filter(({ code }, i) => notices.findIndex((each) => each.code === code) === i);

/** Its share of the waist behind, and at either end what is caught in the band's side seam. */
function backElastic({ body, mark }: DraftContext, chosen: FlatFrontOptions, front: Figure<Mm>): Figure<Mm> {
  const exact = mm((body.waist.value - front.value) * chosen.elasticShare + 2 * chosen.join);
  return figure.length(
    roundTo(exact, mark, 'up'),
    'waist.backElastic',
    {
      waist: body.waist,
      front,
      share: figure.percent(chosen.elasticShare, 'waist.elasticShare'),
      join: figure.length(chosen.join, 'waist.elasticJoin'),
    },
    { exact },
  );
}

/** What binary fractions lose is no tightness. */
const HAIR = 0.01;

interface Back {
  readonly front: Figure<Mm>;
  readonly cut: Figure<Mm>;
  readonly laid: Figure<Mm>;
}

/** Flat front and back laid out must pass the hips, and the elastic behind must stretch over what the front leaves. */
function backNotices(
  { body, mark }: DraftContext,
  chosen: FlatFrontOptions,
  { front, cut, laid }: Back,
): Notice[] {
  const { hip } = body;
  const needed = hipNeed(body);
  const join = figure.length(chosen.join, 'waist.elasticJoin');
  const stretch = figure.ratio(
    (hip.value - front.value) / (cut.value - 2 * chosen.join),
    'waist.backStretch',
    {
      hip,
      front,
      cut,
      join,
    },
  );
  const most = chosen.mostStretch;
  const exact = mm((hip.value - front.value) / most + 2 * chosen.join);
  const enough = figure.length(
    roundTo(exact, mark, 'up'),
    'waist.backElasticAsked',
    { hip, front, most: figure.ratio(most, 'waist.stretchLimit'), join },
    { exact },
  );
  return [
    ...(laid.value < needed.value - HAIR ? [problem('waist.backTooShort', { laid, needed, front })] : []),
    ...(stretch.value > most
      ? [caution('waist.backOverstretched', { cut, hip, front, stretch, enough })]
      : []),
  ];
}
