import { mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Around } from '../panel.ts';
import { LEVEL, type Rise } from './rise.ts';

type Rises = DraftContext['body']['rises'];

/** The rise of a panel by where it is worn: front, back and sides as measured, and a smooth way from one to the next. */
export function riseOf({ body: { rises } }: DraftContext, { from, to }: Around): Rise {
  if (Object.values(rises).every(({ value }) => value === 0)) return LEVEL;
  // On the sheet the wearer's left lies on the right: a panel is drawn from outside.
  const at = (turn: number) => mm(between(rises, turn));
  return {
    left: at(from),
    centre: at((from + to) / 2),
    right: at(to),
    along: (place) => at(from + ((place + 1) / 2) * (to - from)),
  };
}

/** Through all four places: the mean, what front and back differ, what the sides do, and what both pairs do. */
function between({ front, back, left, right }: Rises, turn: number): number {
  const angle = 2 * Math.PI * turn;
  const mean = (front.value + back.value + left.value + right.value) / 4;
  const pairs = (front.value + back.value - left.value - right.value) / 4;
  return (
    mean +
    ((front.value - back.value) / 2) * Math.cos(angle) +
    ((left.value - right.value) / 2) * Math.sin(angle) +
    pairs * Math.cos(2 * angle)
  );
}
