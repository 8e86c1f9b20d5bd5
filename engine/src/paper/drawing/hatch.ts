import { flatten, point, type Path, type Point } from '../../geometry/index.ts';
import type { PatternName } from './style.ts';

export const HATCH_SPACING = 2.2;
const DOT_SPACING = 2.4;
export const DOT_RADIUS = 0.32;

interface Edge {
  readonly a: Point;
  readonly b: Point;
}

/** A filling: lines clipped to the area, and the centres of dots that lie wholly in it. */
export interface Hatch {
  readonly lines: readonly Edge[];
  readonly dots: readonly Point[];
}

const turned = ({ x, y }: Point, angle: number): Point =>
  point(x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle));

function edgesOf(corners: readonly (readonly Point[])[]): readonly Edge[] {
  return corners.flatMap((loop) => loop.map((a, i) => ({ a, b: loop[(i + 1) % loop.length] ?? a })));
}

/** Where the level line at `y` runs inside, even-odd: a scan line. Half-open edges count each corner once. */
export function insideAt(edges: readonly Edge[], y: number): readonly (readonly [number, number])[] {
  const crossings = edges
    .filter(({ a, b }) => a.y <= y !== b.y <= y)
    .map(({ a, b }) => a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x))
    .sort((p, q) => p - q);
  const spans: (readonly [number, number])[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) spans.push([crossings[i] ?? 0, crossings[i + 1] ?? 0]);
  return spans;
}

/** Levels at whole multiples of the spacing, so that two areas side by side carry one pattern. */
function levels(edges: readonly Edge[], spacing: number): readonly number[] {
  const ys = edges.map(({ a }) => a.y);
  const least = ys.reduce((low, y) => Math.min(low, y), Infinity);
  const most = ys.reduce((high, y) => Math.max(high, y), -Infinity);
  const found: number[] = [];
  for (let i = Math.ceil(least / spacing); i * spacing < most; i++) found.push(i * spacing);
  return found;
}

function linesAt(corners: readonly (readonly Point[])[], angle: number): readonly Edge[] {
  const edges = edgesOf(corners.map((loop) => loop.map((p) => turned(p, -angle))));
  return levels(edges, HATCH_SPACING).flatMap((y) =>
    insideAt(edges, y).map(([x0, x1]) => ({
      a: turned(point(x0, y), angle),
      b: turned(point(x1, y), angle),
    })),
  );
}

function dotsIn(corners: readonly (readonly Point[])[]): readonly Point[] {
  const edges = edgesOf(corners);
  const clear = (x: number, y: number) => insideAt(edges, y).some(([x0, x1]) => x0 <= x && x <= x1);
  const rim = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => turned(point(DOT_RADIUS, 0), (i * Math.PI) / 4));
  return levels(edges, DOT_SPACING / 2).flatMap((y) => {
    const shift = Math.round(y / (DOT_SPACING / 2)) % 2 === 0 ? 0 : DOT_SPACING / 2;
    return insideAt(edges, y).flatMap(([x0, x1]) => {
      const dots: Point[] = [];
      for (let i = Math.ceil((x0 - shift) / DOT_SPACING); i * DOT_SPACING + shift < x1; i++) {
        const x = i * DOT_SPACING + shift;
        if (rim.every((r) => clear(x + r.x, y + r.y))) dots.push(point(x, y));
      }
      return dots;
    });
  });
}

/** The lines and dots that fill closed paths (even-odd), 2.2 mm apart. */
export function hatch(paths: readonly Path[], pattern: PatternName): Hatch {
  const corners = paths.map((path) => flatten(path)).filter((loop) => loop.length > 2);
  if (pattern === 'none') return { lines: [], dots: [] };
  if (pattern === 'dots') return { lines: [], dots: dotsIn(corners) };
  const rising = linesAt(corners, -Math.PI / 4);
  return { lines: pattern === 'cross' ? [...rising, ...linesAt(corners, Math.PI / 4)] : rising, dots: [] };
}
