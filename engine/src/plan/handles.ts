import type { Change } from '../request/index.ts';
import type { Mm } from '../units/index.ts';
import { rowHolds } from './handles/bands.ts';
import { AS_WRITTEN, settled, type Handle, type HandleName, type Hold } from './handles/hold.ts';
import { lengthHold } from './handles/length.ts';
import { optionHolds } from './handles/options.ts';
import type { SkirtPlan } from './plan.ts';

export type { Handle, HandleName } from './handles/hold.ts';

const holdsOf = (plan: SkirtPlan): Hold[] => [lengthHold(plan), ...optionHolds(plan), ...rowHolds(plan)];

/** Everything that can be taken hold of on this skirt. */
export const handlesOf = (plan: SkirtPlan): Handle[] => holdsOf(plan).map(({ handle }) => handle);

/**
 * The changes of the document that bring a handle to a value; the value is kept within the handle's bounds, on its
 * step. None where it stands there already, or where the skirt has no such handle.
 */
export function moved(plan: SkirtPlan, name: HandleName, value: Mm): Change[] {
  const taken = holdsOf(plan).find(({ handle }) => handle.name === name);
  if (!taken || Number.isNaN(value)) return [];
  const to = settled(taken, value);
  // What lies off the steps, as a depth whose parts are written to the hundredth may, stays where it was taken hold of.
  const stays = [value, to].some((each) => Math.abs(each - taken.handle.value) < AS_WRITTEN);
  return stays ? [] : taken.changes(to);
}
