import { areaOf } from '../../geometry/index.ts';
import type { Skirt } from '../../skirt/index.ts';
import type { ContrastOptions } from '../contrast.ts';
import { readFabric } from '../fabric.ts';
import type { Lay } from '../lays/lay.ts';
import { laysOf } from '../lays/laysOf.ts';
import type { ClothOptions } from '../options.ts';
import { ownPieces } from '../piecesOf.ts';
import { leastOf } from './least.ts';

/** What a skirt is asked of its cloth for. */
export interface OffBolt {
  /** Whether the print must not lie on its side. */
  readonly isUpright: boolean;
  /** Cloth before the wash, in millimetres, past which it is of no use. */
  readonly within: number;
}

/**
 * The lay by hand, of one skirt off a bolt that never ends, that takes least cloth; null where none fits or none takes so
 * little. Pieces whose area alone takes more are not laid.
 */
export function leastOffBolt(
  skirt: Skirt,
  chosen: ClothOptions,
  contrast: readonly ContrastOptions[],
  { isUpright, within }: OffBolt,
): Lay | null {
  const fabric = readFabric(chosen);
  const pieces = ownPieces(skirt, contrast);
  const area = [...pieces.mains, ...pieces.parts].reduce(
    (sum, { piece, copies }) => sum + areaOf(piece.outline) * copies.length,
    0,
  );
  if (area / fabric.usableFromSelvage.value / (1 - fabric.lengthwise.value) > within) return null;
  const lays = laysOf({ ...pieces, fabric }).filter(({ printOnItsSide }) => !isUpright || !printOnItsSide);
  const least = leastOf(lays, { oneWay: false });
  return least && least.clothBefore.value <= within ? least : null;
}
