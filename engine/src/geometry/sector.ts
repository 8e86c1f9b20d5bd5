import { mm, radians, type Mm, type Radians } from '../units/index.ts';

/**
 * How far an arc stands off the line square to its middle, `x` along that line: y = R − √(R² − x²), written
 * so that no digits are lost on large circles. 0 on a straight edge (endless radius); `x` past the circle
 * counts as its edge.
 */
export function ordinate(radius: Mm, x: Mm): Mm {
  const square = x * x;
  const root = Math.sqrt(Math.max(0, radius * radius - square));
  return root === 0 ? radius : mm(square / (radius + root));
}

/** The "measure up from the line" values of an arc at each `x` from its middle. */
export const ordinates = (radius: Mm, xs: readonly Mm[]): Mm[] => xs.map((x) => ordinate(radius, x));

/** Height of an arc over its chord: R − √(R² − (c/2)²). */
export const sagitta = (radius: Mm, chord: Mm): Mm => ordinate(radius, mm(chord / 2));

export const arcLength = (radius: Mm, sweep: Radians): Mm => mm(radius * Math.abs(sweep));

/** The radius on which an arc of `sweep` is `length` long; for a circle skirt r = W / (2π·f). Endless for no sweep. */
export const radiusFor = (length: Mm, sweep: Radians): Mm =>
  mm(sweep === 0 ? Infinity : length / Math.abs(sweep));

/**
 * By how much two arcs about one centre, `apart` from one another, differ in length: θ·w, whatever the radius.
 * The two edges of a ribbon of width w; a hem of depth h turned on an arc, whose raw edge lands 2h nearer.
 */
export const edgeDifference = (sweep: Radians, apart: Mm): Mm => mm(Math.abs(sweep) * apart);

/** A piece of a ring between two arcs about one centre. */
export interface RingSector {
  /** 0 where top and bottom are equal: a rectangle. */
  readonly sweep: Radians;
  /** Endless for a rectangle. */
  readonly inner: Mm;
  readonly outer: Mm;
}

/**
 * The ring sector whose arcs measure `top` and `bottom` and lie `length` (> 0) apart on every line between
 * them: angle (bottom − top) / length, radius top / angle. `bottom` ≥ `top`.
 */
export function ringSector(top: Mm, bottom: Mm, length: Mm): RingSector {
  const sweep = radians((bottom - top) / length);
  const inner = radiusFor(top, sweep);
  return { sweep, inner, outer: mm(inner + length) };
}
