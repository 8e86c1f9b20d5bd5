import { mm, parseLength, writeLength, type Mm } from '../../units/index.ts';
import type { Change } from '../../request/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { AS_WRITTEN, SAME, stepDown, stepUp, written, type BandMove } from './hold.ts';
import { stackedHeight, type PlacedBands } from './placed.ts';
import { clearHem, clearTop } from './room.ts';

/** The lowest band of rows that are fitted between two limits: the others fit themselves in above it. */
export function fittedLowest(plan: SkirtPlan, placed: PlacedBands): BandMove {
  const { mark, ribbons } = plan.request;
  const { heights } = placed;
  const [first = 0, ...others] = heights;
  const alone = others.length === 0;
  const last = heights.at(-1) ?? 0;
  const top = clearTop(plan);
  const highest = alone ? top : Math.min(top, ribbons.highest ?? top);
  const stacked = stepDown(highest - last, mark) - (stackedHeight(placed, mark) - last);
  return {
    least: stepUp(clearHem(plan), mark),
    most: Math.min(stacked, top - first),
    changes: (to) => [
      written(plan, ['ribbons', 'lowest'], to),
      // A band alone has both limits: it takes the upper one up with it.
      ...(alone && ribbons.highest !== undefined && to + first > ribbons.highest
        ? [highestAt(plan, mm(to + first))]
        : []),
    ],
  };
}

/** The highest band of such rows: the others between it and the lowest fit themselves in. */
export function fittedHighest(plan: SkirtPlan, placed: PlacedBands): BandMove {
  const { mark, ribbons } = plan.request;
  const last = placed.heights.at(-1) ?? 0;
  return {
    least: stepUp(ribbons.lowest, mark) + stackedHeight(placed, mark) - last,
    most: clearTop(plan) - last,
    changes: (to) => [highestAt(plan, mm(to + last))],
  };
}

/** The upper limit, written no lower than it is: a hair less, and the band would lie a whole mark lower. */
function highestAt(plan: SkirtPlan, value: Mm): Change {
  const read = parseLength(writeLength(value, plan.request.measure));
  const isEnough = read.ok && read.value >= value - SAME;
  return written(plan, ['ribbons', 'highest'], isEnough ? value : mm(value + AS_WRITTEN));
}
