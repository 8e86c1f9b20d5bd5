import { mm, roundTo, stepsIn, type Mm } from '../units/index.ts';

export interface SpacingWish {
  /** Height of each band, from the hem up. */
  readonly heights: readonly Mm[];
  /** Each gap over the one below it: 1 even, above 1 growing, below 1 shrinking. */
  readonly growth: number;
  /** Lower edge of the lowest band and upper edge of the highest, from the hem. */
  readonly lowest: Mm;
  readonly highest: Mm;
  /** Chalk mark that every lower edge must fall on. */
  readonly mark: Mm;
}

export interface Spaced {
  /** Lower edge of each band, on a mark. */
  readonly lower: readonly Mm[];
  /** Gap above each band but the last, edge to edge. */
  readonly gaps: readonly Mm[];
}

/**
 * Fits bands between two limits with every lower edge on a chalk mark: the limits are snapped first, inwards;
 * then the marks that are left are dealt out one by one to whichever gap is furthest behind its share, so
 * that gaps meant to be equal differ by at most one mark. Null when the bands do not fit.
 */
export function fitBands(wish: SpacingWish): Spaced | null {
  const { heights, mark } = wish;
  const last = heights.at(-1);
  if (last === undefined) return { lower: [], gaps: [] };
  const first = stepsIn(wish.lowest, mark, 'up');
  const top = stepsIn(wish.highest - last, mark, 'down');
  if (top < first) return null;
  const below = heights.slice(0, -1);
  // Marks from each lower edge to the next; at least enough to clear the band itself.
  const pitch = below.map((height) => stepsIn(height, mark, 'up'));
  let left = top - first - pitch.reduce((sum, each) => sum + each, 0);
  if (left < 0) return null;
  if (below.length === 0) return { lower: [mm(first * mark)], gaps: [] };
  const ideal = idealGaps(wish, (top - first) * mark);
  const gapAt = (i: number) => (pitch[i] ?? 0) * mark - (below[i] ?? 0);
  while (left > 0) {
    let furthest = 0;
    for (let i = 1; i < pitch.length; i++)
      if (behind(ideal, gapAt, i) > behind(ideal, gapAt, furthest) + 1e-9) furthest = i;
    pitch[furthest] = (pitch[furthest] ?? 0) + 1;
    left--;
  }
  const lower = [mm(first * mark)];
  for (const each of pitch) lower.push(mm((lower.at(-1) ?? 0) + each * mark));
  return { lower, gaps: below.map((_, i) => mm(gapAt(i))) };
}

/** Least room, from the lower limit up, in which `fitBands` finds place for all: each band waits for the next mark. */
export function roomNeeded(heights: readonly Mm[], lowest: Mm, mark: Mm): Mm {
  const below = heights.slice(0, -1).map((height) => roundTo(height, mark, 'up'));
  const waits = roundTo(lowest, mark, 'up') - lowest;
  return mm(below.reduce((sum, each) => sum + each, waits + (heights.at(-1) ?? 0)));
}

const behind = (ideal: readonly number[], gapAt: (i: number) => number, i: number): number =>
  (ideal[i] ?? 0) - gapAt(i);

/** Gaps in geometric progression that fill the room between the lowest and the highest lower edge. */
function idealGaps({ heights, growth }: SpacingWish, span: number): number[] {
  const below = heights.slice(0, -1);
  const room = span - below.reduce((sum, height) => sum + height, 0);
  const weights = below.map((_, i) => growth ** i);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => (room * weight) / all);
}

/** Bands with gaps of the maker's own, each lower edge at the nearest mark that does not overlap the band below. */
export function byHand(heights: readonly Mm[], gaps: readonly Mm[], lowest: Mm, mark: Mm): Spaced {
  const lower: Mm[] = [];
  const made: Mm[] = [];
  heights.forEach((_, i) => {
    const under = lower[i - 1];
    if (under === undefined) {
      lower.push(mm(stepsIn(lowest, mark, 'nearest') * mark));
      return;
    }
    const clear = under + (heights[i - 1] ?? 0);
    const wished = stepsIn(clear + (gaps[i - 1] ?? 0), mark, 'nearest') * mark;
    const at = wished < clear - 1e-9 ? stepsIn(clear, mark, 'up') * mark : wished;
    lower.push(mm(at));
    made.push(mm(at - clear));
  });
  return { lower, gaps: made };
}
