import type { Change } from '../../request/index.ts';
import type { OptionHandleName } from '../../skirt/index.ts';
import { mm, writeLength, type Mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';

/** What of a skirt can be taken hold of and moved. Rows and gaps carry their number, from the hem up, from 1. */
export type HandleName = OptionHandleName | 'length' | `row ${number}` | `gap ${number}`;

/** One thing to take hold of: its value now, and how far it goes. The value lies within its bounds. */
export interface Handle {
  readonly name: HandleName;
  readonly value: Mm;
  readonly least: Mm;
  readonly most: Mm;
  /** Finest move: a mark that can be chalked. */
  readonly step: Mm;
}

/** A handle with what a move of it writes. */
export interface Hold {
  readonly handle: Handle;
  /** Where its steps are counted from; a row of a band lies on no mark of its own, its band does. */
  readonly from: Mm;
  readonly changes: (value: Mm) => Change[];
}

/** How far one band's lower edge goes, and what bringing it there writes. */
export type BandMove = Pick<Wanted, 'least' | 'most' | 'changes'>;

/** Binary fractions lose less than this of a length; nobody sees it. */
export const SAME = 1e-6;

/** A document says a length to this much, so nothing less is a move. */
export const AS_WRITTEN = 0.01;

/**
 * A share of a step. Finer than the slack that a plan's own roundings have: what is kept clear of a neighbour here must not
 * be found to overlap it there.
 */
const STEP_SLACK = 1e-10;
export const stepUp = (value: number, step: Mm): Mm => mm(Math.ceil(value / step - STEP_SLACK) * step);
export const stepDown = (value: number, step: Mm): Mm => mm(Math.floor(value / step + STEP_SLACK) * step);
export const stepNear = (value: number, step: Mm): Mm => mm(Math.round(value / step) * step);

interface Wanted {
  readonly name: HandleName;
  readonly value: Mm;
  readonly least: number;
  readonly most: number;
  readonly step: Mm;
  readonly from?: Mm;
  readonly changes: (value: Mm) => Change[];
}

/**
 * Bounds are drawn in to the steps inside them. What stands now is never out of bounds, though it lie off the
 * steps or past what a move would be let: otherwise taking hold of it would move it.
 */
export function hold({ name, value, least, most, step, from = mm(0), changes }: Wanted): Hold {
  const low = stepUp(least - from, step) + from;
  const high = stepDown(most - from, step) + from;
  return {
    handle: { name, value, least: mm(Math.min(value, low)), most: mm(Math.max(value, high)), step },
    from,
    changes,
  };
}

/** The wish within the bounds, on a step. */
export function settled({ handle: { least, most, step }, from }: Hold, wish: number): Mm {
  const within = (each: number): number => Math.min(most, Math.max(least, each));
  return mm(within(stepNear(within(wish) - from, step) + from));
}

/** The change of one length of the document, as the request's own measure writes it. */
export const written = (plan: SkirtPlan, path: Change['path'], value: Mm): Change => ({
  path,
  value: writeLength(value, plan.request.measure),
});
