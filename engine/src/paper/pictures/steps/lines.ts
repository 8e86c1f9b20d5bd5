import {
  lengthOf,
  point,
  pointAt,
  polyline,
  stretch,
  tangentAt,
  type Path,
  type Point,
} from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { inks, stroke, type Mark, type Style } from '../../drawing/index.ts';

const PIECES = 6;

/** A smooth line through points: Catmull–Rom, drawn as short straight pieces. */
export function curve(through: readonly Point[], closed = false): Path {
  const count = through.length;
  const at = (i: number): Point => {
    const index = closed ? (i + count) % count : Math.min(count - 1, Math.max(0, i));
    return through[index] ?? point(0, 0);
  };
  const spans = closed ? count : count - 1;
  const points: Point[] = [at(0)];
  for (let i = 0; i < spans; i++)
    for (let k = 1; k <= PIECES; k++)
      points.push(between(at(i - 1), at(i), at(i + 1), at(i + 2), k / PIECES));
  return polyline(points);
}

function between(a: Point, b: Point, c: Point, d: Point, t: number): Point {
  const on = (p: number, q: number, r: number, s: number): number =>
    0.5 * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - s) * t * t + (3 * q - p - 3 * r + s) * t * t * t);
  return point(on(a.x, b.x, c.x, d.x), on(a.y, b.y, c.y, d.y));
}

/** The point `off` to the right of a path, `along` it. */
export function beside(path: Path, along: number, off: number): Point {
  const at = pointAt(path, mm(along));
  const way = tangentAt(path, mm(along));
  return point(at.x - way.y * off, at.y + way.x * off);
}

/** A path's waving companion: cloth that was torn off there, or that ripples. */
export function wavy(path: Path, height: number, wave: number): Path {
  const length = lengthOf(path);
  const waves = Math.max(1, Math.round(length / wave));
  const steps = waves * 8;
  return polyline(
    Array.from({ length: steps + 1 }, (_, i) =>
      beside(path, (length * i) / steps, height * Math.sin((2 * Math.PI * waves * i) / steps)),
    ),
  );
}

export const lineTo = (...points: readonly (readonly [number, number])[]): Path =>
  polyline(points.map(([x, y]) => point(x, y)));

const STITCH = 1.3;
const BETWEEN_STITCHES = 0.75;

/** Straight stitches along a path, rimmed so that they show on a dark ribbon too. */
export function stitches(path: Path, rim = false): Mark[] {
  const length = lengthOf(path);
  const step = STITCH + BETWEEN_STITCHES;
  const count = Math.max(1, Math.floor(length / step));
  const parts = Array.from({ length: count }, (_, i) =>
    stretch(path, mm(i * step + BETWEEN_STITCHES / 2), mm(i * step + BETWEEN_STITCHES / 2 + STITCH)),
  ).filter((part) => part.length > 0);
  if (parts.length === 0) return [];
  const under = rim ? [stroke(path, { stroke: inks.paper, width: mm(1.1) })] : [];
  return [...under, stroke(parts, { width: mm(0.45) })];
}

/** A zigzag about a path. */
export function zigzag(path: Path, width: number, step: number, look: Partial<Style> = {}): Mark {
  const count = Math.max(2, Math.round(lengthOf(path) / step));
  const points = Array.from({ length: count + 1 }, (_, i) =>
    beside(path, (lengthOf(path) * i) / count, (i % 2 === 0 ? width : -width) / 2),
  );
  return stroke(polyline(points), { width: mm(0.35), ...look });
}

/** Three-thread over-edge along an edge: the needle's line `depth` inside it, and the loopers' slanting threads. */
export function overEdge(edge: Path, depth: number): Mark[] {
  const length = lengthOf(edge);
  const count = Math.max(2, Math.round(length / 2.2));
  const slants = Array.from({ length: count }, (_, i) => {
    const from = (length * i) / count;
    return polyline([beside(edge, from, depth), beside(edge, from + length / count, -0.4)]);
  });
  const backs = Array.from({ length: count }, (_, i) => {
    const to = (length * (i + 1)) / count;
    return polyline([beside(edge, to, depth), beside(edge, to, -0.4)]);
  });
  const inner = polyline([beside(edge, 0, depth), beside(edge, length, depth)]);
  const outer = polyline([beside(edge, 0, -0.4), beside(edge, length, -0.4)]);
  return [stroke([...slants, ...backs, outer], { width: mm(0.25) }), ...stitches(inner)];
}
