import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { work, type Work } from '../works.ts';

/** Times back and forth over the lapped elastic, and over each seam where it is caught. Common practice, no source. */
const JOIN_ROUNDS = 4;
const CATCH_ROUNDS = 2;

const over = (
  width: Figure<Mm>,
  code: 'waist.elasticJoinLine' | 'waist.elasticCatchLine',
  rounds: number,
): Figure<Mm> =>
  figure.length(mm(rounds * width.value), code, { width, rounds: figure.count(rounds, 'waist.rounds') });

/** The elastic lapped into a ring, and caught in each seam of the skirt. */
export function elasticWorks(width: Figure<Mm>, seams: number): Work[] {
  return [
    work('elastic join', over(width, 'waist.elasticJoinLine', JOIN_ROUNDS)),
    ...(seams > 0 ? [elasticCatches(width, seams)] : []),
  ];
}

/** Elastic caught in so many seams. */
export const elasticCatches = (width: Figure<Mm>, seams: number): Work =>
  work('elastic catch', over(width, 'waist.elasticCatchLine', CATCH_ROUNDS), seams);
