import type { DraftContext, DraftGiven } from './context.ts';
import { keptInHem, takenInTucks, type ExtrasOptions } from './extras/index.ts';

/** What a cut knows of the world, what is kept in hand for growing included. */
export const contextOf = (given: DraftGiven, extras: ExtrasOptions): DraftContext => ({
  ...given,
  inTucks: takenInTucks(given, extras),
  inHem: keptInHem(given, extras),
});
