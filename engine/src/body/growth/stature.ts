import { mm, type Mm } from '../../units/index.ts';
import { growthRows, type GrowthReference, type Lms } from './reference.ts';

/** A power so near to 0 that the formula's limit for L = 0 is right to all printed digits. */
const NO_POWER = 1e-9;

/**
 * The height at `z` standard deviations: M·(1 + L·S·z)^(1/L), M·exp(S·z) in the limit L = 0. Null where the formula holds no
 * height (1 + L·S·z not above 0: far beyond any child).
 */
export function heightAt({ L, M, S }: Lms, z: number): Mm | null {
  if (Math.abs(L) < NO_POWER) return mm(M * Math.exp(S * z));
  return 1 + L * S * z > 0 ? mm(M * Math.exp(Math.log1p(L * S * z) / L)) : null;
}

/** The formula backwards: how many standard deviations a height is from the median. */
export function deviationOf({ L, M, S }: Lms, height: Mm): number {
  const log = Math.log(height / M);
  return Math.abs(L) < NO_POWER ? log / S : Math.expm1(L * log) / (L * S);
}

/** L, M and S at an age in months, each straight between the ages around it; null outside 24 to 240. */
export function lmsAt(reference: GrowthReference, ageMonths: number): Lms | null {
  const rows = growthRows[reference];
  const next = rows.findIndex((row) => row.ageMonths >= ageMonths);
  const high = rows[next];
  if (!high) return null;
  if (high.ageMonths === ageMonths) return high;
  const low = rows[next - 1];
  if (!low) return null;
  const part = (ageMonths - low.ageMonths) / (high.ageMonths - low.ageMonths);
  const between = (name: keyof Lms): number => low[name] + (high[name] - low[name]) * part;
  return { L: between('L'), M: mm(between('M')), S: between('S') };
}

/** Standing height at an age in months and a number of standard deviations; null where the reference holds none. */
export function statureAt(reference: GrowthReference, ageMonths: number, z: number): Mm | null {
  const lms = lmsAt(reference, ageMonths);
  return lms && heightAt(lms, z);
}

/** How many standard deviations a standing height is from the median of its age; null where the reference holds none. */
export function zOf(reference: GrowthReference, ageMonths: number, stature: Mm): number | null {
  const lms = lmsAt(reference, ageMonths);
  return lms && stature > 0 ? deviationOf(lms, stature) : null;
}
