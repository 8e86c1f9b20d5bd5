import { mm } from '../../units/index.ts';
import type { Fabric } from '../fabric.ts';
import type { ClothLength, FoundTable } from './found.ts';
import { RAG } from './free.ts';
import { lengthOf, trimOf, usableOf } from './lengths.ts';
import type { Rest } from './rest.ts';

/** What of a length at hand lies beyond all its tables, in its whole width; null where it is a rag, and of the bolt. */
export function uncutOf(from: ClothLength, tables: readonly FoundTable[], fabric: Fabric): Rest | null {
  const lying = tables.reduce((sum, table) => sum + unfolded(table), 0);
  const along = lengthOf(from, fabric) - trimOf(from, fabric) - lying;
  const across = usableOf(from, fabric) + 2 * fabric.selvage.value;
  return from.length === null || Math.min(along, across) < RAG
    ? null
    : { opened: { along: mm(along), across: mm(across) }, count: 1 };
}

/** How much of its length a table lies on: folds across it opened out; none where it lies on cloth of one before it. */
function unfolded({ where, along, layers, left, right }: FoundTable): number {
  if (where === 'beside' || where === 'opened') return 0;
  return along * (left.includes('fold') || right.includes('fold') ? layers : 1);
}
