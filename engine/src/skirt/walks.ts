import { levelWhereEnough, walkerOf } from '../body/index.ts';
import type { Figure, Notice } from '../figure/index.ts';
import { mm, roundTo, type Mm } from '../units/index.ts';
import { caution, figure, problem } from './codes.ts';
import type { DraftContext } from './context.ts';
import type { Draft } from './cuts/index.ts';
import type { Slits } from './extras/index.ts';
import { slitNeeded } from './slitNeeded.ts';

/**
 * A hem below the bare step can't be walked in; below the everyday figure it can, but not up stairs. Either way
 * the wider hem, the shorter skirt and the slit that would do are worked out from the same curve.
 */
export function canWalk(context: DraftContext, draft: Draft, slits: Slits | null): Notice[] {
  const { stride, body } = context;
  const { hemRound } = draft;
  const { bare, everyday } = stride;
  if (!bare || !everyday || hemRound.value >= everyday.value) return [];
  const walker = walkerOf(body);
  if (!walker || !body.hemHeight) return [];
  const isProblem = hemRound.value < bare.value;
  // Where nothing is marked at a fold, the round itself is what to widen to.
  const byMark = draft.marking === 'at the fold' || draft.marking === 'straight widths';
  const wider = byMark ? widerMark(context, draft, everyday) : everyday;
  const hem = hemRound;
  const by = byMark ? 'mark' : 'round';
  const needed = isProblem ? bare : everyday;
  const level = levelWhereEnough(walker, hemRound, 'everyday');
  const slit = slitNeeded(context, walker, draft, body.hemHeight);
  // A slit that reaches high enough is the answer; a wrap opens as far as the step asks.
  if (draft.overlap || (slits && slit && slits.height.value >= slit.value)) return [];
  // Where no level of the leg is narrow enough for this hem, only a wider one helps.
  if (!level || !slit)
    return [
      isProblem
        ? problem('skirt.hemBelowStrideWiden', { hem, needed, wider, by })
        : caution('skirt.hemNarrowWiden', { hem, needed, wider, by }),
    ];
  if (slits) {
    const params = { hem, needed, wider, by, height: slits.height, slit };
    return [isProblem ? problem('skirt.slitTooLow', params) : caution('skirt.slitTooLow', params)];
  }
  const shorter = shorterBy(context, level, body.hemHeight);
  const params = { hem, needed, wider, by, shorter, slit };
  return [
    isProblem ? problem('skirt.hemBelowStride', params) : caution('skirt.hemNarrowForEveryday', params),
  ];
}

function widerMark({ mark }: DraftContext, draft: Draft, need: Figure<Mm>): Figure<Mm> {
  const seam = draft.sideSeamAllowance;
  const edges = figure.count(2 * draft.sideSeams, 'skirt.sideSeams');
  const exact = mm((need.value + edges.value * seam.value) / 4);
  return figure.length(roundTo(exact, mark, 'up'), 'skirt.walkWider', { need, edges, seam }, { exact });
}

/** Taken off the length with the hem mark kept. */
function shorterBy({ mark }: DraftContext, level: Figure<Mm>, hemHeight: Figure<Mm>): Figure<Mm> {
  const exact = mm(Math.max(0, level.value - hemHeight.value));
  return figure.length(roundTo(exact, mark, 'up'), 'skirt.walkShorter', { level, hemHeight }, { exact });
}
