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

/** 95 % of a normal spread lie within this many standard deviations. */
export const WITHIN_95 = 1.96;

/**
 * Waist above the floor from height, ANSUR II, 1,986 women. The levels: tenth rib (nearest to the natural waist), navel, top of
 * the hip bone. The ± is the women's: of 4,082 men it holds 57, 89 and 75 %, men being longer above the waist.
 */
export const waistToFloorFromHeight: Readonly<Record<WaistLevel, FittedLine>> = {
  natural: { start: -134.8, slope: 0.7314, sd: 17.2 },
  navel: { start: -173.1, slope: 0.7082, sd: 20.9 },
  'hip-bone': { start: -158.0, slope: 0.7085, sd: 20.0 },
};

/** The other way round, fitted for itself on the same women. Of the men its ± holds 39, 69 and 50 %. */
export const heightFromWaistToFloor: Readonly<Record<WaistLevel, FittedLine>> = {
  natural: { start: 355.5, slope: 1.2052, sd: 22.1 },
  navel: { start: 485.2, slope: 1.1665, sd: 26.8 },
  'hip-bone': { start: 450.7, slope: 1.1828, sd: 25.8 },
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
