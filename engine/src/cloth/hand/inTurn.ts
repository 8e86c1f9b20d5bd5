import { mm, type Mm } from '../../units/index.ts';
import type { Lay } from '../lays/lay.ts';
import type { ClothJob } from '../job/found.ts';
import { isLongEnough } from '../job/lengths.ts';

/** One skirt that is to be laid by hand. */
export interface InTurn<Of> {
  readonly of: Of;
  /** Its lay on one of the lengths; none where it can't be laid there. */
  readonly on: (length: number) => Lay | undefined;
  /** Its lay where no length has room for it: drawn all the same, so that the maker sees by how much. */
  readonly anyhow: Lay | undefined;
}

/** One skirt laid by hand: how, on which length, and where on it it begins, after the wash. */
export interface HandLaid<Of> {
  readonly of: Of;
  readonly lay: Lay;
  readonly length: number;
  readonly start: Mm;
  /** Whether no length has room for it. */
  readonly short: boolean;
}

/**
 * Skirts laid by hand one after the other, each on the first length that has room for it, the oldest length first; what
 * finds no room is laid on the last of them all the same, over what lies there. A skirt without any lay is left out.
 */
export function inTurn<Of>(
  skirts: readonly InTurn<Of>[],
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
): HandLaid<Of>[] {
  const used = lengths.map(() => 0);
  return skirts.flatMap(({ of, on, anyhow }): HandLaid<Of>[] => {
    const at = lengths.findIndex((length, i) => {
      const lay = on(i);
      return lay !== undefined && isLongEnough(length, (used[i] ?? 0) + lay.clothAfter.value, fabric);
    });
    const short = at < 0;
    const length = short ? lengths.length - 1 : at;
    const lay = short ? anyhow : on(at);
    if (!lay) return [];
    const start = mm(used[length] ?? 0);
    // What it does not find it does not take from those after it.
    if (!short) used[length] = start + lay.clothAfter.value;
    return [{ of, lay, length, start, short }];
  });
}
