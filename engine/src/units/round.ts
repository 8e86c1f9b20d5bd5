import { mm, type Mm } from './mm.ts';

export type Direction = 'nearest' | 'up' | 'down';

/**
 * Slack for binary fractions: 1.3 m in steps of 0.1 m is 13 steps, not 14, though 1300 / 100 may come
 * out a hair above. A millionth of a step is far below anything a ruler shows.
 */
const SLACK = 1e-6;

/** Number of whole steps in `value`, rounded as asked; exact multiples stay. */
export function stepsIn(value: number, step: number, direction: Direction): number {
  const steps = value / step;
  // Nothing rounded up is −0 otherwise, and prints with its sign.
  if (direction === 'up') return Math.ceil(steps - SLACK) + 0;
  if (direction === 'down') return Math.floor(steps + SLACK);
  return Math.round(steps);
}

/** Rounds a length to a mark that can be chalked, or to the shop's cutting step. `step` > 0. */
export function roundTo(value: Mm, step: Mm, direction: Direction): Mm {
  return mm(stepsIn(value, step, direction) * step);
}
