import { polyline, type Path } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Fabric } from '../fabric.ts';
import type { Table } from '../lays/table.ts';
import { freeRectangle, type Free } from './free.ts';

/** Cloth that is left in one rectangle. */
export interface Rest {
  /** As a tape measures it on the washed cloth: with the selvages that it reaches, folds opened out. */
  readonly opened: { readonly along: Mm; readonly across: Mm };
  /** How many of that size: one a layer, where no fold holds them together. */
  readonly count: number;
}

/** What is left of a table: where it lies on it, and what that is once it is cut out and opened. */
export interface LeftOver extends Free, Rest {}

const HAIR = 1e-6;

/** The largest rectangle of a table that nothing is cut from; null where that is a rag. `taken` lies on it besides its pieces. */
export function restOf(
  table: Omit<Table, 'pieces'> & { readonly pieces: readonly { readonly outline: Path }[] },
  { selvage }: Pick<Fabric, 'selvage'>,
  taken: readonly Path[] = [],
): LeftOver | null {
  const isSelvage = { top: table.top.startsWith('selvage'), bottom: table.bottom.startsWith('selvage') };
  const room = {
    left: 0,
    right: table.along,
    top: isSelvage.top ? selvage.value : 0,
    bottom: table.across - (isSelvage.bottom ? selvage.value : 0),
  };
  const free = freeRectangle(room, [...table.pieces.map(({ outline }) => outline), ...taken]);
  if (!free) return null;
  const reaches = {
    left: free.x <= room.left + HAIR,
    right: free.x + free.along >= room.right - HAIR,
    top: free.y <= room.top + HAIR,
    bottom: free.y + free.across >= room.bottom - HAIR,
  };
  const selvages = Number(isSelvage.top && reaches.top) + Number(isSelvage.bottom && reaches.bottom);
  const across = free.across + selvages * selvage.value;
  const opened = (along: number, over: number, count: number): LeftOver => ({
    ...free,
    opened: { along: mm(along), across: mm(over) },
    count,
  });
  if (table.bottom === 'fold' && reaches.bottom) return opened(free.along, 2 * across, 1);
  if (table.right === 'fold' && reaches.right) return opened(2 * free.along, across, 1);
  if (table.left === 'two folds' && reaches.left)
    return reaches.right ? opened(4 * free.along, across, 1) : opened(2 * free.along, across, 2);
  if (table.right === 'fold and two ends' && reaches.right) return opened(2 * free.along, across, 1);
  return opened(free.along, across, table.layers);
}

/** The strip beside what was folded that single pieces are cut from, as it lies on the folded cloth. */
export function stripTaken({ along, across, bottom }: Omit<Table, 'pieces'>, strip: Mm): Path {
  const [top, low] = bottom === 'fold' ? [0, strip] : [across - strip, across];
  const corners = [
    [0, top],
    [along, top],
    [along, low],
    [0, low],
  ] as const;
  return polyline(
    corners.map(([x, y]) => ({ x, y })),
    { closed: true },
  );
}
