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

/** The most that is trimmed off a length at hand until a band of the pattern lies where it has to; a bolt is bought so much longer. */
export const trimOf = ({ length }: ClothLength, { pattern }: Fabric): number =>
  length !== null && pattern?.match === true ? (pattern.along ?? 0) : 0;

/** What binary fractions lose is no want of cloth. */
const HAIR = 1e-6;

/** Whether a length has room for so much of it, after the wash. */
export const isLongEnough = (length: ClothLength, after: number, fabric: Fabric): boolean =>
  after <= lengthOf(length, fabric) + HAIR;
