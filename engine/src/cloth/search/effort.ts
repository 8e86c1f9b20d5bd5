import type { FoundCloth } from '../job/found.ts';

/** How long a closer lay is sought. Time is known to the caller only. */
export interface ClothEffort {
  /** Whole number: the same seed and evaluations give the same lay on every machine. */
  readonly seed: number;
  /** Places to be tried at most, all together; of each way of lying that is tried a first answer is laid whatever it takes. */
  readonly evaluations?: number;
  /** Share of the time that is over, from 0; the search stops at 1. */
  readonly spent?: () => number;
  /** Called with each better lay, the first one included. */
  readonly better?: (found: FoundCloth) => void;
}
