import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { work } from '../works.ts';
import { cordOnChild, isChild } from './cordOnChild.ts';
import { gatherNotices, gatherRatioOf, narrow } from './elastic.ts';
import { forExpecting } from './expecting.ts';
import { turnedHandle } from './handles.ts';
import { turnedTop } from './turnedTop.ts';
import type { Cord, Waist } from './waist.ts';

const cordWidthLimits = { least: mm(2), most: mm(60) };

const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('drawstring'),
    cordWidth: fields.usual(cordWidthLimits, { inches: '3/8 in', metric: '1 cm' }),
    /** A drawstring's tunnel is cord + ¼ in (apparel quality-standards manual). */
    ease: fields.usual(narrow, { inches: '1/4 in', metric: '0.6 cm' }),
    turnUnder: fields.usual(narrow, { inches: '1/4 in', metric: '0.5 cm' }),
    /** What is left at either end to tie a bow, once it is drawn up to the waist. Common practice, no source. */
    tieEnd: fields.usual({ least: mm(0), most: mm(1000) }, { inches: '12 in', metric: '30 cm' }),
    /** Least that shows at either end when the skirt is spread flat, so that no end slips into the tunnel. */
    leastEnd: fields.usual({ least: mm(0), most: mm(300) }, { inches: '2 in', metric: '5 cm' }),
  });

export type DrawstringOptions = z.infer<ReturnType<typeof options>>;

/** Both ends come out in front, each through an eyelet or a buttonhole. */
const HOLES = 2;
/** Times back and forth over the cord where it is caught at the centre back. Common practice, no source. */
const CATCH_ROUNDS = 2;

/** The top edge turned to the inside along a fold, with a cord run through the tunnel and tied in front. */
export const drawstring: Waist<DrawstringOptions> = {
  kind: 'drawstring',
  options,
  handles: (context, { cordWidth, ease, turnUnder }) => [
    turnedHandle(context, {
      key: 'cordWidth',
      width: cordWidth,
      limits: cordWidthLimits,
      rest: ease + turnUnder,
    }),
  ],
  top: (context, { cordWidth, ease, turnUnder }) =>
    turnedTop(
      context,
      figure.length(mm(cordWidth + ease + turnUnder), 'waist.cordCasing', {
        cord: figure.length(cordWidth, 'waist.cord'),
        ease: figure.length(ease, 'waist.cordEase'),
        turnUnder: figure.length(turnUnder, 'waist.turnUnder'),
      }),
    ),
  plan(context, chosen, draft) {
    const { opening } = draft;
    const { waist } = context.body;
    const { allowance, above } = drawstring.top(context, chosen);
    const cord = cordOf(context, chosen, opening);
    const gatherRatio = gatherRatioOf(opening, waist);
    const hole = figure.length(mm(2 * (cord.width.value + chosen.ease)), 'waist.eyeletLine', {
      cord: cord.width,
    });
    const rounds = figure.count(CATCH_ROUNDS, 'waist.rounds');
    const caught = figure.length(mm(CATCH_ROUNDS * cord.width.value), 'waist.cordCatchLine', {
      cord: cord.width,
      rounds,
    });
    return {
      kind: drawstring.kind,
      build: 'turned',
      topAllowance: allowance,
      above,
      depth: mm(chosen.cordWidth + chosen.ease),
      elastic: null,
      cord,
      closure: null,
      takenUp: null,
      gatherRatio,
      parts: [],
      works: [
        work('casing', figure.length(opening.value, 'waist.casingRound', { round: opening })),
        work('cord eyelet', hole, HOLES),
        ...(isChild(context.body) ? [work('cord catch', caught)] : []),
      ],
      notices: [
        ...(draft.overlap ? [caution('waist.needsRound')] : []),
        ...gatherNotices(gatherRatio, context.clothWeight),
        ...cordOnChild(context, cord, opening),
        ...forExpecting(context),
      ],
    };
  },
};

/** Long enough to tie at the waist, and never so short that an end vanishes when the skirt is spread flat. */
function cordOf({ body, mark }: DraftContext, chosen: DrawstringOptions, opening: Figure<Mm>): Cord {
  const tieEnd = figure.length(chosen.tieEnd, 'waist.cordTieEnd');
  const leastEnd = figure.length(chosen.leastEnd, 'waist.cordLeastEnd');
  const tied = figure.length(mm(body.waist.value + 2 * tieEnd.value), 'waist.cordTied', {
    waist: body.waist,
    tieEnd,
  });
  const spread = figure.length(mm(opening.value + 2 * leastEnd.value), 'waist.cordSpread', {
    opening,
    leastEnd,
  });
  const exact = mm(Math.max(tied.value, spread.value));
  const cut = figure.length(roundTo(exact, mark, 'up'), 'waist.cordCut', { tied, spread }, { exact });
  return {
    width: figure.length(chosen.cordWidth, 'waist.cord'),
    cut,
    freeEnd: figure.length(mm((cut.value - opening.value) / 2), 'waist.cordFree', { cut, opening }),
  };
}
