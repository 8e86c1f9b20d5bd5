import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { work, type Work } from '../works.ts';

/** Times back and forth over the lapped elastic, and over each seam where it is caught. Common practice, no source. */
const JOIN_ROUNDS = 4;
const CATCH_ROUNDS = 2;

/** The elastic lapped into a ring, and caught in each seam of the skirt. */
export function elasticWorks(width: Figure<Mm>, seams: number): Work[] {
  const over = (code: 'waist.elasticJoinLine' | 'waist.elasticCatchLine', rounds: number): Figure<Mm> =>
    figure.length(mm(rounds * width.value), code, { width, rounds: figure.count(rounds, 'waist.rounds') });
  return [
    work('elastic join', over('waist.elasticJoinLine', JOIN_ROUNDS)),
    ...(seams > 0 ? [work('elastic catch', over('waist.elasticCatchLine', CATCH_ROUNDS), seams)] : []),
  ];
}
