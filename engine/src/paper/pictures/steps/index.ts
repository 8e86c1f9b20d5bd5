import type { SkirtPlan } from '../../../plan/index.ts';
import type { Step } from '../../../sewing/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { drawing, type Drawing } from '../../drawing/index.ts';
import { WIDTH } from './picture.ts';
import { pictures } from './registry.ts';

/**
 * The drawing of one step, half a column wide, from the plan's own panels, rows and numbers. Cloth shows its right
 * side washed with a light tone and its wrong side with thin falling lines.
 */
export function stepPicture(plan: SkirtPlan, step: Step, speaker: Speaker): Drawing {
  const { height, marks } = pictures[step.id]({ plan, step, speaker });
  const { steps, papers } = speaker.words;
  const title = steps[step.id];
  return drawing({
    width: mm(WIDTH),
    height: mm(height),
    title,
    description: speaker.text(papers.altStep, { title }),
    marks,
  });
}
