import type { FoundCloth } from '../../cloth/index.ts';
import { isByEye, type ClassPlan, type HowMany } from '../../workshop/index.ts';
import type { Speaker } from '../../words/index.ts';
import { clothName } from './clothTexts.ts';

/** Of each cloth that is at hand: whose skirts can be cut from it with nothing bought, and what to do for the others. */
export const shelfTexts = (
  shelf: readonly HowMany[],
  { cloths }: Pick<ClassPlan, 'cloths'>,
  speaker: Speaker,
): string[] =>
  shelf.flatMap(({ cloth: key, inOrder, most }) => {
    const of = cloths.find((cloth) => cloth.key === key);
    const { workshop } = speaker.words;
    const words = (skirts: readonly string[]) => ({
      cloth: of ? clothName(of, speaker) : key,
      count: skirts.length,
      skirts: skirts.join(', '),
    });
    const without = (of?.shares ?? [])
      .map(({ skirt }) => skirt.label)
      .filter((label) => !most.skirts.includes(label));
    return [
      speaker.text(workshop.shelfInOrder, words(inOrder.skirts)),
      ...(most.skirts.length > inOrder.skirts.length
        ? [speaker.text(workshop.shelfMost, words(most.skirts))]
        : []),
      ...(without.length > 0
        ? [
            speaker.text(workshop.shelfOut, {
              ...words(without),
              fits: of ? fitOf(of.chosen) : 'no',
            }),
          ]
        : []),
    ];
  });

/** Whether more can be bought for those that find no room; or they lie there all the same, without what the cloth asks for. */
function fitOf(chosen: FoundCloth): 'yes' | 'no' | 'byEye' {
  if (!chosen.fits) return 'no';
  return chosen.toBuy.value === 0 && isByEye(chosen) ? 'byEye' : 'yes';
}
