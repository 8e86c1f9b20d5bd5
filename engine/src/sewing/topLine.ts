import type { Bench } from './bench.ts';

/** What the panels' top line is to her hands, in a word that messages choose by: where a casing folds, or where a waist is sewn on. */
export const topLine = ({ skirt }: Bench): 'fold' | 'seam' =>
  skirt.waist.build === 'turned' ? 'fold' : 'seam';
