import type { Speaker } from '../../words/index.ts';
import type { ClassPlan, HowMany } from '../../workshop/index.ts';
import { clothName } from './clothTexts.ts';

interface ShelfInput {
  readonly shelf: readonly HowMany[];
  readonly plan: ClassPlan;
  readonly speaker: Speaker;
}

/** What can be cut from the cloth at hand: who is in, who is not, and what to do about it. */
export const shelfTexts = ({ shelf, plan, speaker }: ShelfInput): string[] =>
  shelf.flatMap(({ cloth: key, inOrder, most }) => {
    const { workshop } = speaker.words;
    const found = plan.cloths.find((each) => each.key === key || each.name === key);
    const told = (text: string, skirts: readonly string[]): string =>
      speaker.text(text, {
        cloth: found ? clothName(found, speaker) : key,
        count: skirts.length,
        skirts: skirts.join(', '),
      });
    const labels = found?.shares.map(({ skirt }) => skirt.label) ?? [];
    const out = [...new Set(labels)].filter((label) => !most.skirts.includes(label));
    return [
      told(workshop.shelfInOrder, inOrder.skirts),
      ...(most.skirts.length > inOrder.skirts.length ? [told(workshop.shelfMost, most.skirts)] : []),
      ...(out.length > 0 ? [told(workshop.shelfOut, out)] : []),
    ];
  });
