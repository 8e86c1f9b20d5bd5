import type { SkirtPlan } from '../../../plan/index.ts';
import type { Speaker } from '../../../words/index.ts';
import type { WornSide } from './stance.ts';

export const titleOf = ({ words: { papers } }: Speaker, side: WornSide): string =>
  ({ front: papers.wornFront, back: papers.wornBack, side: papers.wornSide })[side];

/** The picture for those who can't see it: how long, which rows from the hem up, how high above the floor. */
export function inWords(plan: SkirtPlan, speaker: Speaker): string {
  const { papers } = speaker.words;
  const { rows } = plan.ribbons;
  const list = rows.map(({ colour }) => speaker.colour(colour)).join(', ');
  const parts = [
    speaker.text(papers.altWorn, {
      cloth: speaker.colour(plan.request.cloth.colour),
      length: speaker.value(plan.skirt.finishedLength),
    }),
    rows.length > 0 ? speaker.text(papers.altWornRows, { rows: rows.length, list }) : papers.altWornPlain,
  ];
  const above = plan.body.hemHeight;
  if (above) parts.push(speaker.text(papers.altWornHem, { above: speaker.value(above) }));
  return parts.join(' ');
}
