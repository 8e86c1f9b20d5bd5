import { mm, type Mm } from '../units/index.ts';
import type { MeasureName } from './measures.ts';

export interface Limits<T extends number> {
  readonly least: T;
  readonly most: T;
}

/**
 * What is read as a measurement at all; outside it is a wrong unit or a slip of the key. Not a judgement of bodies:
 * each range is wider than anybody in NHANES 2017-2018 (2 years and over), whose extremes are in brackets.
 */
export const measureLimits: Readonly<Record<MeasureName, Limits<Mm>>> = {
  /** [400–1695 mm.] */
  waist: { least: mm(250), most: mm(2500) },
  /** [Largest 1790 mm; not taken under 12 years, so the least is the waist's and a little more.] */
  hip: { least: mm(300), most: mm(2500) },
  /** A doll-sized first skirt, to a train behind the tallest. No survey. */
  waistToHem: { least: mm(100), most: mm(1800) },
  /** Six tenths of the least height is more than the least here; six tenths of 2.72 m is 1.63 m. No survey. */
  waistToFloor: { least: mm(250), most: mm(1800) },
  /** [783–1977 mm.] The tallest person on record stood 2.72 m (from memory). */
  height: { least: mm(500), most: mm(2750) },
  /** Army women 282–482 mm (ANSUR II); wide room for swelling on one side, a baby on the other. */
  calf: { least: mm(100), most: mm(1000) },
  /** Army women 50 (from the navel) to 305 mm (from the tenth rib) (ANSUR II); about half and twice that. */
  hipDepth: { least: mm(30), most: mm(600) },
  /** Army women 448–870 mm (ANSUR II); wide room on both sides, as for the calf. */
  thigh: { least: mm(100), most: mm(1500) },
};

/** Waist to floor at one place round the waist: as the measurement itself. */
export const levelLimits: Limits<Mm> = measureLimits.waistToFloor;

/** Half of what is read as a hip, so that two halves make one. */
export const halfLimits: Limits<Mm> = {
  least: mm(measureLimits.hip.least / 2),
  most: mm(measureLimits.hip.most / 2),
};

/** Years. The oldest person on record lived past 122 (from memory). */
export const ageLimits: Limits<number> = { least: 0, most: 125 };
