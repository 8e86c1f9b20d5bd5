import type { Figure } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { HandLaid } from '../hand/inTurn.ts';
import { takenBefore } from '../job/before.ts';
import type { ClothJob, Wanted } from '../job/found.ts';
import type { LayKind } from '../options.ts';
import { byHand } from './byHand.ts';

/** What is known of a job before any search. */
export interface Known {
  readonly job: ClothJob;
  readonly way: LayKind;
  /** The skirts laid by hand, each in its best way; null where one can't be. */
  readonly hand: readonly HandLaid<Wanted>[] | null;
  /** Cloth before the wash that they take so. */
  readonly handBefore: Figure<Mm> | null;
}

export function knownOf(job: ClothJob, way: LayKind): Known {
  const hand = byHand(job);
  return { job, way, hand, handBefore: hand && handFigure(hand, job) };
}

const handFigure = (hand: readonly HandLaid<Wanted>[], { fabric, lengths }: ClothJob): Figure<Mm> =>
  takenBefore(
    hand.map(({ lay, length }) => ({ after: lay.clothAfter.value, from: lengths[length] })),
    'cloth.byHand',
    fabric,
  );
