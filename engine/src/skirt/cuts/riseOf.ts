import { mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Around } from '../panel.ts';
import type { Rise } from './rise.ts';

/** The rise of a panel by where it is worn: front, back and sides as measured, and a smooth way from one to the next. */
export function riseOf({ body }: DraftContext, { from, to }: Around): Rise {
  const none = { value: 0 };
  const { front, back, left, right } = (
    body as unknown as { rises?: Record<'front' | 'back' | 'left' | 'right', { value: number }> }
  ).rises ?? { front: none, back: none, left: none, right: none };
  /** `turn` 0 at the centre front, ¼ at the left side, ½ behind, ¾ at the right side. */
  const at = (turn: number): number => {
    const angle = 2 * Math.PI * turn;
    // Through all four places: the mean, what front and back differ, what the sides do, and what both pairs do.
    const mean = (front.value + back.value + left.value + right.value) / 4;
    const pairs = (front.value + back.value - left.value - right.value) / 4;
    return (
      mean +
      ((front.value - back.value) / 2) * Math.cos(angle) +
      ((left.value - right.value) / 2) * Math.sin(angle) +
      pairs * Math.cos(2 * angle)
    );
  };
  // On the sheet the wearer's left lies on the right: a panel is drawn from outside.
  return { left: mm(at(from)), centre: mm(at((from + to) / 2)), right: mm(at(to)) };
}
