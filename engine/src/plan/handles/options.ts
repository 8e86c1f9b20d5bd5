import type { Change } from '../../request/index.ts';
import { skirtHandles, type SkirtHandle } from '../../skirt/index.ts';
import { mm } from '../../units/index.ts';
import { givenOf } from '../given.ts';
import type { SkirtPlan } from '../plan.ts';
import { hold, written, type Hold } from './hold.ts';
import { clearTop, rowsTake } from './room.ts';

/** What the cut, the waist and the extras offer. */
export const optionHolds = (plan: SkirtPlan): Hold[] =>
  skirtHandles(givenOf(plan.request, plan, plan.cloth.fabric), plan.request, plan.skirt).map((each) =>
    optionHold(plan, each),
  );

/** What would take the room of the rows goes only as far as they let it. */
function optionHold(plan: SkirtPlan, { path, handle }: SkirtHandle): Hold {
  const { name, value, least, most, step, from = mm(0), lowersTop = false, writes } = handle;
  const free = lowersTop ? clearTop(plan) - rowsTake(plan) : Infinity;
  return hold({
    name,
    value,
    least,
    most: Math.min(most, value + free),
    step,
    from,
    changes: (to): Change[] => {
      const { lengths = {}, numbers = {} } = writes(to);
      return [
        ...Object.entries(lengths).map(([key, length]) => written(plan, [...path, key], length)),
        ...Object.entries(numbers).map(([key, number]) => ({ path: [...path, key], value: number })),
      ];
    },
  });
}
