import { mm, type Mm } from '../../units/index.ts';
import { clearHem as lowestClear, clearTop as highestClear } from '../../ribbon/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { placedBands, stackedHeight, topOf } from './placed.ts';

/** Highest that a ribbon's upper edge may lie on this skirt, from the finished hem. */
export const clearTop = ({ skirt }: SkirtPlan): Mm => highestClear(skirt).value;

/** Lowest that a row lies clear of the hem's stitching. */
export const clearHem = ({ skirt }: SkirtPlan): Mm => lowestClear(skirt).value;

/**
 * What the rows take from the finished hem up: to where the highest lies; where their zone goes with the length of the
 * skirt, as far as they can be pressed together.
 */
export function rowsTake(plan: SkirtPlan): Mm {
  const { ribbons, mark } = plan.request;
  const placed = placedBands(plan);
  const lowest = placed.lower[0];
  const top = topOf(placed);
  const yields = ribbons.spacing !== 'by hand' && ribbons.highest === undefined;
  return yields && lowest !== undefined ? mm(Math.min(top, lowest + stackedHeight(placed, mark))) : top;
}

/** Finished length that the rows, and all that they keep clear of above them, take. */
export const lengthTaken = (plan: SkirtPlan): Mm =>
  mm(rowsTake(plan) + plan.skirt.finishedLength.value - clearTop(plan));
