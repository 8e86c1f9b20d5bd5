import type { Notice } from '../../figure/index.ts';
import { problem } from '../codes.ts';
import type { ClothJob } from '../job/found.ts';
import { isAsTheBolt, isLongEnough } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';

/** That no length has room for a skirt by hand: there is none, all are too short, or those that are long enough narrower or spoilt. */
export function tooShort(
  wearer: string,
  { clothAfter, clothBefore: needed }: Pick<Lay, 'clothAfter' | 'clothBefore'>,
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
): Notice {
  const isUnlike = lengths.some(
    (each) => !isAsTheBolt(each, fabric) && isLongEnough(each, clothAfter.value, fabric),
  );
  const isNone = lengths.every(({ length }) => length === 0);
  const why = isUnlike ? 'unlike' : isNone ? 'none' : 'short';
  return problem('cloth.notEnoughFor', { wearer: wearer || 'nobody', needed, why });
}

/** That a skirt of a class lies on none of its cutting layouts. */
export const onNoLayout: Notice = problem('cloth.onNoLayout');
