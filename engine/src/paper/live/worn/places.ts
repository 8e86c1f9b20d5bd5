import type { SkirtPlan } from '../../../plan/index.ts';
import type { Overlap, Round, SeamSide } from '../../../skirt/index.ts';
import { nearestTo, seamTurns } from './view.ts';

/** How far from its place a seam serves for what is sewn into it, in turns. */
const SERVES: Readonly<Record<SeamSide, number>> = { left: 1 / 8, right: 1 / 8, back: 1 / 16 };
const PLACE: Readonly<Record<SeamSide, number>> = { left: 0.25, right: 0.75, back: 0.5 };

/** The turn of the seam in which something is made; its place where no seam is near. */
export function turnOf({ skirt }: SkirtPlan, round: Round, side: SeamSide): number {
  return nearestTo(seamTurns(skirt, round), PLACE[side], SERVES[side]) ?? PLACE[side];
}

/** A waist opens in the seam behind; where there is none, in the one at the wearer's left. */
export function openingTurn({ skirt }: SkirtPlan): number {
  const turns = seamTurns(skirt, skirt.rounds[0]);
  return nearestTo(turns, PLACE.back, SERVES.back) ?? nearestTo(turns, PLACE.left, SERVES.left) ?? PLACE.left;
}

/** The end of a skirt that lies over itself: where it is seen, and which way the cloth it is the end of lies. */
export interface OverEdge {
  readonly turn: number;
  /** From the edge towards its own cloth, across the wearer: 1 to her left. */
  readonly own: 1 | -1;
  readonly overlap: Overlap;
}

/** The wearer's right end lies over her left one, so that its edge is seen at her left. */
export function overEdge({ skirt }: SkirtPlan): OverEdge | null {
  const { overlap, rounds } = skirt;
  if (!overlap) return null;
  const end = Math.max(...rounds[0].panels.map(({ around }) => around.to));
  return { turn: end, own: -1, overlap };
}
