import type { ClothEffort } from './effort.ts';

type Share = Pick<ClothEffort, 'evaluations' | 'spent'>;

interface Shares {
  /** A short run of one of several variants. */
  readonly trial: (at: number) => Share;
  /** All that is left, once so many evaluations are used. */
  readonly rest: (used: number) => Share;
}

/** A part of an effort: of its evaluations, and of its time from one share to another. */
export const partOf = (
  { seed, evaluations, spent }: ClothEffort,
  from: number,
  to: number,
): Pick<ClothEffort, 'seed'> & Share => ({
  seed,
  ...(evaluations === undefined ? {} : { evaluations: Math.max(1, Math.floor(evaluations * (to - from))) }),
  ...(spent ? { spent: within(spent, from, to) } : {}),
});

/**
 * A part of a time, from one share of it to another. Where the whole is over each part is, whatever binary fractions lose of
 * its end: a search that is given up stands still at its 1.
 */
export const within = (spent: () => number, from: number, to: number) => (): number => {
  const so = spent();
  return so >= 1 ? Math.max(1, so) : (so - from) / (to - from);
};

/** Parts an effort between short runs of several variants and a long one of the best; a single variant has all of it. */
export function shared({ evaluations, spent }: ClothEffort, variants: number, trial: number): Shares {
  const part = (from: number, to: number, most: number | undefined): Share => ({
    ...(most === undefined ? {} : { evaluations: Math.max(1, Math.floor(most)) }),
    ...(spent ? { spent: within(spent, from, to) } : {}),
  });
  if (variants === 1) return { trial: () => part(0, 1, evaluations), rest: () => part(0, 1, 1) };
  return {
    trial: (at) =>
      part(at * trial, (at + 1) * trial, evaluations === undefined ? undefined : evaluations * trial),
    rest: (used) => part(variants * trial, 1, evaluations === undefined ? undefined : evaluations - used),
  };
}
