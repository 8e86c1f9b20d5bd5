import { mm, stepsIn, type Mm } from '../units/index.ts';

/** Lengths that may be wished for, at marks, and what comes of each once it is chalked: the greater the wish, never less. */
export interface Wishes {
  readonly least: number;
  readonly most: number;
  readonly mark: Mm;
  readonly comesTo: (wish: Mm) => number;
}

/** What binary fractions lose is no difference. */
const HAIR = 1e-6;

/**
 * The largest wish, at a mark, that comes to no more than `value`; the least one where even that comes to more. What is chalked
 * is rounded more than once on its way, so that the mark is looked for, by halving, not worked out.
 */
export function wishFor(value: number, { least, most, mark, comesTo }: Wishes): Mm {
  let low = stepsIn(least, mark, 'up');
  let high = stepsIn(most, mark, 'down');
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (comesTo(mm(middle * mark)) <= value + HAIR) low = middle;
    else high = middle - 1;
  }
  return mm(low * mark);
}
