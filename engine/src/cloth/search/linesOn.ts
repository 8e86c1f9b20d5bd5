import { mm, type Mm } from '../../units/index.ts';
import type { Fabric, Pattern } from '../fabric.ts';
import { usableOf } from '../job/lengths.ts';
import type { FoundTable } from '../job/found.ts';
import type { Table } from '../lays/table.ts';
import { apart, MEETS, type PatternOn } from './match.ts';
import type { FoldOn, Strip } from './strip.ts';
import type { LayKind } from '../options.ts';

/** Where a line or crossing of a pattern passes: a fold across the cloth, drawn at a table's right, lies on one. */
export const linesOn = (
  { along, right }: Pick<Table, 'along' | 'right'>,
  { at }: Pick<Pattern, 'at'>,
): PatternOn => ({
  along: right === 'fold' ? along : at.along,
  across: at.across,
});

/** The same on a strip that lies so, between its edges. */
export function patternOn(
  { pattern, selvage }: Fabric,
  way: LayKind,
  { width }: Strip,
  on: FoldOn,
): PatternOn {
  if (!pattern) return { along: 0, across: 0 };
  return {
    // The strip begins at a fold across the cloth, and ends at one along it.
    along: way === 'crosswise fold' ? 0 : pattern.at.along,
    across:
      way === 'lengthwise fold'
        ? width - (on === 'line' ? 0 : (pattern.across ?? 0) / 2)
        : pattern.at.across - selvage.value,
  };
}

/** Below this two selvages lie on one another. */
const APART = 0.5;

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
    beyond: mm(beyond < APART ? 0 : beyond),
  };
}
