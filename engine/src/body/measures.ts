import type { Mm } from '../units/index.ts';

/** How the wearer walks; the step at each pace is a setting. */
export const paces = ['easy', 'usual', 'brisk'] as const;
export type Pace = (typeof paces)[number];

/** The measurements taken with a tape. All are lengths. */
export const measureNames = ['waist', 'hip', 'waistToHem', 'waistToFloor', 'height', 'calf'] as const;
export type MeasureName = (typeof measureNames)[number];

/** Which of them go round the body; the others run along it. */
export const girths: readonly MeasureName[] = ['waist', 'hip', 'calf'];

/** One body as measured, after parsing: every length is inside `measureLimits`. */
export interface BodyMeasures {
  /** Round, where the elastic will sit. */
  readonly waist: Mm;
  /** Round the fullest part of the seat, tape level. */
  readonly hip: Mm;
  /** Finished length: from the waist to where the hem will be. */
  readonly waistToHem: Mm;
  /** From the waist straight down to the floor, standing, as the skirt is worn (barefoot or shod). */
  readonly waistToFloor?: Mm | undefined;
  readonly height?: Mm | undefined;
  /** Round the fullest part of the calf. */
  readonly calf?: Mm | undefined;
  /** Years, may be fractional. Without it the wearer counts as an adult. */
  readonly age?: number | undefined;
  readonly pace: Pace;
  /** The same measurements taken a second time. */
  readonly second?: Readonly<Partial<Record<MeasureName, Mm | undefined>>> | undefined;
}
