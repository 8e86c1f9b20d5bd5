import type { Notice } from '../../figure/index.ts';
import { problem } from '../codes.ts';
import type { ClothJob } from '../job/found.ts';
import { isLongEnough } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';

/** That no length has room for a skirt by hand: there is none, all are too short, or on those that are long enough it can't lie. */
export function tooShort(
  wearer: string,
  { clothAfter, clothBefore: needed }: Pick<Lay, 'clothAfter' | 'clothBefore'>,
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
  canLie: (length: number) => boolean,
): Notice {
  const isUnlike = lengths.some((each, at) => !canLie(at) && isLongEnough(each, clothAfter.value, fabric));
  const isNone = lengths.every(({ length }) => length === 0);
  const why = isUnlike ? 'unlike' : isNone ? 'none' : 'short';
  return problem('cloth.notEnoughFor', { wearer: wearer || 'nobody', needed, why });
}
