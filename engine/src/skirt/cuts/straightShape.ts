import { line, point, polyline, type Path, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { PanelShape } from '../panel.ts';
import { finishedEdges, type Allowances } from './edges.ts';
import { LEVEL, PLACES, isLevel, riseAt, type Rise } from './rise.ts';

export interface StraightShape extends Allowances {
  /** Half widths raw side to centre, at the top line and at the hem line. */
  readonly halfTop: Mm;
  readonly halfHem: Mm;
  readonly length: Mm;
  readonly margin: Mm;
  readonly rise?: Rise;
}

/**
 * A panel with straight edges. Beyond a fold its side is mirrored across the fold, so that the turned edge
 * lands on the skirt exactly; beyond a seam it runs on. The straightening margin runs on below the hem.
 */
export function straightShape(s: StraightShape): PanelShape {
  const rise = s.rise ?? LEVEL;
  const slope = (s.halfHem - s.halfTop) / s.length;
  const half = (y: number): number => {
    const mirrored =
      y < 0 && s.top.turned ? -y : y > s.length && s.hem.turned ? Math.max(0, 2 * s.length - y) : y;
    return Math.max(MIN_HALF, s.halfTop + slope * mirrored);
  };
  const rawHem = s.length + s.hem.depth;
  /** Left to right along a line that lies `above` the top line, and rises with it. */
  const topLine = (above: number): Point[] => {
    const places = isLevel(rise) ? [-1, 1] : PLACES;
    return places.map((t) => point(t * half(-above), -above - riseAt(rise, t)));
  };
  const corner = (side: 1 | -1, y: number): Point => point(side * half(y), y);
  const top = topLine(0);
  const topLeft = top[0] ?? corner(-1, 0);
  const topRight = top.at(-1) ?? corner(1, 0);
  const outline = (bottom: number): Path => {
    const levels = [s.length, bottom].filter((y, i, all) => i === 0 || y > (all[i - 1] ?? 0));
    const right = levels.map((y) => corner(1, y));
    const left = levels.map((y) => corner(-1, y)).reverse();
    const raw = s.top.depth > 0 ? topLine(s.top.depth) : top;
    const [up, down] = s.top.depth > 0 ? [[topLeft], [topRight]] : [[], []];
    return polyline([...left.slice(-1), ...up, ...raw, ...down, ...right, ...left.slice(0, -1)], {
      closed: true,
    });
  };
  return {
    edges: finishedEdges(
      {
        waist: polyline(top),
        right: [line(topRight, corner(1, s.length))],
        hem: [line(corner(1, s.length), corner(-1, s.length))],
        left: [line(corner(-1, s.length), topLeft)],
      },
      s,
    ),
    trimmed: outline(rawHem),
    cut: outline(rawHem + s.margin),
    notches: [],
    symmetric: rise.left === rise.right && s.left.depth === s.right.depth && s.left.turned === s.right.turned,
    apex: null,
    length: s.length,
    hemAllowance: s.hem.depth,
    topAllowance: s.top.depth,
  };
}

/** A panel never narrows to nothing, whatever is asked of its seams. */
const MIN_HALF = 0.01;

/** How much longer a straight side is than the centre: √(L² + f²) − L. */
export const straightSideExcess = (length: Mm, flare: Mm): Mm => mm(Math.hypot(length, flare) - length);
