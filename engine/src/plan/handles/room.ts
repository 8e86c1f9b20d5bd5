import { mm, type Mm } from '../../units/index.ts';
import { clearHem as lowestClear, clearTop as highestClear } from '../../ribbon/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { placedBands, stackedHeight, topOf } from './placed.ts';

/**
 * What the fields of a request take, in millimetres where they are lengths. The parser refuses what is outside;
 * a test asks it for each end.
 */
export const fieldLimits = {
  fullness: { least: 1, most: 4 },
  widths: { least: 1, most: 12 },
  hemAtFold: { least: 50, most: 3000 },
  hem: { least: 6, most: 250 },
  elasticWidth: { least: 3, most: 100 },
  gap: { least: 0, most: 1800 },
} as const;

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
