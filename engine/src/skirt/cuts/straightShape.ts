import { line, point, polyline, type Path, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { PanelEdge, PanelShape } from '../panel.ts';
import { finishedEdges, type Allowances } from './edges.ts';
import { LEVEL, PLACES, isLevel, keptRise, mirrored, riseAt, risenEdges, type Rise } from './rise.ts';

export interface StraightShape extends Allowances {
  /** Half widths raw side to centre, at the top line and at the hem line. */
  readonly halfTop: Mm;
  readonly halfHem: Mm;
  readonly length: Mm;
  readonly margin: Mm;
  readonly rise?: Rise;
  /** The top that is cut, where it is higher than the panel's own: trimmed to it afterwards. */
  readonly cutRise?: Rise;
}

/**
 * A panel with straight edges. Beyond a fold its side is mirrored across the fold, so that the turned edge
 * lands on the skirt exactly; beyond a seam it runs on. The straightening margin runs on below the hem.
 */
export function straightShape(s: StraightShape): PanelShape {
  const rise = keptRise(s.rise ?? LEVEL, s.length);
  const half = halfAt(s);
  const across = sewnTop(s, rise);
  const topOf = (above: number, rise: Rise): Point[] =>
    isLevel(rise)
      ? [point(-half(-above), -above), point(half(-above), -above)]
      : risenTop(across, rise, above, half(-above));
  const cutRise = s.cutRise ? keptRise(s.cutRise, s.length) : rise;
  const top = topOf(0, rise);
  const topLeft = top[0] ?? point(0, 0);
  const topRight = top.at(-1) ?? point(0, 0);
  const corner = (side: 1 | -1, y: number): Point => point(side * half(y), y);
  const outline = (bottom: number, above: readonly Point[]): Path => {
    const levels = [s.length, bottom].filter((y, i, all) => i === 0 || y > (all[i - 1] ?? 0));
    const right = levels.map((y) => corner(1, y));
    const left = levels.map((y) => corner(-1, y)).reverse();
    return polyline([...left.slice(-1), ...above, ...right, ...left.slice(0, -1)], { closed: true });
  };
  const ownTop = s.top.depth > 0 ? [topLeft, ...topOf(s.top.depth, rise), topRight] : top;
  // Cut for a higher top, mirrored sides run straight up to it, beside the lean that they are trimmed to later.
  const higherTop = (higher: Rise): Point[] => {
    const raw = topOf(s.top.depth, higher);
    const line = s.top.turned ? [] : topOf(0, higher);
    return [...line.slice(0, 1), ...raw, ...line.slice(-1)];
  };
  const rawHem = s.length + s.hem.depth;
  return {
    edges: isLevel(rise)
      ? finishedEdges(
          {
            waist: polyline(top),
            right: [line(topRight, corner(1, s.length))],
            hem: [line(corner(1, s.length), corner(-1, s.length))],
            left: [line(corner(-1, s.length), topLeft)],
          },
          s,
        )
      : edgesOf(s, rise),
    trimmed: outline(rawHem, ownTop),
    cut: outline(rawHem + s.margin, s.cutRise && !isLevel(cutRise) ? higherTop(cutRise) : ownTop),
    notches: [],
    symmetric: mirrored(cutRise) && s.left.depth === s.right.depth && s.left.turned === s.right.turned,
    apex: null,
    length: s.length,
    hemAllowance: s.hem.depth,
    topAllowance: s.top.depth,
  };
}

/** A panel never narrows to nothing, whatever is asked of its seams. */
const MIN_HALF = 0.01;

/** Half width at a level, mirrored beyond a fold. */
function halfAt(s: StraightShape): (y: number) => number {
  const slope = (s.halfHem - s.halfTop) / s.length;
  return (y) => {
    const mirrored =
      y < 0 && s.top.turned ? -y : y > s.length && s.hem.turned ? Math.max(0, 2 * s.length - y) : y;
    return Math.max(MIN_HALF, s.halfTop + slope * mirrored);
  };
}

/** How far the stitching of a side lies inside its raw edge, along a level line; the side runs from its risen corner. */
const seamAlong = (s: StraightShape, depth: Mm, rise: Mm): number =>
  depth * Math.hypot(1, (s.halfHem - s.halfTop) / (s.length + rise));

/** From stitching to stitching of the two sides at the top, as x. */
interface SewnTop {
  readonly from: number;
  readonly to: number;
}

const sewnTop = (s: StraightShape, rise: Rise): SewnTop => ({
  from: seamAlong(s, s.left.depth, rise.left) - s.halfTop,
  to: s.halfTop - seamAlong(s, s.right.depth, rise.right),
});

/**
 * Left to right along a line `above` the risen top line. Only its ends lean as the sides do: along a dip that leaned too,
 * a steep side would cross it.
 */
function risenTop({ from, to }: SewnTop, rise: Rise, above: number, half: number): Point[] {
  const at = (t: number): Point => point(from + ((t + 1) / 2) * (to - from), -above - riseAt(rise, t));
  // Where the side runs on narrower above a seam, the outermost places lie beside the cloth.
  const inner = PLACES.map(at).filter(({ x }) => Math.abs(x) < half);
  return [point(-half, -above - rise.left), ...inner, point(half, -above - rise.right)];
}

function edgesOf(s: StraightShape, rise: Rise): PanelEdge[] {
  const { from, to } = sewnTop(s, rise);
  const hemAt = (depth: Mm, up: Mm): number => s.halfHem - seamAlong(s, depth, up);
  const corners = {
    left: { top: point(from, -rise.left), hem: point(-hemAt(s.left.depth, rise.left), s.length) },
    right: { top: point(to, -rise.right), hem: point(hemAt(s.right.depth, rise.right), s.length) },
  };
  const top = risenTop({ from, to }, rise, 0, s.halfTop).slice(1, -1);
  return risenEdges(corners, top, polyline([corners.right.hem, corners.left.hem]), s);
}

/** How much longer a straight side is than the centre: √(L² + f²) − L. */
export const straightSideExcess = (length: Mm, flare: Mm): Mm => mm(Math.hypot(length, flare) - length);
