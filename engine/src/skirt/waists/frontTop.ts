import type { Figure } from '../../figure/index.ts';
import { lengthOf } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Draft } from '../cuts/index.ts';
import type { Around } from '../panel.ts';

/** The front half of the round at the top, side to side, and the back half. */
export function topHalves(draft: Draft): { readonly front: Figure<Mm>; readonly back: Figure<Mm> } {
  let [all, before] = [0, 0];
  for (const { shape, around } of draft.rounds[0].panels) {
    const top = lengthOf(shape.edges.find(({ name }) => name === 'waist')?.finished ?? []);
    all += top;
    before += top * shareInFront(around);
  }
  const share = figure.percent(all > 0 ? before / all : 0.5, 'waist.frontTopShare');
  const { opening } = draft;
  const front = figure.length(mm(opening.value * share.value), 'waist.frontTop', { opening, share });
  const back = figure.length(mm(opening.value - front.value), 'waist.backTop', { opening, front });
  return { front, back };
}

/** The front reaches a quarter turn to either side of its centre, which is 0, 1, … turns. */
function shareInFront({ from, to }: Around): number {
  const within = (centre: number) => Math.max(0, Math.min(to, centre + 0.25) - Math.max(from, centre - 0.25));
  return to > from ? [-1, 0, 1].map(within).reduce((sum, each) => sum + each, 0) / (to - from) : 0;
}
