import earcut from 'earcut';
import type { Corner, Outline } from './job.ts';
import { isConvex, side } from './polygon.ts';

/**
 * A simple, counter-clockwise outline parted into convex ones: triangles, then every diagonal taken away again that is
 * not needed (Hertel and Mehlhorn 1983: at most four times as many parts as the fewest). Corners stay where they are.
 */
export function convexParts(outline: Outline): readonly Outline[] {
  if (isConvex(outline)) return [outline];
  const triangles = earcut(outline.flatMap(({ x, y }) => [x, y]));
  let parts: number[][] = [];
  for (let i = 0; i + 2 < triangles.length; i += 3) {
    const [a = 0, b = 0, c = 0] = triangles.slice(i, i + 3);
    const turn = side(cornerOf(outline, a), cornerOf(outline, b), cornerOf(outline, c));
    if (turn !== 0) parts.push(turn > 0 ? [a, b, c] : [a, c, b]);
  }
  for (let merged = true; merged;) {
    merged = false;
    for (let i = 0; i < parts.length && !merged; i++)
      for (let j = i + 1; j < parts.length && !merged; j++) {
        const joined = joinedAt(outline, parts[i] ?? [], parts[j] ?? []);
        if (!joined) continue;
        parts = [...parts.slice(0, i), joined, ...parts.slice(i + 1, j), ...parts.slice(j + 1)];
        merged = true;
      }
  }
  return parts.map((part) => part.map((at) => cornerOf(outline, at)));
}

const cornerOf = (outline: Outline, at: number): Corner => outline[at] ?? { x: 0, y: 0 };

/** Two parts as one, where they share an edge and are convex together. */
function joinedAt(outline: Outline, one: readonly number[], other: readonly number[]): number[] | null {
  for (const [i, from] of one.entries()) {
    const to = one[(i + 1) % one.length];
    const at = other.findIndex((corner, j) => corner === to && other[(j + 1) % other.length] === from);
    if (at < 0) continue;
    const around = (part: readonly number[], start: number): number[] =>
      part.map((_, k) => part[(start + k) % part.length] ?? 0);
    // From the end of the shared edge round each part to its beginning.
    const joined = [...around(one, i + 1), ...around(other, at + 2).slice(0, -2)];
    return turnsLeft(outline, joined) ? joined : null;
  }
  return null;
}

const turnsLeft = (outline: Outline, part: readonly number[]): boolean =>
  part.every((corner, i) => {
    const next = part[(i + 1) % part.length] ?? 0;
    const after = part[(i + 2) % part.length] ?? 0;
    return side(cornerOf(outline, corner), cornerOf(outline, next), cornerOf(outline, after)) >= 0;
  });
