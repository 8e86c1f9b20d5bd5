import { polyline, type Path, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { PanelEdge } from '../panel.ts';
import type { Allowances } from './edges.ts';

/**
 * How much higher than the plain top line a panel reaches, at its left side, its centre and its right side: for sides
 * that differ, a full front, a body that sits. What is unlike is made at the top, so that the hem stays level.
 */
export interface Rise {
  readonly left: Mm;
  readonly centre: Mm;
  readonly right: Mm;
  /** At a place from −1 to 1; without it the parabola through the three, which is enough for less than half a round. */
  readonly along?: (place: number) => number;
}

export const LEVEL: Rise = { left: mm(0), centre: mm(0), right: mm(0) };

/** A rise that is nothing at these three is nothing at all: what a body's four places make has no fifth wave. */
export const isLevel = ({ left, centre, right }: Rise): boolean => left === 0 && centre === 0 && right === 0;

/**
 * The rise at a place across the panel, −1 at the stitching of its left side to 1 at that of its right. Level in the seam
 * allowances beyond, so that two panels meet where they are sewn.
 */
export function riseAt({ left, centre, right, along }: Rise, across: number): Mm {
  const t = Math.max(-1, Math.min(1, across));
  if (along) return mm(along(t));
  return mm(centre + ((right - left) / 2) * t + ((right + left) / 2 - centre) * t * t);
}

/** Share of a panel's length that its top may dip: however little of it is left, it stays a panel. */
const MOST_DIP = 0.4;

/** The rise that a panel of this length can have. */
export function keptRise(rise: Rise, length: Mm, most = Infinity): Rise {
  const within = (each: number): Mm => mm(Math.max(-MOST_DIP * length, Math.min(most, each)));
  const { left, centre, right } = rise;
  return {
    left: within(left),
    centre: within(centre),
    right: within(right),
    along: (place) => within(riseAt(rise, place)),
  };
}

/** Whether the left half of a top so risen is its right half mirrored. */
export const mirrored = (rise: Rise): boolean =>
  PLACES.every((place) => Math.abs(riseAt(rise, place) - riseAt(rise, -place)) < 1e-9);

/** More than a chord of the top that is cut lies below the curve that it is trimmed to. */
const A_LITTLE = 0.5;

/**
 * The rise that panels are cut with so that they are alike and each is its own mirror image, whatever their own: they can
 * be cut at one go, and each is trimmed to its own top afterwards. The plain top line, which all is marked from, lies on the
 * cloth. The same at every place where `straight`.
 */
export function cutTogether(rises: readonly Rise[], straight = false): Rise {
  if (rises.every(isLevel)) return LEVEL;
  const highest = (place: number): number =>
    A_LITTLE + Math.max(0, ...rises.flatMap((rise) => [riseAt(rise, place), riseAt(rise, -place)]));
  const top = straight ? mm(Math.max(...PLACES.map(highest))) : null;
  const along = (place: number): number => top ?? highest(place);
  return { left: mm(along(-1)), centre: mm(along(0)), right: mm(along(1)), along };
}

/** Chords by which a risen top is drawn between its seams: each is within a hair of the curve. */
const CHORDS = 36;

/** Places from seam to seam at which a risen top is drawn. */
export const PLACES: readonly number[] = Array.from({ length: CHORDS + 1 }, (_, i) => (2 * i) / CHORDS - 1);

/** The corners of a panel with a risen top: raw, and where its sides are sewn or turned, at the top and at the hem. */
export interface Corners {
  readonly left: { readonly top: Point; readonly hem: Point };
  readonly right: { readonly top: Point; readonly hem: Point };
}

/** The finished edges of a risen panel. None where its seams take more than there is. */
export function risenEdges(
  { left, right }: Corners,
  top: readonly Point[],
  hem: Path,
  beyond: Allowances,
): PanelEdge[] {
  const gone = right.top.x <= left.top.x || right.hem.x <= left.hem.x;
  const edge = (
    name: PanelEdge['name'],
    finished: Path,
    { depth, turned }: Allowances['top'],
  ): PanelEdge => ({
    name,
    finished: gone ? [] : finished,
    allowance: depth,
    turned,
  });
  return [
    edge('waist', polyline(top), beyond.top),
    edge('right', polyline([right.top, right.hem]), beyond.right),
    edge('hem', hem, beyond.hem),
    edge('left', polyline([left.hem, left.top]), beyond.left),
  ];
}
