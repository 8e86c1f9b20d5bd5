import type { SkirtCloth } from '../../../cloth/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Step } from '../../../sewing/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { drawing, eachMark, type Drawing, type Mark } from '../../drawing/index.ts';
import { clothLegend, washOfCloth } from '../clothInks.ts';
import { WIDTH } from './picture.ts';
import { pictures } from './registry.ts';
import { tonedByStep } from './tone.ts';

/**
 * The drawing of one step, half a column wide, from the plan's own panels, rows and numbers. Cloth shows its right
 * side washed with a light tone and its wrong side with thin falling lines.
 */
export function stepPicture(plan: SkirtPlan, step: Step, speaker: Speaker): Drawing {
  const scene = { plan, step, speaker };
  const made = pictures[step.id](scene);
  const marks = tonedByStep(scene, made.marks);
  const legend = clothLegend(clothsIn(plan, marks), speaker, LEGEND(made.height));
  const { steps, papers } = speaker.words;
  const title = steps[step.id];
  return drawing({
    width: mm(WIDTH),
    height: mm(made.height + (legend.height > 0 ? legend.height + 2 : 0)),
    title,
    description: speaker.text(papers.altStep, { title }),
    marks: [...marks, ...legend.marks],
  });
}

/** Below a drawing, words as large as its own. */
const LEGEND = (top: number) => ({ left: 2, top: top + 1, room: WIDTH - 4, size: mm(3) });

/** The cloths whose tones a drawing has, where it has one that is not the skirt's own. */
function clothsIn({ cloths }: SkirtPlan, marks: readonly Mark[]): SkirtCloth[] {
  const found = new Set<string | null>();
  eachMark(marks, (mark) => {
    if (mark.kind !== 'text') found.add(mark.style.fill).add(mark.style.stroke);
  });
  const seen = cloths.filter((cloth) => found.has(washOfCloth(cloth)));
  return seen.some(({ which }) => which !== 'own') ? seen : [];
}
