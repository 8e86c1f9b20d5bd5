import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { beforeWash, type Fabric } from '../fabric.ts';
import type { ClothLength } from './found.ts';

/** Cloth after the wash, and the length that it is taken from. */
interface Taken {
  readonly after: number;
  readonly from: Pick<ClothLength, 'washed'> | undefined;
}

/** Cloth before its wash, all lengths together: one that was washed already is as long as it was. */
export function takenBefore(
  taken: readonly Taken[],
  rule: 'cloth.foundAfter' | 'cloth.byHand',
  { lengthwise }: Fabric,
): Figure<Mm> {
  const sum = (washed: boolean): number =>
    taken.reduce((all, { after, from }) => all + ((from?.washed ?? false) === washed ? after : 0), 0);
  const washed = sum(true);
  const unwashed = sum(false);
  if (washed > 0 && unwashed === 0) return figure.length(mm(washed), 'cloth.allWashed');
  const before = beforeWash(figure.length(mm(unwashed), rule), lengthwise);
  if (washed === 0) return before;
  return figure.length(mm(before.value + washed), 'cloth.withWashed', {
    unwashed: before,
    washed: figure.length(mm(washed), 'cloth.washedUsed'),
  });
}
