import type { Bounds } from '../../../geometry/index.ts';

/** A part of a length of cloth that is drawn in one row: from where to where along it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** How much of the most a stretch may stay short, so that it ends where few pieces are cut in two. */
const SHORTEST = 0.6;

/** Parts a length into stretches of `most` at most, each ended where the fewest pieces lie across the end. */
export function stretchesOf(along: number, most: number, boxes: readonly Bounds[]): Stretch[] {
  if (along <= most * 1.0001) return [{ from: 0, to: along }];
  const stretches: Stretch[] = [];
  let from = 0;
  while (along - from > most * 1.0001) {
    const least = from + SHORTEST * most;
    const ends = [from + most, ...boxes.flatMap(({ left, right }) => [left, right])].filter(
      (at) => at >= least && at <= from + most,
    );
    const crossed = (at: number): number =>
      boxes.filter(({ left, right }) => left < at - 1 && right > at + 1).length;
    const to = ends.reduce((best, at) =>
      crossed(at) < crossed(best) || (crossed(at) === crossed(best) && at > best) ? at : best,
    );
    stretches.push({ from, to });
    from = to;
  }
  return [...stretches, { from, to: along }];
}
