import {
  arc,
  lengthOf,
  line,
  point,
  pointAt,
  polyline,
  type Path,
  type Point,
} from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { PLACES, isLevel, LEVEL, riseAt, type Rise } from './rise.ts';

/** Where a fitted panel is widest above its hem: its sides go straight from the waist to it, and on to the hem. */
export interface HipLine {
  /** Below the top line, along the centre. */
  readonly level: Mm;
  /** Centre to seam. */
  readonly half: Mm;
  /** Finished side from the waist to it: the same on every panel, so that whatever their widths they join. */
  readonly seam: Mm;
}

/** A panel by its finished half widths, centre to seam, along the curves of waist and hem. */
export interface GoreHalves {
  readonly halfTop: Mm;
  readonly halfHem: Mm;
  /** Along the centre. */
  readonly length: Mm;
  /** Without one the panel is a piece of a ring from its waist to its hem. */
  readonly hip: HipLine | null;
}

export interface GoreFrame {
  /** From the apex of the hem's curve to the top line; null where the panel is straight. */
  readonly radius: Mm | null;
  /** Half the sweep of the hem, seam to seam. */
  readonly turn: number;
  /** The point `down` from the top line, at a place across from −1, the left seam, to 1. */
  readonly at: (down: number, place: number) => Point;
  /** From right to left at that depth. */
  readonly across: (down: number) => Path;
}

/** A panel with less flare than this, mm, is straight: its apex would be out of sight. */
const STRAIGHT = 0.01;

/** Hem and hip line are arcs about one apex; the seams below the hip line, or all the way up, are radii. */
export function goreFrame({ halfTop, halfHem, length, hip }: GoreHalves): GoreFrame {
  const [half, above] = hip ? [hip.half, hip.level] : [halfTop, 0];
  const flare = halfHem - half;
  if (flare < STRAIGHT) {
    const at = (down: number, place: number): Point => point(place * half, down);
    return { radius: null, turn: 0, at, across: (down) => [line(at(down, 1), at(down, -1))] };
  }
  const turn = flare / (length - above);
  const radius = mm(half / turn - above);
  const at = (down: number, place: number): Point =>
    point((radius + down) * Math.sin(place * turn), (radius + down) * Math.cos(place * turn) - radius);
  const across = (down: number): Path => [
    arc(point(0, -radius), mm(radius + down), radians(Math.PI / 2 - turn), radians(2 * turn)),
  ];
  return { radius, turn, at, across };
}

/** Of what lies between its raw edge and the apex a top rises through half at the most. */
export const mostUp = (radius: Mm | null, depth: Mm): number =>
  radius === null ? Infinity : Math.max(0, (radius - depth) / 2);

/** The finished top, left to right. */
export const goreTop = (gore: GoreHalves, rise: Rise): Path =>
  gore.hip ? fittedTop(gore, gore.hip, rise) : ringTop(gore, rise);

/**
 * Least length of the finished sides from waist to hip line: the centre's, or more where the waist would else dip at its seams,
 * of the panel that needs most.
 */
export const hipSeamOf = (gores: readonly GoreHalves[]): Mm =>
  mm(
    Math.max(
      ...gores.map((gore) => {
        if (!gore.hip) return 0;
        const corner = goreFrame(gore).at(gore.hip.level, 1);
        return Math.max(gore.hip.level, Math.hypot(Math.max(0, corner.x - gore.halfTop), corner.y));
      }),
    ),
  );

/** Half the waist of a fitted panel straight across, and how far its ends lie above its middle, its top level. */
export function waistCurveOf(gore: GoreHalves, hip: HipLine): { readonly across: Mm; readonly up: Mm } {
  const path = fittedTop(gore, hip, LEVEL);
  const { x, y } = pointAt(path, lengthOf(path));
  return { across: mm(x), up: mm(Math.max(0, -y)) };
}

function ringTop(gore: GoreHalves, rise: Rise): Path {
  const { at, radius, turn } = goreFrame(gore);
  if (!isLevel(rise)) return polyline(PLACES.map((place) => at(-riseAt(rise, place), place)));
  return radius === null
    ? [line(at(0, -1), at(0, 1))]
    : [arc(point(0, -radius), radius, radians(Math.PI / 2 + turn), radians(-2 * turn))];
}

/** The waist's length is met to less than this, mm; each go brings it some ten times nearer. */
const MET = 1e-7;
const MOST_GOES = 60;
const NARROWEST = 0.6;

/** A waist as long as asked, whose ends lie the hip line's seam and what the waist rises there from the hip line. */
function fittedTop(gore: GoreHalves, hip: HipLine, rise: Rise): Path {
  const corner = goreFrame(gore).at(hip.level, 1);
  const end = (side: 1 | -1, wanted: number, up: number): Point => {
    const reach = Math.max(0, hip.seam + up);
    // A waist that dips almost to the hips is as wide as they ask: its seams keep their length.
    const x = Math.max(wanted, corner.x - LEANS * reach);
    return point(side * x, corner.y - Math.sqrt(Math.max(0, reach ** 2 - (corner.x - x) ** 2)));
  };
  const through = (x: number): Path => {
    const left = end(-1, x, rise.left);
    const right = end(1, x, rise.right);
    if (isLevel(rise)) return bowed(right);
    const drawn: Rise = { left: mm(-left.y), centre: rise.centre, right: mm(-right.y) };
    const [middle, half] = [(left.x + right.x) / 2, (right.x - left.x) / 2];
    return polyline(PLACES.map((place) => point(middle + place * half, -riseAt(drawn, place))));
  };
  let x: number = gore.halfTop;
  let path = through(x);
  for (let i = 0; i < MOST_GOES; i++) {
    const half = lengthOf(path) / 2;
    if (Math.abs(half - gore.halfTop) < MET) break;
    // A top that rises steeply from seam to seam keeps a width of its own.
    x = Math.max(NARROWEST * gore.halfTop, (x * gore.halfTop) / half);
    path = through(x);
  }
  return path;
}

/** A waist that bows less than this, mm, is straight. */
const UNBOWED = 0.001;

/** Of its own length a side may lean in at the most. */
const LEANS = 0.95;

/** The arc through the middle of the top line that ends at `right` and as far to the left. */
function bowed(right: Point): Path {
  const up = -right.y;
  if (up < UNBOWED) return [line(point(-right.x, right.y), right)];
  const radius = (right.x ** 2 + up ** 2) / (2 * up);
  const half = 2 * Math.atan2(up, right.x);
  return [arc(point(0, -radius), mm(radius), radians(Math.PI / 2 + half), radians(-2 * half))];
}
