import type { Change } from '../../request/index.ts';
import { alongLimits } from '../../ribbon/index.ts';
import { mm, writeLength, type Mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { SAME, stepDown, stepNear, stepUp, written, type BandMove } from './hold.ts';
import type { PlacedBands } from './placed.ts';
import { clearHem, clearTop } from './room.ts';

/** Moves one band by hand, between its neighbours, the hem's stitching and the casing; all others stay. */
export function bandAlone(plan: SkirtPlan, placed: PlacedBands, band: number): BandMove {
  const { mark } = plan.request;
  const { heights, lower } = placed;
  const at = lower[band] ?? mm(0);
  const below = lower[band - 1];
  const above = lower[band + 1] ?? clearTop(plan);
  return {
    least: stepUp(below === undefined ? clearHem(plan) : below + (heights[band - 1] ?? 0), mark),
    most: stepDown(above - (heights[band] ?? 0), mark),
    changes: (to) => {
      const by = to - at;
      const gaps = gapsNow(plan, placed).map((gap, i) =>
        i === band - 1 ? gap + by : i === band ? gap - by : gap,
      );
      const changes = handChanges(plan, placed, gaps, (i) => i === band - 1 || i === band);
      return band === 0 ? [...changes, written(plan, ['ribbons', 'lowest'], to)] : changes;
    },
  };
}

/** The gap above one band, by hand: what lies above goes with it, each at the mark that it has from the others now. */
export const gapAlone = (plan: SkirtPlan, placed: PlacedBands, band: number, to: Mm): Change[] =>
  handChanges(
    plan,
    placed,
    gapsNow(plan, placed).map((gap, i) => (i === band ? to : gap)),
    (i) => i >= band,
  );

/**
 * The gaps that leave every band where it lies. Above those that were placed, the maker's own; where she has none,
 * they go on as the last.
 */
function gapsNow(plan: SkirtPlan, { heights, lower }: PlacedBands): number[] {
  const { spacing, gaps } = plan.request.ribbons;
  const own = spacing === 'by hand' ? gaps : undefined;
  let last = 0;
  return heights.slice(0, -1).map((height, i) => {
    const [under, over] = [lower[i], lower[i + 1]];
    if (under === undefined || over === undefined) return own?.[i] ?? last;
    last = over - under - height;
    return last;
  });
}

/** Spacing by hand written out; where it is by hand already, only what changes of the gaps that are `touched`. */
function handChanges(
  plan: SkirtPlan,
  { lower }: PlacedBands,
  wished: readonly number[],
  touched: (gap: number) => boolean,
): Change[] {
  const { ribbons, measure, mark } = plan.request;
  const { least, most } = alongLimits;
  const gaps = wished.map((gap) => mm(Math.min(most, Math.max(least, gap))));
  if (ribbons.spacing === 'by hand')
    return gaps.flatMap((gap, i) =>
      touched(i) && Math.abs(gap - (ribbons.gaps?.[i] ?? 0)) > SAME
        ? [written(plan, ['ribbons', 'gaps', i], gap)]
        : [],
    );
  const lowest = lower[0] ?? ribbons.lowest;
  // Between its limits a composition starts at the mark above the lowest; by hand at the nearest.
  const starts = Math.abs(stepNear(ribbons.lowest, mark) - lowest) < SAME;
  return [
    { path: ['ribbons', 'spacing'], value: 'by hand' },
    { path: ['ribbons', 'gaps'], value: gaps.map((gap) => writeLength(gap, measure)) },
    ...(starts ? [] : [written(plan, ['ribbons', 'lowest'], lowest)]),
  ];
}
