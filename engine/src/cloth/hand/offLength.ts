import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { takenBefore } from '../job/before.ts';
import type { ClothJob } from '../job/found.ts';
import { isLongEnough } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';

/**
 * A lay of one skirt by hand, cut from the first length at hand that has room for all of it, laid over the width of that;
 * then nothing is bought. `on` are its lays on each length.
 */
export function offLength(
  lay: Lay,
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
  on: (at: number) => readonly Lay[],
): Lay {
  for (const [at, each] of lengths.entries()) {
    const { name, length, washed } = each;
    if (length === null) continue;
    const there = on(at).find(({ kind }) => kind === lay.kind);
    if (there?.fits !== true || !isLongEnough(each, there.clothAfter.value, fabric)) continue;
    // A length that was washed does not change again.
    const used = [{ after: there.clothAfter.value, from: each }];
    return {
      ...there,
      from: { name, length, washed },
      ...(washed ? { clothBefore: takenBefore(used, 'cloth.foundAfter', fabric) } : {}),
      toBuy: figure.length(mm(0), 'cloth.nothingToBuy'),
    };
  }
  return lay;
}
