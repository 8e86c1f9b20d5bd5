import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Fabric } from '../fabric.ts';
import { inTurn, type HandLaid } from '../hand/inTurn.ts';
import { leastOf } from '../hand/least.ts';
import { laysOf } from '../lay-all.ts';
import type { Lay } from '../lays/lay.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob, ClothLength, Wanted } from '../job/found.ts';
import { usableOf } from '../job/lengths.ts';

/**
 * What a search is compared with and begins from: the skirts one after the other, each in the best way (or in the one
 * that is asked for) that is made by hand; null where one can't be. By hand nobody leaves room for scissors, goes round
 * flaws or matches a pattern by rule: then there is nothing to compare with.
 */
export function byHand(job: ClothJob, way: LayKind | null = null): HandLaid<Wanted>[] | null {
  const { fabric, lengths, wanted } = job;
  const isPlain = fabric.between.value === 0 && fabric.pattern?.match !== true;
  if (!isPlain || lengths.some(({ flaws }) => flaws.length > 0)) return null;
  const fabrics = lengths.map((length) => fabricOf(length, fabric));
  const skirts = wanted.map((of) => {
    const lays = laysOn(of, fabrics);
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

const HAIR = 1e-6;
/** Lays of one skirt on each length: those of one width are worked out once. */
function laysOn(
  { mains, parts, marking }: Wanted,
  fabrics: readonly Fabric[],
): (at: number) => readonly Lay[] {
  const known = new Map<number, readonly Lay[]>();
  return (at) => {
    const fabric = fabrics[at];
    if (!fabric) return [];
    const lays = known.get(fabric.usable.value) ?? laysOf({ mains, parts, marking, fabric });
    known.set(fabric.usable.value, lays);
    return lays;
  };
}

/** The cloth as it is where one of its lengths is narrower or wider than the bolt. */
function fabricOf(length: ClothLength, fabric: Fabric): Fabric {
  const usable = usableOf(length, fabric);
  if (Math.abs(usable - fabric.usable.value) < HAIR) return fabric;
  const width = figure.length(length.width, 'cloth.width');
  const inputs = {
    width,
    change: length.washed ? figure.percent(0, 'cloth.changeDone') : fabric.crosswise,
    selvage: fabric.selvage,
  };
  const between = (selvages: number) =>
    figure.length(mm(Math.max(1, usable + (2 - selvages) * fabric.selvage.value)), 'cloth.usable', {
      ...inputs,
      selvages: figure.count(selvages, 'cloth.selvages'),
    });
  return { ...fabric, usable: between(2), usableFromSelvage: between(1) };
}
