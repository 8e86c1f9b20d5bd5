import {
  contains,
  distance,
  distanceTo,
  point,
  polyline,
  type Path,
  type Point,
} from '../../../geometry/index.ts';

/** The part of a closed outline (as corners) between two uprights. */
export function betweenUprights(corners: readonly Point[], from: number, to: number): Point[] {
  return cutOff(
    cutOff(corners, (x) => x - from, from),
    (x) => to - x,
    to,
  );
}

/** Sutherland and Hodgman's clipping at one upright; what it doubles lies on the upright itself. */
function cutOff(corners: readonly Point[], inside: (x: number) => number, upright: number): Point[] {
  return corners.flatMap((at, i) => {
    const before = corners.at(i - 1) ?? at;
    const [was, is] = [inside(before.x), inside(at.x)];
    const crossing =
      was * is < 0
        ? [point(upright, before.y + ((at.y - before.y) * (upright - before.x)) / (at.x - before.x))]
        : [];
    return is >= 0 ? [...crossing, at] : crossing;
  });
}

/** Lines of a clipped outline that are not its cuts. */
export const uncut = (corners: readonly Point[], from: number, to: number): Path[] =>
  corners.flatMap((at, i) => {
    const next = corners[(i + 1) % corners.length] ?? at;
    const isCut = [from, to].some((x) => Math.abs(at.x - x) < 1e-6 && Math.abs(next.x - x) < 1e-6);
    return isCut || distance(at, next) < 1e-6 ? [] : [polyline([at, next])];
  });

/** A place within an outline for words, and the room to both sides, above and below. */
export interface RoomWithin {
  readonly at: Point;
  readonly across: number;
  readonly down: number;
}

const GRID = 10;

/** The middle of an outline where that lies well within it, else the point of a grid that lies deepest. */
export function roomWithin(corners: readonly Point[]): RoomWithin {
  const outline = polyline(corners, { closed: true });
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const depth = (at: Point): number => (contains(outline, at) ? distanceTo(outline, at) : -1);
  const middle = point(left + width / 2, top + height / 2);
  const grid = Array.from({ length: GRID * GRID }, (_, i) =>
    point(left + (width * ((i % GRID) + 0.5)) / GRID, top + (height * (Math.floor(i / GRID) + 0.5)) / GRID),
  );
  const deepest = grid.reduce((best, at) => (depth(at) > depth(best) ? at : best), middle);
  const at = depth(middle) >= 0.6 * depth(deepest) ? middle : deepest;
  const [low, high] = span(
    corners.map(({ x, y }) => [x, y] as const),
    at.x,
    at.y,
  );
  const [above, below] = span(
    corners.map(({ x, y }) => [y, x] as const),
    at.y,
    at.x,
  );
  return {
    at: point((low + high) / 2, (above + below) / 2),
    across: high - low,
    down: below - above,
  };
}

/** How far an outline reaches to both sides of a place on the line `v`. */
function span(corners: readonly (readonly [number, number])[], u: number, v: number): [number, number] {
  const crossings = corners.flatMap(([x, y], i) => {
    const [px, py] = corners.at(i - 1) ?? [x, y];
    return py <= v !== y <= v ? [px + ((x - px) * (v - py)) / (y - py)] : [];
  });
  return [
    Math.max(...crossings.filter((each) => each <= u), -Infinity),
    Math.min(...crossings.filter((each) => each > u), Infinity),
  ];
}
