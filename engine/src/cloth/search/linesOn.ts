import { mm, type Mm } from '../../units/index.ts';
import type { Fabric, Pattern } from '../fabric.ts';
import { usableOf } from '../job/lengths.ts';
import type { FoundTable } from '../job/found.ts';
import type { Table } from '../lays/table.ts';
import { apart, MEETS } from './match.ts';
import type { FoldOn } from './strip.ts';

/** Where a line or crossing of a pattern passes on a table: a fold across the cloth, drawn at the right, lies on one. */
export const linesOn = (
  { along, right }: Pick<Table, 'along' | 'right'>,
  { at }: Pick<Pattern, 'at'>,
): { readonly along: number; readonly across: number } => ({
  along: right === 'fold' ? along : at.along,
  across: at.across,
});

/** How cloth with stripes that meet is folded lengthwise. */
export interface StripedFold {
  readonly on: FoldOn;
  /** From the upper layer's selvage to the fold. */
  readonly from: Mm;
  /** By how much the lower layer reaches beyond the upper one's selvage; 0 where they lie on one another. */
  readonly beyond: Mm;
}

/** Null where no stripes have to meet, or it is not folded so. */
export function stripedFold(
  { across, bottom, from }: Pick<FoundTable, 'across' | 'bottom' | 'from'>,
  fabric: Fabric,
): StripedFold | null {
  const { pattern, selvage } = fabric;
  if (bottom !== 'fold' || pattern?.match !== true || pattern.across === null) return null;
  const beyond = usableOf(from, fabric) + 2 * (selvage.value - across);
  return {
    on: apart(across - pattern.at.across, pattern.across) <= MEETS ? 'line' : 'between',
    from: across,
    beyond: mm(Math.max(0, beyond)),
  };
}
