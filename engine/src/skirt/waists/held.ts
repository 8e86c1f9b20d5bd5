import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';

/** A waist stands over half of the skirt at most: a tall band on a doll's skirt would leave no panels. */
const MOST_OF_SKIRT = 0.5;

/** Highest that a waist can stand on this skirt. */
export const mostHeight = ({ body }: DraftContext): Mm => mm(MOST_OF_SKIRT * body.waistToHem.value);

/** Share of its height that a waist of the skirt's own length can have: 1 for nearly all. */
export const shareHeld = (context: DraftContext, height: Mm): number =>
  Math.min(1, mostHeight(context) / height);

/** A band's height as asked, or as much of it as the skirt's length has room for. */
export function heldHeight(context: DraftContext, asked: Mm): Figure<Mm> {
  if (shareHeld(context, asked) === 1) return figure.length(asked, 'waist.bandHeight');
  const { mark } = context;
  const half = roundTo(mostHeight(context), mark, 'down');
  return figure.length(mm(Math.max(mark, half)), 'waist.bandHeld');
}

export const heldNotices = (context: DraftContext, asked: Mm, height: Figure<Mm>): Notice[] =>
  shareHeld(context, asked) === 1
    ? []
    : [
        caution('waist.heldDown', {
          asked: figure.length(asked, 'waist.bandHeight'),
          height,
          length: context.body.waistToHem,
        }),
      ];
