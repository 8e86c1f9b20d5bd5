import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { hipNeed } from '../goesOn.ts';
import type { TopNeed } from '../top.ts';

/** What is asked of panels whose own top edge is turned to the inside: its allowance, and to be pulled on over the hip. */
export const turnedTop = ({ body }: DraftContext, allowance: Figure<Mm>): TopNeed => ({
  allowance,
  turned: true,
  above: figure.length(mm(0), 'waist.nothingAbove'),
  round: hipNeed(body),
  opens: false,
});
