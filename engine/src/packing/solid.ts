import { convexParts } from './convexParts.ts';
import type { Outline } from './job.ts';
import { side } from './polygon.ts';
import { quarterTurned } from './quarters.ts';

/** An outline with what every no-fit polygon of it is made from. */
export interface Solid {
  readonly outline: Outline;
  /** Convex ones that make it up: itself where it is one. */
  readonly parts: readonly Outline[];
  /** Corners at which it turns right. */
  readonly reflex: number;
}

/** Of a whole-numbered, counter-clockwise, tidied outline. */
export const solidOf = (outline: Outline): Solid => ({
  outline,
  parts: convexParts(outline),
  reflex: reflexOf(outline),
});

/** By so many quarter turns, counter-clockwise. */
export const turnedSolid = ({ outline, parts, reflex }: Solid, turns: number): Solid => ({
  outline: quarterTurned(outline, turns),
  parts: parts.map((part) => quarterTurned(part, turns)),
  reflex,
});

const reflexOf = (outline: Outline): number =>
  outline.filter((corner, i) => {
    const next = outline[(i + 1) % outline.length] ?? corner;
    const after = outline[(i + 2) % outline.length] ?? corner;
    return side(corner, next, after) < 0;
  }).length;
