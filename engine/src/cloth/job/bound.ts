import { areaOf } from '../../geometry/index.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob } from './found.ts';
import { lengthOf, usableOf } from './lengths.ts';

/**
 * Cloth after the wash that no lay takes less than: all area over the widest length; and what the packing proved, where
 * that holds for every lay of this way. `proved` is in lengths of the strip, one for each variant that was packed.
 */
export function boundOf(job: ClothJob, way: LayKind, proved: readonly number[]): number {
  const { lengths, wanted, fabric } = job;
  const byArea = areaIn(wanted) / Math.max(1, ...lengths.map((length) => usableOf(length, fabric)));
  // Several skirts may lie some along and some across the bolt; folded cloth may have some pieces on the fold, some in pairs.
  const isWhole = way === 'open' && (proved.length === 1 || wanted.length === 1);
  if (lengths.length > 1 || !isWhole || proved.length === 0) return byArea;
  return Math.max(byArea, Math.min(...proved));
}

/**
 * Cloth off the bolt, after the wash, that no lay takes less than, where none takes less than `least` in all: what the
 * lengths at hand could hold, were they covered from edge to edge, is not bought.
 */
export function boundOffBolt({ lengths, wanted, fabric }: ClothJob, least: number): number {
  const bolt = lengths.find(({ length }) => length === null);
  if (!bolt) return 0;
  if (lengths.length === 1) return least;
  const held = lengths
    .filter(({ length }) => length !== null)
    .reduce((sum, length) => sum + usableOf(length, fabric) * lengthOf(length, fabric), 0);
  return Math.max(0, areaIn(wanted) - held) / Math.max(1, usableOf(bolt, fabric));
}

const areaIn = (wanted: ClothJob['wanted']): number =>
  wanted
    .flatMap(({ mains, parts }) => [...mains, ...parts])
    .reduce((sum, { piece, copies }) => sum + areaOf(piece.outline) * copies.length, 0);
