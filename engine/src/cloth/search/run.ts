import type { Placement } from '../../packing/index.ts';
import type { Cutting } from '../blocks.ts';
import type { HandPlaced } from './handStart.ts';
import type { Lot } from './lots.ts';
import type { Variant } from './variants.ts';

/** One way of giving the pieces to the packing. */
export interface Run {
  readonly lots: readonly Lot[];
  readonly variant: Variant;
  /** What is too broad for the cloth. */
  readonly unfit: readonly Cutting[];
  /** Wearers of whose skirts something is cut in a single layer because it is too broad for the fold. */
  readonly apart: readonly string[];
  readonly start: readonly HandPlaced[] | null;
}

/** Whether the packing would see the same pieces. */
export const isSameRun = (one: Run, other: Run): boolean =>
  one.lots.length === other.lots.length &&
  one.lots.every(({ item, members }) =>
    other.lots.some(
      (lot) =>
        lot.members.length === members.length &&
        lot.item.outline.length === item.outline.length &&
        lot.item.outline.every(({ x, y }, i) => {
          const at = item.outline[i];
          return at !== undefined && Math.abs(at.x - x) < 0.01 && Math.abs(at.y - y) < 0.01;
        }),
    ),
  );

/** Pieces as they were laid by hand, as copies of their lots. */
export function placementsOf(lots: readonly Lot[], start: readonly HandPlaced[]): Placement[] {
  return start.flatMap(({ lying, placement }) => {
    const item = lots.findIndex(({ members }) => members.includes(lying));
    return item < 0 ? [] : [{ ...placement, item }];
  });
}
