import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Fabric } from '../fabric.ts';
import { laysOf } from '../lay-all.ts';
import type { Lay } from '../lays/lay.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob, ClothLength, Wanted } from './found.ts';
import { lengthOf, usableOf } from './strip.ts';

/** One skirt laid by hand: how, on which length, and where on it it begins, after the wash. */
export interface HandLaid {
  readonly wanted: Wanted;
  readonly lay: Lay;
  readonly length: number;
  readonly start: number;
}

/**
 * The skirts one after the other, each in the best way (or in the one that is asked for) that is made by hand, on the
 * first length that has room for it; null where one can't be. By hand nobody leaves room for scissors, goes round
 * flaws or matches a pattern by rule: then there is nothing to compare with.
 */
export function byHand(job: ClothJob, way: LayKind | null = null): HandLaid[] | null {
  const { fabric, lengths, wanted } = job;
  const isPlain = fabric.between.value === 0 && fabric.pattern?.match !== true;
  if (!isPlain || lengths.some(({ flaws }) => flaws.length > 0)) return null;
  const fabrics = lengths.map((length) => fabricOf(length, fabric));
  const used = lengths.map(() => 0);
  const found: HandLaid[] = [];
  for (const each of wanted) {
    const lays = laysOn(each, fabrics);
    const at = lengths.findIndex((length, i) => {
      const best = bestOf(lays(i), way, fabric.oneWay);
      return best !== undefined && (used[i] ?? 0) + best.clothAfter.value <= lengthOf(length, fabric) + HAIR;
    });
    const lay = at < 0 ? undefined : bestOf(lays(at), way, fabric.oneWay);
    if (!lay) return null;
    found.push({ wanted: each, lay, length: at, start: used[at] ?? 0 });
    used[at] = (used[at] ?? 0) + lay.clothAfter.value;
  }
  return found;
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
  const inputs = { width, change: fabric.crosswise, selvage: fabric.selvage };
  const between = (selvages: number) =>
    figure.length(mm(Math.max(1, usable + (2 - selvages) * fabric.selvage.value)), 'cloth.usable', {
      ...inputs,
      selvages: figure.count(selvages, 'cloth.selvages'),
    });
  return { ...fabric, usable: between(2), usableFromSelvage: between(1) };
}

/** A one-way print is kept upright where that can be had. */
function bestOf(lays: readonly Lay[], way: LayKind | null, oneWay: boolean): Lay | undefined {
  const fitting = lays.filter(({ fits, kind }) => fits && (way === null || kind === way));
  const straight = oneWay ? fitting.filter(({ printOnItsSide }) => !printOnItsSide) : fitting;
  return (straight.length > 0 ? straight : fitting).reduce<Lay | undefined>(
    (best, lay) => (best && best.clothAfter.value <= lay.clothAfter.value + HAIR ? best : lay),
    undefined,
  );
}
