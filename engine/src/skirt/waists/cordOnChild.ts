import type { Body } from '../../body/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Cord } from './waist.ts';

/** EN 14682 speaks of clothes up to 14 years. */
const CHILD_BELOW = 14;

/**
 * Most that may hang free at either end of a waist cord, spread flat: 3 in (75 mm), ASTM F1816-18, sizes 2T to 16. It speaks of
 * upper outerwear, not of skirts: followed as prudence.
 */
const FREE_END: Figure<Mm> = figure.length(mm(75), 'waist.cordFreeMost');

export const isChild = ({ adult, age }: Body): boolean => !adult || (age !== null && age < CHILD_BELOW);

/** A cord on a child can catch: what published rules ask, as prudence, and elastic instead. */
export function cordOnChild({ body, mark }: DraftContext, { freeEnd }: Cord, opening: Figure<Mm>): Notice[] {
  if (!isChild(body)) return [];
  const most = FREE_END;
  const told = [caution('waist.cordForChild', { most })];
  if (freeEnd.value <= most.value) return told;
  const exact = mm(opening.value + 2 * most.value);
  const enough = figure.length(
    roundTo(exact, mark, 'down'),
    'waist.cordShortEnough',
    { opening, most },
    { exact },
  );
  return [...told, caution('waist.cordFreeEnds', { freeEnd, most, enough })];
}
