import type { Fabric } from '../fabric.ts';
import type { Lay } from '../lays/lay.ts';

const HAIR = 1e-6;

/** Of the lays that fit the one that takes least. A one-way print is kept upright where that can be had. */
export function leastOf(lays: readonly Lay[], { oneWay }: Pick<Fabric, 'oneWay'>): Lay | undefined {
  const fitting = lays.filter(({ fits }) => fits);
  const upright = oneWay ? fitting.filter(({ printOnItsSide }) => !printOnItsSide) : fitting;
  return (upright.length > 0 ? upright : fitting).reduce<Lay | undefined>(
    (best, lay) => (best && best.clothAfter.value <= lay.clothAfter.value + HAIR ? best : lay),
    undefined,
  );
}
