import type { SkirtPlan } from '../../../plan/index.ts';

export const wornSides = ['front', 'back', 'side'] as const;
/** From where the wearer is looked at. */
export type WornSide = (typeof wornSides)[number];

/** Half of a girth's oval seen from the front and from the side: 2π·√((a² + b²) / 2) at a = 1.34·b is the girth. */
export const HALF_BREADTH = 0.18;
export const HALF_DEPTH = 0.136;

/** A body standing in the drawing: drawing millimetres, y down from the drawing's top, x from the body's middle. */
export interface Stance {
  /** Drawing millimetres for each of the body and its cloth. */
  readonly scale: number;
  readonly adult: boolean;
  readonly expecting: boolean;
  readonly tall: number;
  readonly crown: number;
  readonly chin: number;
  readonly waist: number;
  readonly hip: number;
  readonly floor: number;
  /** How far the skirt's waist dips below its level where it dips most. */
  readonly dips: number;
  readonly waistGirth: number;
  readonly hipGirth: number;
  /** 0 a toddler, 1 grown. */
  readonly grown: number;
  /** Null for somebody who stands. */
  readonly seat: Seat | null;
}

/** Somebody who sits, in drawing millimetres; the way of the tape from the waist over the lap to the floor. */
export interface Seat {
  /** Waist to floor, or footrest, along that way. */
  readonly path: number;
  /** From the waist down to the lap, and on to the knees. */
  readonly crease: number;
  readonly thigh: number;
  /** How far the lap goes down to the knees, of its length. */
  readonly slope: number;
  /** From the lap down to the seat. */
  readonly thick: number;
  /** In profile the lap takes the room in front: the body sits so far behind the middle. */
  readonly aside: number;
}

/** Of waist to floor as the tape goes over the lap: waist to lap, lap to knees; and the thigh's depth. Common practice, no source. */
const SEATED = { crease: 0.1, thigh: 0.38, slope: 0.2, thick: 0.14, aside: 0.2 };

export const within = (least: number, value: number, most: number): number =>
  Math.min(most, Math.max(least, value));

/** From 0 at `from` to 1 at `to`, without a corner at either. */
export function rise(from: number, to: number, value: number): number {
  const t = within(0, (value - from) / (to - from), 1);
  return t * t * (3 - 2 * t);
}

const TALL = 158;
/** Room for the broadest body, which would not fit in the picture at its height. */
const BROAD = 104;
export const MARGIN = 4;

const ADULT = 1650;
const GROWN_AT = 14;
/** Waist to floor of the height: a grown body, and a toddler. Common practice, no source. */
const WAIST_LEVEL = { grown: 0.615, small: 0.57 };
/** Head of the height: a grown body, and a toddler. Common practice, no source. */
const HEAD = { grown: 0.13, small: 0.2 };

/**
 * Where this body's levels lie in the picture. What was not measured is as it usually is, for a drawing and for
 * nothing else. The scale comes from the body alone, so that a hem that is let down moves and nothing else does.
 */
export function stanceOf({ body }: SkirtPlan): Stance {
  const known = body.height?.value;
  const age = body.adult ? GROWN_AT : (body.age ?? 8);
  const byAge = rise(1, GROWN_AT, age);
  const level = WAIST_LEVEL.small + (WAIST_LEVEL.grown - WAIST_LEVEL.small) * byAge;
  const usual = body.adult ? ADULT : 780 + 62 * age;
  const wanted = known ?? (body.waistToFloor ? body.waistToFloor.value / level : usual);
  const toFloor = body.waistToFloor?.value ?? Math.max(wanted * level, body.waistToHem.value * 1.02);
  // Where two measurements can't belong to one body, the figure keeps the one that the skirt hangs by.
  const above = within(0.3 * toFloor, wanted - toFloor, 0.95 * toFloor);
  const tall = above + toFloor;
  const broadest = 2 * HALF_BREADTH * body.widest.value * 1.35;
  // Somebody who sits is shorter by what the lap does not go down.
  const sits = body.wears === 'seated' ? SEATED.thigh * (1 - SEATED.slope) * toFloor : 0;
  const scale = Math.min(TALL / tall, BROAD / broadest);
  const crown = MARGIN;
  const waist = crown + above * scale;
  const head = HEAD.small + (HEAD.grown - HEAD.small) * byAge;
  return {
    scale,
    adult: body.adult,
    expecting: body.expecting,
    tall: tall * scale,
    crown,
    chin: crown + Math.min(head * tall, 0.42 * above) * scale,
    waist,
    hip: waist + 0.19 * toFloor * scale,
    floor: crown + (tall - sits) * scale,
    dips: dipOf(body.rises) * scale,
    waistGirth: body.waist.value * scale,
    hipGirth: body.hip.value * scale,
    grown: byAge,
    seat: sits > 0 ? seatOf(toFloor * scale) : null,
  };
}

const seatOf = (path: number): Seat => ({
  path,
  crease: SEATED.crease * path,
  thigh: SEATED.thigh * path,
  slope: SEATED.slope,
  thick: SEATED.thick * path,
  aside: SEATED.aside * path,
});

const dipOf = ({ front, back, left, right }: SkirtPlan['body']['rises']): number =>
  Math.max(0, -front.value, -back.value, -left.value, -right.value);
