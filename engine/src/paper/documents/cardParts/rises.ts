import type { SkirtPlan } from '../../../plan/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';

const places = ['front', 'back', 'left', 'right'] as const;

/** Where the top line is raised or lowered, each place with how far; none where it is level. */
export function riseTexts({ body: { rises } }: SkirtPlan, speaker: Speaker): string[] {
  const { papers } = speaker.words;
  if (places.every((place) => rises[place].value === 0)) return [];
  return places.map((place) => {
    const { value } = rises[place];
    const how = speaker.text(value < 0 ? papers.pieceDown : papers.pieceUp, {
      value: speaker.length(mm(Math.abs(value))),
    });
    return `${papers.risePlaces[place]} ${value === 0 ? papers.riseNone : how}`;
  });
}
