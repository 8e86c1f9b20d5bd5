import type { WaistLevel } from './settings.ts';

/** y = start + slope × x, in mm. */
export interface Line {
  readonly start: number;
  readonly slope: number;
}

/** A line fitted by least squares, with the standard deviation of what it leaves over. */
export interface FittedLine extends Line {
  readonly sd: number;
}

/** For a given first measurement: the middle of the second, and the lines that 1 in 400 lie below and 1 in 400 above. */
export interface Spread {
  readonly low: Line;
  readonly middle: Line;
  readonly high: Line;
}

/** The spread that is expected first; further ones widen what is believed. */
export type Spreads = readonly [Spread, ...Spread[]];

/**
 * 90 % of a normal spread lie within this many standard deviations. What is estimated is fitted on one half of the people of its
 * survey, drawn at random (`halvesOf` in testing/halves.ts, seed 1); of the other half the ± holds the share told below.
 */
export const WITHIN_90 = 1.645;

/**
 * Waist above the floor from height, ANSUR II, 993 of the 1,986 women. The levels: tenth rib (nearest to the natural waist), navel,
 * top of the hip bone. The ± holds 90.6, 89.8 and 90.8 % of the other women; of 4,082 men 46, 83 and 66 %, men being longer
 * above the waist.
 */
export const waistToFloorFromHeight: Readonly<Record<WaistLevel, FittedLine>> = {
  natural: { start: -139.3, slope: 0.7342, sd: 17.3 },
  navel: { start: -168.5, slope: 0.7051, sd: 21.0 },
  'hip-bone': { start: -154.1, slope: 0.7058, sd: 20.1 },
};

/** The other way round, fitted for itself on the same women. Its ± holds 90.6, 91.8 and 90.3 %; of the men 29, 60 and 41 %. */
export const heightFromWaistToFloor: Readonly<Record<WaistLevel, FittedLine>> = {
  natural: { start: 356.1, slope: 1.2043, sd: 22.2 },
  navel: { start: 478.5, slope: 1.1736, sd: 27.1 },
  'hip-bone': { start: 442.7, slope: 1.1911, sd: 26.1 },
};

const hipAtNavel: FittedLine = { start: 489.4, slope: 0.6168, sd: 43.6 };

/**
 * Hip from a waist taken at the same level. Navel: the same army women; the ± holds 88.3 % of the others, and 72 % of the men. Height
 * beside the waist would make the ± only a twentieth smaller for the women and hold 40 % of the men: it is left out. Hip bone:
 * NHANES 2017-2018, 1,470 of 2,941 women of 13 and over who were not pregnant, each counted once; 90.6 % of the others. No survey
 * took a natural waist: the navel's line stands in for it, and finds the hip too small rather than too large.
 *
 * Soldiers are more alike than other people: of the national women, whose waist is at the hip bone, the navel's ± holds 70 %.
 */
export const hipFromWaist: Readonly<Record<WaistLevel, FittedLine>> = {
  natural: hipAtNavel,
  navel: hipAtNavel,
  'hip-bone': { start: 306.5, slope: 0.8004, sd: 66.9 },
};

/** y = share × x, with the standard deviation of what it leaves over. */
export interface FittedShare {
  readonly share: number;
  readonly sd: number;
}

/**
 * From the waist down to the fullest seat, as a share of height: the same army women, mean of (level − buttock height) ÷ stature.
 * The ± holds 89.4, 90.8 and 91.2 % of the others, and 83, 83 and 81 % of the men.
 */
export const hipDepthFromHeight: Readonly<Record<WaistLevel, FittedShare>> = {
  natural: { share: 0.1367, sd: 18.9 },
  navel: { share: 0.0896, sd: 24.1 },
  'hip-bone': { share: 0.0993, sd: 17.9 },
};

/** What is outside three standard deviations of a fitted line counts as far from it. */
const FAR = 3;
const spreadOf = ({ start, slope, sd }: FittedLine): Spread => ({
  low: { start: start - FAR * sd, slope },
  middle: { start, slope },
  high: { start: start + FAR * sd, slope },
});

/**
 * Hip for a waist. NHANES 2017-2018, 5,874 people of 13 and over, waist at the hip bone: weighted quantile regression at 0.25,
 * 50 and 99.75 %. ANSUR II, 1,986 women, waist at the navel: least squares. Each keeps its own waist: a pair is improbable
 * only when every level finds it so.
 */
export const hipForWaist: Spreads = [
  {
    low: { start: 315.0, slope: 0.5985 },
    middle: { start: 408.1, slope: 0.6576 },
    high: { start: 255.7, slope: 1.0581 },
  },
  spreadOf({ start: 496.5, slope: 0.6095, sd: 45.3 }),
];

/** Hip for a height. NHANES 2017-2018, 5,895 people of 13 and over, as above. The largest hips belong to the shorter. */
export const hipForHeight: Spreads = [
  {
    low: { start: 168.7, slope: 0.374 },
    middle: { start: 799.3, slope: 0.1443 },
    high: { start: 2421.7, slope: -0.4362 },
  },
];

/** Waist for a child's height. NHANES 2017-2018, 1,709 children of 2 to 12 years, as above. */
export const waistForChildHeight: Spreads = [
  {
    low: { start: 196.1, slope: 0.2312 },
    middle: { start: 124.5, slope: 0.3774 },
    high: { start: -155.4, slope: 0.8632 },
  },
];
/** The youngest whose waist the survey took, in years. */
export const YOUNGEST_WAIST = 2;

/**
 * Waist to floor for a height, ANSUR II, 1,986 women and 4,082 men together (nobody is asked their sex): least squares by waist
 * level.
 */
const waistToFloorForHeight: Readonly<Record<WaistLevel, Spread>> = {
  natural: spreadOf({ start: 23.6, slope: 0.6276, sd: 21.8 }),
  navel: spreadOf({ start: -87.1, slope: 0.6525, sd: 22.0 }),
  'hip-bone': spreadOf({ start: -15.9, slope: 0.6159, sd: 22.6 }),
};

/** The chosen level first: its middle is what is expected; the others widen what is believed. */
export const waistToFloorSpreads = (level: WaistLevel): Spreads => [
  waistToFloorForHeight[level],
  ...Object.values(waistToFloorForHeight),
];
