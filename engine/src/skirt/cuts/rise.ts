import type { Mm } from '../../units/index.ts';
import { mm } from '../../units/index.ts';

/**
 * How much higher than the plain top line a panel reaches, at its left side, its centre and its right side: for sides
 * that differ, a full front, a body that sits. What is unlike is made at the top, so that the hem stays level.
 */
export interface Rise {
  readonly left: Mm;
  readonly centre: Mm;
  readonly right: Mm;
}

export const LEVEL: Rise = { left: mm(0), centre: mm(0), right: mm(0) };

export const isLevel = ({ left, centre, right }: Rise): boolean => left === 0 && centre === 0 && right === 0;

/** The rise at a place across the panel, −1 at its left side to 1 at its right: the parabola through the three. */
export const riseAt = ({ left, centre, right }: Rise, across: number): Mm =>
  mm(centre + ((right - left) / 2) * across + ((right + left) / 2 - centre) * across * across);

/** Places across a panel by which a risen top is drawn: a chord between two is within a hair of the curve. */
export const PLACES: readonly number[] = Array.from({ length: 25 }, (_, i) => i / 12 - 1);
