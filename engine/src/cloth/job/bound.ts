import { areaOf } from '../../geometry/index.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob } from './found.ts';
import { usableOf } from './lengths.ts';

/**
 * Cloth after the wash that no lay takes less than: all area over the widest length; and what the packing proved, where
 * that holds for every lay of this way. `proved` is in lengths of the strip, one for each variant that was packed.
 */
export function boundOf(job: ClothJob, way: LayKind, proved: readonly number[]): number {
  const { lengths, wanted, fabric } = job;
  const area = wanted
    .flatMap(({ mains, parts }) => [...mains, ...parts])
    .reduce((sum, { piece, copies }) => sum + areaOf(piece.outline) * copies.length, 0);
  const byArea = area / Math.max(1, ...lengths.map((length) => usableOf(length, fabric)));
  // Several skirts may lie some along and some across the bolt; folded cloth may have some pieces on the fold, some in pairs.
  const isWhole = way === 'open' && (proved.length === 1 || wanted.length === 1);
  if (lengths.length > 1 || !isWhole || proved.length === 0) return byArea;
  return Math.max(byArea, Math.min(...proved));
}
