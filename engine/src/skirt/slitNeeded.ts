import { hemNeededAt, type HemNeed, type Walker } from '../body/index.ts';
import type { Figure } from '../figure/index.ts';
import { mm, roundTo, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { DraftContext } from './context.ts';
import type { Draft } from './cuts/index.ts';

/** Halvings that bring the slit's end to less than a hundredth of a millimetre on the tallest body. */
const HALVINGS = 18;

/** A slit ends where what is left closed above it is wide enough; above its end the skirt narrows with its flare. */
export function slitNeeded(
  { mark }: DraftContext,
  walker: Walker,
  draft: Draft,
  hemHeight: Figure<Mm>,
): Figure<Mm> | null {
  const taper = (draft.hemRound.value - draft.opening.value) / draft.finishedLength.value;
  const enough = (up: number): boolean => {
    const level = figure.length(mm(hemHeight.value + up), 'skirt.walkSlit');
    const need: HemNeed = hemNeededAt(walker, level);
    return draft.hemRound.value - taper * up >= need.everyday.value;
  };
  let low = 0;
  let high = Math.max(0, walker.hipHeight.value - hemHeight.value);
  if (!enough(high)) return null;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  // A slit counts only when it reaches above the knee.
  const aboveKnee = Math.max(high, walker.kneeHeight.value - hemHeight.value);
  return figure.length(
    roundTo(mm(aboveKnee), mark, 'up'),
    'skirt.walkSlit',
    { hem: draft.hemRound, hemHeight },
    { exact: mm(aboveKnee) },
  );
}
