import type { Draft } from '../cuts/index.ts';
import type { Panel, Round } from '../panel.ts';
import type { SeamSide } from './extra.ts';

/** A seam of one round of panels: the right edge of the one, drawn, is sewn to the left edge of the other. */
export interface SideSeam {
  readonly side: SeamSide;
  readonly before: Panel;
  readonly after: Panel;
}

const turns: Readonly<Record<SeamSide, number>> = { left: 0.25, back: 0.5, right: 0.75 };

/**
 * How far from its place a seam still serves: half way from the side to the middle of the front, where a hand still
 * finds its pocket; behind, a sixteenth of the round, about where one hand is broad. Common practice, no source.
 */
const within: Readonly<Record<SeamSide, number>> = { left: 1 / 8, right: 1 / 8, back: 1 / 16 };
const HAIR = 1e-6;

const onTheRound = (turn: number): number => turn - Math.floor(turn);
const apart = (one: number, other: number): number => {
  const away = Math.abs(onTheRound(one) - onTheRound(other));
  return Math.min(away, 1 - away);
};

/** The seam of a round nearest to a place; of two as near, the one further forward. Null where none serves. */
export function seamAt(draft: Draft, { panels }: Round, side: SeamSide): SideSeam | null {
  // A wrap's free ends may lie one over the other, and are not sewn.
  const meet = (one: number, other: number): boolean =>
    draft.overlap ? Math.abs(one - other) < HAIR : apart(one, other) < HAIR;
  const place = turns[side];
  let best: SideSeam | null = null;
  let nearest = within[side] + HAIR;
  for (const before of panels) {
    const after = panels.find(({ around }) => meet(around.from, before.around.to));
    const away = apart(before.around.to, place) + HAIR * apart(before.around.to, 0);
    if (!after || away >= nearest) continue;
    nearest = away;
    best = { side, before, after };
  }
  return best;
}
