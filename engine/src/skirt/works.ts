import type { Figure } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';

/** What is stitched, by what it holds together. Ribbons, and the hem round, are sewn besides. */
export type WorkName =
  | 'side seam'
  | 'gore seam'
  | 'strip join'
  | 'gathering rows'
  | 'tier seam'
  | 'facing'
  | 'casing'
  | 'casing seam'
  | 'casing join'
  | 'band seam'
  | 'band fold'
  | 'band ends'
  | 'dart'
  | 'placket'
  | 'zip'
  | 'buttonhole'
  | 'button'
  | 'tie'
  | 'elastic join'
  | 'elastic catch'
  | 'cord eyelet'
  | 'cord catch'
  | 'pocket seam'
  | 'pocket bag'
  | 'slit edge'
  | 'tuck'
  | 'lining seam'
  | 'lining hem'
  | 'lining top';

/** Lines of stitching that are alike. */
export interface Work {
  readonly name: WorkName;
  readonly count: number;
  /** Of one of them. */
  readonly each: Figure<Mm>;
  /** The round of panels that it is on, from the top, from 0; of a seam between two the lower. */
  readonly round: number;
}

export const work = (name: WorkName, each: Figure<Mm>, count = 1, round = 0): Work => ({
  name,
  count,
  each,
  round,
});
