import { line, point, polyline, type Path, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { PanelShape } from '../panel.ts';
import { finishedEdges } from './edges.ts';

export interface StraightShape {
  /** Half widths raw side to centre, at the waist fold and at the hem fold. */
  readonly halfTop: Mm;
  readonly halfHem: Mm;
  readonly length: Mm;
  readonly topAllowance: Mm;
  readonly hemAllowance: Mm;
  readonly margin: Mm;
  readonly sideSeam: Mm;
}

/**
 * A panel with straight edges. Beyond a fold its side is mirrored across the fold, so that the turned edge
 * lands on the skirt exactly; the straightening margin runs on below the hem.
 */
export function straightShape(s: StraightShape): PanelShape {
  const slope = (s.halfHem - s.halfTop) / s.length;
  const half = (y: number): number => {
    const mirrored = y < 0 ? -y : y > s.length ? 2 * s.length - y : y;
    return s.halfTop + slope * Math.max(0, mirrored);
  };
  const rawHem = s.length + s.hemAllowance;
  const outline = (bottom: number): Path => {
    const levels = [-s.topAllowance, 0, s.length, bottom].filter(
      (y, i, all) => i === 0 || y > (all[i - 1] ?? 0),
    );
    const right = levels.map((y) => point(half(y), y));
    const left = levels.map((y) => point(-half(y), y)).reverse();
    return polyline([...left.slice(-1), ...right, ...left.slice(0, -1)], { closed: true });
  };
  const corner = (side: 1 | -1, y: number): Point => point(side * half(y), y);
  const edge = (from: Point, to: Point): Path => [line(from, to)];
  const topLeft = corner(-1, 0);
  const topRight = corner(1, 0);
  const hemRight = corner(1, s.length);
  const hemLeft = corner(-1, s.length);
  return {
    edges: finishedEdges(
      {
        waist: edge(topLeft, topRight),
        right: edge(topRight, hemRight),
        hem: edge(hemRight, hemLeft),
        left: edge(hemLeft, topLeft),
      },
      s,
    ),
    trimmed: outline(rawHem),
    cut: outline(rawHem + s.margin),
    apex: null,
    length: s.length,
    hemAllowance: s.hemAllowance,
    topAllowance: s.topAllowance,
  };
}

/** How much longer a straight side is than the centre: √(L² + f²) − L. */
export const straightSideExcess = (length: Mm, flare: Mm): Mm => mm(Math.hypot(length, flare) - length);
