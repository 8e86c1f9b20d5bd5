import type { Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution } from '../codes.ts';

interface Chosen {
  readonly tiers: number;
  readonly shares?: readonly number[] | undefined;
}

interface TierHeight {
  /** Finished, its top line to its bottom line. */
  readonly height: Mm;
  /** Its bottom line above the finished hem: 0 for the lowest. */
  readonly fromHem: Mm;
}

/**
 * Finished heights of the tiers, from the top down; they add up to the length exactly. Equal where nothing is asked, as
 * makers cut them: one depth to remember. Seams between tiers lie at marks counted from the hem up, so that what is off a
 * mark is in the top tier, below the waist.
 */
export function tierHeights(
  length: Mm,
  { tiers, shares }: Chosen,
  mark: Mm,
): { heights: readonly TierHeight[]; notices: Notice[] } {
  const parts = Array.from({ length: tiers }, (_, i) => shares?.[i] ?? 1);
  const whole = parts.reduce((sum, part) => sum + part, 0);
  /** Where tiers begin and end above the hem: the length first, 0 last. */
  const levels = (at: (level: Mm) => Mm): Mm[] => {
    const inside = parts.slice(1).map((_, i) => {
      const below = parts.slice(i + 1).reduce((sum, part) => sum + part, 0);
      return at(mm((length * below) / whole));
    });
    return [length, ...inside, mm(0)];
  };
  const between = (ends: readonly Mm[]): TierHeight[] =>
    ends.slice(1).map((fromHem, i) => ({ height: mm((ends[i] ?? length) - fromHem), fromHem }));
  const chalked = between(levels((level) => roundTo(level, mark, 'nearest')));
  // A doll's tier lower than the marks lie apart is not rounded away.
  const heights = chalked.every(({ height }) => height > 0) ? chalked : between(levels((level) => level));
  const given = shares?.length ?? tiers;
  return {
    heights,
    notices: given === tiers ? [] : [caution('skirt.tierList', { list: 'shares', given, needed: tiers })],
  };
}
