import { figure } from '../codes.ts';
import { usableWidths, type Fabric } from '../fabric.ts';
import type { ClothJob, ClothLength } from '../job/found.ts';
import { usableOf } from '../job/lengths.ts';
import type { Lay } from '../lays/lay.ts';
import { laysOf } from '../lays/laysOf.ts';
import type { Pieces } from '../piecesOf.ts';

const HAIR = 1e-6;

/**
 * Every way to lay one skirt by hand on each of the lengths, over all of its width; none on one with spoilt places, which
 * nobody goes round by hand. `onBolt` are those on cloth of the width that it is sold in; `pieces` is asked where one is of
 * another width. Those of one width are worked out once.
 */
export function laysOn(
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
  onBolt: readonly Lay[],
  pieces: () => Pieces | null,
): (at: number) => readonly Lay[] {
  const known = new Map<number, readonly Lay[]>();
  return (at) => {
    const length = lengths[at];
    if (!length || (length.length !== null && length.flaws.length > 0)) return [];
    const usable = usableOf(length, fabric);
    if (Math.abs(usable - fabric.usable.value) < HAIR) return onBolt;
    const before = known.get(usable);
    if (before) return before;
    const cut = pieces();
    const lays = cut ? laysOf({ ...cut, fabric: fabricOf(length, fabric) }) : [];
    known.set(usable, lays);
    return lays;
  };
}

/** The cloth as it is where one of its lengths is narrower or wider than the bolt. */
function fabricOf({ width, washed }: ClothLength, fabric: Fabric): Fabric {
  const change = washed ? figure.percent(0, 'cloth.changeDone') : fabric.crosswise;
  return { ...fabric, ...usableWidths(figure.length(width, 'cloth.width'), change, fabric.selvage) };
}
