import { inTurn, type HandLaid } from '../hand/inTurn.ts';
import { laysOn } from '../hand/laysOn.ts';
import { leastOf } from '../hand/least.ts';
import type { Lay } from '../lays/lay.ts';
import { laysOf } from '../lays/laysOf.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob, Wanted } from '../job/found.ts';

/**
 * What a search is compared with and begins from: the skirts one after the other, each in the best way (or in the one
 * that is asked for) that is made by hand; null where one can't be. By hand nobody leaves room for scissors, goes round
 * flaws or matches a pattern by rule: then there is nothing to compare with.
 */
export function byHand(job: ClothJob, way: LayKind | null = null): HandLaid<Wanted>[] | null {
  const { fabric, lengths, wanted } = job;
  const isPlain = fabric.between.value === 0 && fabric.pattern?.match !== true;
  if (!isPlain || lengths.some(({ flaws }) => flaws.length > 0)) return null;
  const skirts = wanted.map((of) => {
    const lays = laysOn(job, laysOf({ ...of, fabric }), () => of);
    const on = (at: number): Lay | undefined =>
      leastOf(
        lays(at).filter(({ kind }) => way === null || kind === way),
        fabric,
      );
    return { of, on, anyhow: undefined };
  });
  const laid = inTurn(skirts, job);
  return laid.length === wanted.length ? laid : null;
}
