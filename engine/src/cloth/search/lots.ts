import { boundsOf, translate, type Path } from '../../geometry/index.ts';
import {
  pack,
  type Effort,
  type Meetings,
  type PackingItem,
  type PackingResult,
  type Placement,
} from '../../packing/index.ts';
import type { Fabric } from '../fabric.ts';
import { placedAt, standing, turnsOf, type Lying } from './lying.ts';
import type { Phases } from './match.ts';
import { outwards } from './outwards.ts';
import type { Strip } from './strip.ts';

/** Outlines that are alike, whoever wears them: one item of the packing. */
export interface Lot {
  readonly item: PackingItem;
  /** About the item's origin. */
  readonly outline: Path;
  /** As many as the item is wanted. */
  readonly members: readonly Lying[];
}

/** Groups outlines that no chalk line could tell apart, so that the packing sees few shapes. */
export function lotsOf(lying: readonly Lying[], fabric: Fabric, phases: Phases): Lot[] {
  const lots = new Map<string, { item: PackingItem; outline: Path; members: Lying[] }>();
  for (const each of lying) {
    const phase = phases(each);
    const stood = standing(each);
    const outline = phase ? translate(stood, -phase.origin.x, -phase.origin.y) : stood;
    const free = turnsOf(each, fabric.oneWay);
    // A pattern that has to meet runs the same way on every panel.
    const turns = phase ? { ...free, rotations: free.rotations.filter((turn) => turn % 180 === 0) } : free;
    const corners = outwards(outline);
    const key = JSON.stringify([
      turns,
      each.onFold,
      phase?.lattice,
      corners.map(({ x, y }) => [fine(x), fine(y)]),
    ]);
    const lot = lots.get(key);
    if (lot) lot.members.push(each);
    else {
      const item: PackingItem = {
        outline: corners,
        demand: 1,
        ...turns,
        ...(each.onFold === 'no' ? {} : { against: each.onFold === 'along' ? 'high' : 'start' }),
        ...(phase ? { lattice: phase.lattice } : {}),
      };
      lots.set(key, { item, outline, members: [each] });
    }
  }
  return [...lots.values()].map((lot) => ({ ...lot, item: { ...lot.item, demand: lot.members.length } }));
}

/** To a hundredth of a millimetre. */
const fine = (value: number): number => Math.round(value * 100);

/** Least size across the strip in any turn: what must fit between its edges. */
export const breadthOf = ({ outline, item }: Lot): number => {
  const { width, height } = boundsOf(outline);
  const turns = item.rotations === 'any' ? [0, 90] : item.rotations;
  return Math.min(...turns.map((turn) => (turn % 180 === 0 ? height : width)));
};

/** A place that only rounding gives is none. */
const SURE = 0.01;

/**
 * A piece that is too broad to lie where its pattern would meet lies where it may: a whole width of the cloth has its
 * stripes where the cloth has them.
 */
export function relaxed(lot: Lot, { width }: Strip): Lot {
  const { lattice, rotations } = lot.item;
  if (!lattice?.y || rotations === 'any') return lot;
  const { step, at } = lattice.y;
  const { top, bottom } = boundsOf(lot.outline);
  const hasPlace = rotations.some((turn) => {
    const [low, high] = turn === 180 ? [-bottom, -top] : [top, bottom];
    return at + step * Math.ceil((-low - at) / step) <= width - high - SURE;
  });
  if (hasPlace) return lot;
  return { ...lot, item: { ...lot.item, lattice: lattice.x ? { x: lattice.x } : {} } };
}

/** Packs lots on a strip, from a given lay where there is one. */
export const packLots = (
  lots: readonly Lot[],
  { width, keepOut, sold }: Strip,
  { between }: Fabric,
  effort: Effort,
  { start, meetings }: { readonly start?: readonly Placement[] | null; readonly meetings?: Meetings } = {},
): PackingResult =>
  pack(
    {
      width,
      items: lots.map(({ item }) => item),
      spacing: between.value,
      keepOut,
      ...(start ? { start } : {}),
      ...(sold ? { sold } : {}),
    },
    effort,
    meetings,
  );

/** A piece on the strip. */
export interface Placed {
  readonly lying: Lying;
  readonly outline: Path;
  readonly turned: boolean;
}

/** Which of its lot each copy is matters to nobody: they are alike. */
export function placedOf(lots: readonly Lot[], placements: readonly Placement[]): Placed[] {
  const next = lots.map(() => 0);
  return placements.flatMap((placement): Placed[] => {
    const lot = lots[placement.item];
    const at = next[placement.item] ?? 0;
    next[placement.item] = at + 1;
    const lying = lot?.members[at];
    if (!lot || !lying) return [];
    const outline = placedAt(lot.outline, placement);
    return [{ lying, outline, turned: placement.rotation === 180 || placement.mirrored }];
  });
}
