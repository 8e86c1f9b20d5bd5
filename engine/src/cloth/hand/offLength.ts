import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { ClothJob } from '../job/found.ts';
import { isAsTheBolt, isLongEnough } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';

/** A lay of one skirt by hand, cut from the first length at hand that has room for all of it: then nothing is bought. */
export function offLength(lay: Lay, { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>): Lay {
  if (!lay.fits) return lay;
  for (const each of lengths) {
    const { name, length } = each;
    if (length === null || !isAsTheBolt(each, fabric)) continue;
    if (!isLongEnough(each, lay.clothAfter.value, fabric)) continue;
    return { ...lay, from: { name, length }, toBuy: figure.length(mm(0), 'cloth.nothingToBuy') };
  }
  return lay;
}
