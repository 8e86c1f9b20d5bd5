import { bandsOf } from '../../ribbon/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { stepUp } from './hold.ts';

/** The bands of a composition as they lie, from the hem up. */
export interface PlacedBands {
  /** Height of each band, those that were left off for want of room too. */
  readonly heights: readonly Mm[];
  /** Lower edge of each that was placed. */
  readonly lower: readonly Mm[];
}

export function placedBands({ request, ribbons }: SkirtPlan): PlacedBands {
  const lower: Mm[] = [];
  for (const { band, fromHem } of ribbons.rows) if (band > lower.length) lower.push(fromHem.value);
  const heights = bandsOf(request.ribbons).map((band) => mm(band.reduce((sum, { width }) => sum + width, 0)));
  return { heights, lower };
}

/** From the lowest band's lower edge to the upper edge of the highest where none has room to spare. */
export const stackedHeight = ({ heights }: PlacedBands, mark: Mm): Mm =>
  mm(heights.reduce((sum, height, i) => sum + (i < heights.length - 1 ? stepUp(height, mark) : height), 0));

/** Upper edge of the highest band placed; 0 where there is none. */
export function topOf({ heights, lower }: PlacedBands): Mm {
  const last = lower.length - 1;
  return mm((lower[last] ?? 0) + (last < 0 ? 0 : (heights[last] ?? 0)));
}
