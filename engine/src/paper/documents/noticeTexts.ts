import type { StagedNotice } from '../../plan/index.ts';
import type { Speaker } from '../../words/index.ts';
import { clothCalled } from '../pictures/clothInks.ts';

/** Which of a skirt's several cloths a notice is about; nothing where it is about none of them alone. */
export function ofCloth({ of }: Pick<StagedNotice, 'of'>, speaker: Speaker): string[] {
  if (of === null) return [];
  return [of === 'lining' ? speaker.words.items.lining : clothCalled({ options: of }, speaker)];
}

/** How grave a notice is, and of which cloth. */
export const noticeLead = ({ notice, of }: Pick<StagedNotice, 'notice' | 'of'>, speaker: Speaker): string =>
  [speaker.words.levels[notice.level], ...ofCloth({ of }, speaker)].join(' · ');
