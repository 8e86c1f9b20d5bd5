import type { Fabric } from '../fabric.ts';
import type { ClothLength } from './found.ts';

/** What a wash leaves of a length: all of one that was washed already. */
export const kept = (washed: boolean, change: Fabric['lengthwise']): number =>
  washed ? 1 : 1 - change.value;

/** Width between the selvages after the wash. */
export const usableOf = ({ width, washed }: ClothLength, { crosswise, selvage }: Fabric): number =>
  Math.max(0, width * kept(washed, crosswise) - 2 * selvage.value);

/** Length after the wash; infinite for the bolt. */
export const lengthOf = ({ length, washed }: ClothLength, { lengthwise }: Fabric): number =>
  length === null ? Infinity : length * kept(washed, lengthwise);
