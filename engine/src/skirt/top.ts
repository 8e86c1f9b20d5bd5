import type { Figure } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';

/** What a waist asks of the panels below it. */
export interface TopNeed {
  /** Cloth of the panels above their top line. */
  readonly allowance: Figure<Mm>;
  /** Whether that cloth is turned inside along the line (a casing), or sewn in a seam. */
  readonly turned: boolean;
  /** How far the waist's own piece stands above the line: the panels are shorter by it. 0 for a turned casing. */
  readonly above: Figure<Mm>;
  /** Least round of the panels' top, seam to seam: the hip and its ease where it is pulled on, the waist where it opens. */
  readonly round: Figure<Mm>;
  /** Whether it opens, so that it need not pass the hips. */
  readonly opens: boolean;
}
