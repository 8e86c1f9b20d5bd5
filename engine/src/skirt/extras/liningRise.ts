import { mm, type Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Rise } from '../cuts/rise.ts';
import { riseOf } from '../cuts/riseOf.ts';
import { aroundInTurn } from '../cuts/round.ts';
import type { Around } from '../panel.ts';

/** A rise may take this share of a lining's length; one much shorter than its skirt has the same shape, flatter. */
const MOST_RISE = 0.3;

/** The skirt's own rise there, flatter where the lining is too short for it. */
export function riseWithin(context: DraftContext, around: Around, length: Mm): Rise {
  const quarters = aroundInTurn(4).map((each) => riseOf(context, each));
  const most = Math.max(
    ...quarters.flatMap(({ left, centre, right }) => [left, centre, right].map(Math.abs)),
  );
  const share = most > MOST_RISE * length ? (MOST_RISE * length) / most : 1;
  const { left, centre, right } = riseOf(context, around);
  return { left: mm(share * left), centre: mm(share * centre), right: mm(share * right) };
}
