import type { SkirtPlan } from '../../../plan/index.ts';

/** How far the waist lies above its base at a turn of the round, in millimetres of cloth. */
export type RiseAt = (turn: number) => number;

/** Null where the waist is level. Between front, sides and back it goes the way that panels are cut. */
export function risesOf({ body: { rises } }: SkirtPlan): RiseAt | null {
  const { front, back, left, right } = rises;
  const [f, b, l, r] = [front.value, back.value, left.value, right.value];
  if (f === 0 && b === 0 && l === 0 && r === 0) return null;
  const mean = (f + b + l + r) / 4;
  const pairs = (f + b - l - r) / 4;
  return (turn) => {
    const angle = 2 * Math.PI * turn;
    return (
      mean + ((f - b) / 2) * Math.cos(angle) + ((l - r) / 2) * Math.sin(angle) + pairs * Math.cos(2 * angle)
    );
  };
}

/** Of the skirt's length, the most in which the waist's rise is lost: what lies below is level. */
const MOST_SHARE = 0.3;
/** Of what is between the waist and the highest row, so much. */
const ABOVE_ROWS = 0.9;

/** Where down the skirt, 0 to 1, everything is level: above the highest row, for rows are. */
export function levelFrom({ skirt, ribbons }: SkirtPlan): number {
  const highest = Math.max(0, ...ribbons.rows.map(({ fromHem, width }) => fromHem.value + width.value));
  const free = 1 - highest / Math.max(1, skirt.finishedLength.value);
  return Math.max(0.02, Math.min(MOST_SHARE, ABOVE_ROWS * free));
}
