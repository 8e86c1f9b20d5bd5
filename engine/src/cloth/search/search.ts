import type { Notice } from '../../figure/index.ts';
import { mm } from '../../units/index.ts';
import { problem } from '../codes.ts';
import { handTables } from '../hand/tables.ts';
import type { LayKind } from '../options.ts';
import { assembled, isBetter, nothing } from '../job/assembled.ts';
import { knownOf, type Known } from './known.ts';
import { boundOf } from '../job/bound.ts';
import { aboutPrint } from '../job/print.ts';
import { byHand } from './byHand.ts';
import type { ClothEffort } from './effort.ts';
import type { ClothJob, FoundCloth } from '../job/found.ts';
import { inFours } from './inFours.ts';
import { packed } from './packed.ts';

/**
 * Looks for the closest lay of all that is cut from one cloth, laid in one way. Never worse than the same skirts laid by
 * hand in that way one after the other (opened out: in any way). Never throws: what can't be laid so has a problem
 * among its notices. The same job, seed and evaluations give the same lay.
 */
export function searchCloth(job: ClothJob, way: LayKind, effort: ClothEffort): FoundCloth {
  const known = knownOf(job, way);
  let best = handFound(known);
  const offer = (found: FoundCloth): void => {
    if (best && !isBetter(found, best)) return;
    best = found;
    effort.better?.(found);
  };
  if (best) effort.better?.(best);
  const refusal = refusalOf(job, way);
  if (refusal) return best && way !== 'crosswise fold' ? best : assembled(known, nothing([refusal]));
  const inFour = way === 'double fold' ? inFours(known, effort, offer) : null;
  if (way === 'double fold' && !inFour)
    return best ?? assembled(known, nothing([problem('cloth.notFoldedInFour')]));
  const last = inFour ?? packed(known, way, effort, offer);
  if (best !== null && !isBetter(last, best)) return { ...best, ...withSearch(best, last) };
  effort.better?.(last);
  return last;
}

/** What the search proved and tried holds for the lay by hand too, where that stays the best. */
function withSearch(
  best: FoundCloth,
  { evaluations, lowerBound, proven, toBuy }: FoundCloth,
): Pick<FoundCloth, 'evaluations' | 'lowerBound' | 'proven'> {
  const isLeast = best.toBuy.value <= toBuy.value && proven;
  return {
    evaluations,
    lowerBound: { ...lowerBound, value: mm(Math.min(lowerBound.value, best.clothAfter.value)) },
    proven: best.proven || isLeast,
  };
}

/** What is laid by hand, as tables: of the way that is asked for; opened out, of any. */
function handFound(known: Known): FoundCloth | null {
  const { job, way, hand } = known;
  const laid = way === 'open' ? hand : byHand(job, way);
  if (!laid) return null;
  const bound = boundOf(job, way, []);
  const notices = aboutPrint(
    job.fabric,
    way,
    laid.some(({ lay }) => lay.printOnItsSide),
  );
  return assembled(known, { tables: handTables(laid, job), bound, evaluations: 0, notices, isByHand: true });
}

/** Why a cloth can't be folded so. */
function refusalOf({ fabric, lengths }: ClothJob, way: LayKind): Notice | null {
  if (way === 'open') return null;
  if (fabric.pattern?.match === true && way === 'double fold') return problem('cloth.matchInOneLayer');
  if (way !== 'crosswise fold') return null;
  if (fabric.oneWay) return problem('cloth.foldTurnsPrint');
  return lengths.some(({ length, flaws }) => length === null && flaws.length > 0)
    ? problem('cloth.flawOnFold')
    : null;
}
