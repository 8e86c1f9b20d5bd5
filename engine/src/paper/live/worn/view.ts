import type { Around, Round, Skirt } from '../../../skirt/index.ts';
import type { WornSide } from './stance.ts';

/** A stretch across the picture: from and to, −1 its left edge to 1 its right. */
export type Stretch = readonly [from: number, to: number];

/** Turns round the body that the middle of the picture looks at: 0 the middle of the front, ¼ the wearer's left. */
const middleOf: Readonly<Record<WornSide, number>> = { front: 0, side: 0.25, back: 0.5 };

export const turnAt = (side: WornSide, across: number): number => middleOf[side] + across / 4;

/** Where a turn lies across the picture: past −1 and 1 it is on the far side. */
export function acrossOf(side: WornSide, turn: number): number {
  const away = turn - middleOf[side];
  return 4 * (away - Math.round(away));
}

/** Whether a place is seen at all; at the very edges only as an edge. */
export const isSeen = (across: number): boolean => Math.abs(across) < 0.97;

/** What is seen of a part of the round. */
export function stretchesSeen(side: WornSide, { from, to }: Around): Stretch[] {
  if (to - from > 1 - HAIR) return [[-1, 1]];
  const start = 4 * (from - middleOf[side]);
  const long = 4 * (to - from);
  return [-8, -4, 0, 4, 8].flatMap((round): Stretch[] => {
    const [left, right] = [Math.max(-1, start + round), Math.min(1, start + round + long)];
    return right - left > 1e-6 ? [[left, right]] : [];
  });
}

/** Stretches that touch become one, so that what lies along them has no ends between. */
export function joined(stretches: readonly Stretch[]): Stretch[] {
  const out: Stretch[] = [];
  for (const [from, to] of [...stretches].sort(([a], [b]) => a - b)) {
    const last = out.at(-1);
    if (last && from <= last[1] + 1e-3) out[out.length - 1] = [last[0], Math.max(last[1], to)];
    else out.push([from, to]);
  }
  return out;
}

const HAIR = 1e-6;

/** Where the panels of a round are joined, in turns. What lies over itself has two ends that are not. */
export function seamTurns({ overlap }: Pick<Skirt, 'overlap'>, { panels }: Round): number[] {
  const meets = (one: number, other: number): boolean => {
    const away = one - other;
    return Math.abs(overlap ? away : away - Math.round(away)) < HAIR;
  };
  return panels
    .filter(({ around }) => panels.some((other) => meets(other.around.from, around.to)))
    .map(({ around }) => around.to);
}

const apart = (one: number, other: number): number => Math.abs(one - other - Math.round(one - other));

/** Of some turns the nearest to a place, where one is near enough to serve; of two as near, the one further forward. */
export function nearestTo(turns: readonly number[], place: number, within: number): number | null {
  const away = (turn: number): number => apart(turn, place) + HAIR * apart(turn, 0);
  const [best] = [...turns].sort((a, b) => away(a) - away(b));
  return best !== undefined && apart(best, place) <= within + HAIR ? best : null;
}
