import type { SkirtPlan } from '../../../plan/index.ts';

/** A round of panels that hangs from another, by its levels: 0 the top of the waist, 1 the hem. */
export interface Hanging {
  readonly from: number;
  readonly to: number;
  /** Its cloth for each unit of the one above. */
  readonly ratio: number;
}

/** Every round but the first, from the top down. */
export function hangingRounds({ skirt }: SkirtPlan): Hanging[] {
  const { rounds } = skirt;
  if (rounds.length < 2) return [];
  const length = Math.max(1, skirt.finishedLength.value);
  const at = (fromHem: number): number => Math.max(0, Math.min(1, 1 - fromHem / length));
  return rounds.slice(1).map(({ top, fromHem }, i) => {
    const above = rounds[i];
    return {
      from: at(above?.fromHem ?? length),
      to: at(fromHem),
      ratio: top.value / Math.max(1, above?.bottom.value ?? top.value),
    };
  });
}
