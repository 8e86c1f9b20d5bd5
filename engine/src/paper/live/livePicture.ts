import type { Point } from '../../geometry/index.ts';
import type { HandleName } from '../../plan/index.ts';
import type { Drawing } from '../drawing/index.ts';

/** Where a handle of the skirt lies in a drawing, and which way it moves. */
export interface PlacedHandle {
  readonly name: HandleName;
  /** In the drawing's own millimetres. */
  readonly at: Point;
  /** Unit vector along which the handle's value grows. */
  readonly towards: Point;
  /** By how much the value grows, in millimetres of cloth, for one millimetre of the drawing along `towards`. */
  readonly perMm: number;
}

/** A drawing to look at and to take hold of. */
export interface LivePicture {
  readonly drawing: Drawing;
  readonly handles: readonly PlacedHandle[];
}
