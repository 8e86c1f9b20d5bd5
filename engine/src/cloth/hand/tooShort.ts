import type { Notice } from '../../figure/index.ts';
import { problem } from '../codes.ts';
import type { ClothJob } from '../job/found.ts';
import { isAsTheBolt, isLongEnough } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';

/** That no length has room for a skirt by hand: all are too short, or those that are long enough narrower or spoilt. */
export function tooShort(
  wearer: string,
  { clothAfter, clothBefore: needed }: Pick<Lay, 'clothAfter' | 'clothBefore'>,
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
): Notice {
  const isUnlike = lengths.some(
    (each) => !isAsTheBolt(each, fabric) && isLongEnough(each, clothAfter.value, fabric),
  );
  const why = isUnlike ? 'unlike' : 'short';
  return problem('cloth.notEnoughFor', { wearer: wearer || 'nobody', needed, why });
}
