import { fullnessLimits } from './limits.ts';

/** Decimals at which the narrowest span asked for (a width of 1 mm more round the widest body) holds a number. */
const MOST_DECIMALS = 4;
const SLACK = 1e-9;

/** The fullness with the fewest decimals that lies above `over` and at most at `upTo`, within what the field takes. */
export function fullnessWithin(over: number, upTo: number): number {
  const { least, most } = fullnessLimits;
  const high = Math.min(most, upTo);
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
    const unit = 10 ** decimals;
    const candidate = Math.floor(high * unit + SLACK) / unit;
    if (candidate >= least && candidate > over + SLACK) return candidate;
  }
  return Math.max(least, Math.floor(high * 10 ** MOST_DECIMALS) / 10 ** MOST_DECIMALS);
}
