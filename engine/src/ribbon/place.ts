import type { Panel, Round, Skirt } from '../skirt/index.ts';
import type { Placement } from './options.ts';

/** The round of panels that a height above the finished hem lies on, and its number from the top, from 1. */
export function roundAt(skirt: Skirt, fromHem: number): { readonly round: Round; readonly number: number } {
  const found = skirt.rounds.findIndex((round) => fromHem >= round.fromHem - HAIR);
  const number = found < 0 ? skirt.rounds.length : found + 1;
  return { round: skirt.rounds[number - 1] ?? skirt.rounds[0], number };
}

/** What binary fractions lose is not another tier. */
const HAIR = 0.01;

/** The panels of a round that are to carry a row. */
export function panelsWithRows(panels: readonly Panel[], where: Placement): readonly Panel[] {
  if (where === 'front and back' || where === 'round') return panels;
  const chosen = panels.filter((panel) => sideOf(panel) === where);
  // What goes all the way round in one piece has no front of its own: its first panel is worn in front, its last behind.
  return chosen.length > 0
    ? chosen
    : panels.slice(where === 'front' ? 0 : -1, where === 'front' ? 1 : undefined);
}

/** Front or back by the middle of the panel; a panel in the middle of a side is neither. */
function sideOf({ around: { from, to } }: Panel): 'front' | 'back' | 'side' {
  const middle = (((from + to) / 2) % 1) + 1;
  const away = Math.min(middle % 1, 1 - (middle % 1));
  return away < 0.25 - EVEN ? 'front' : away > 0.25 + EVEN ? 'back' : 'side';
}

/** Turns within which a panel's middle is at the side seam. */
const EVEN = 0.01;
