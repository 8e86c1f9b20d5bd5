import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { takenBefore } from '../job/before.ts';
import type { ClothJob } from '../job/found.ts';
import { isAsTheBolt, isLongEnough } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';

/** A lay of one skirt by hand, cut from the first length at hand that has room for all of it: then nothing is bought. */
export function offLength(lay: Lay, { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>): Lay {
  if (!lay.fits) return lay;
  for (const each of lengths) {
    const { name, length, washed } = each;
    if (length === null || !isAsTheBolt(each, fabric)) continue;
    if (!isLongEnough(each, lay.clothAfter.value, fabric)) continue;
    // A length that was washed does not change again.
    const used = [{ after: lay.clothAfter.value, from: each }];
    return {
      ...lay,
      from: { name, length, washed },
      ...(washed ? { clothBefore: takenBefore(used, 'cloth.foundAfter', fabric) } : {}),
      toBuy: figure.length(mm(0), 'cloth.nothingToBuy'),
    };
  }
  return lay;
}
