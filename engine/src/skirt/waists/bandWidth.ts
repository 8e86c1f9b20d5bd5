import type { Figure } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';

/** A doubled band as it is cut: twice its height, and a seam allowance along both edges. */
export function bandWidth(height: Figure<Mm>, seam: Figure<Mm>, mark: Mm): Figure<Mm> {
  const exact = mm(2 * height.value + 2 * seam.value);
  return figure.length(roundTo(exact, mark, 'up'), 'waist.bandWidth', { height, seam }, { exact });
}
