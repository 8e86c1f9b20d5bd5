import type { Growing } from './growth/options.ts';
import type { Mm } from '../units/index.ts';

/** How the wearer walks; the step at each pace is a setting. */
export const paces = ['easy', 'usual', 'brisk'] as const;
export type Pace = (typeof paces)[number];

/** The measurements taken with a tape. All are lengths. */
export const measureNames = [
  'waist',
  'hip',
  'waistToHem',
  'waistToFloor',
  'height',
  'hipDepth',
  'calf',
  'thigh',
] as const;
export type MeasureName = (typeof measureNames)[number];

/** Which of them go round the body; the others run along it. */
export const girths: readonly MeasureName[] = ['waist', 'hip', 'calf', 'thigh'];

/** The places round the waist from which the floor may be measured: centre front, centre back, and the two sides. */
export const waistPlaces = ['front', 'back', 'left', 'right'] as const;
export type WaistPlace = (typeof waistPlaces)[number];

/**
 * How the skirt is worn. `seated`: in a chair; waist to hem, and waist to floor where it is given, are then taken seated, along
 * the thigh and over the knee. `expecting`: over a growing belly.
 */
export const waysToWear = ['standing', 'seated', 'expecting'] as const;
export type WayToWear = (typeof waysToWear)[number];

/** The two halves of the hip line, each from centre front to centre back. */
export interface Halves<T> {
  readonly left: T;
  readonly right: T;
}

/** The interval printed for the hips on a clothing label; either end may stand first. */
export interface SizeInterval {
  readonly from: Mm;
  readonly to: Mm;
}

/** One body as measured, after parsing: every length is inside `measureLimits`. */
export interface BodyMeasures {
  /** Round, where the elastic will sit. */
  readonly waist: Mm;
  /** Round the fullest part of the seat, tape level. Without it: its halves, a printed size, or an adult's estimate. */
  readonly hip?: Mm | undefined;
  /** Finished length: from the waist to where the hem will be. */
  readonly waistToHem: Mm;
  /** From the waist straight down to the floor, standing, as the skirt is worn (barefoot or shod). */
  readonly waistToFloor?: Mm | undefined;
  readonly height?: Mm | undefined;
  /** From the waist to the hip line, along the side. */
  readonly hipDepth?: Mm | undefined;
  /** Round the fullest part of the calf. */
  readonly calf?: Mm | undefined;
  /** Round one leg, at its fullest. */
  readonly thigh?: Mm | undefined;
  /** Years, may be fractional. Without it the wearer counts as an adult. */
  readonly age?: number | undefined;
  /** How a child's growth is told. */
  readonly growing?: Growing | undefined;
  readonly pace: Pace;
  /** Standing where it is not told. */
  readonly wears?: WayToWear | undefined;
  /** Waist to floor at places round the waist, any of them. */
  readonly levels?: Readonly<Partial<Record<WaistPlace, Mm | undefined>>> | undefined;
  readonly halves?: Halves<Mm> | undefined;
  readonly size?: SizeInterval | undefined;
  /** The same measurements taken a second time. */
  readonly second?: Readonly<Partial<Record<MeasureName, Mm | undefined>>> | undefined;
}
