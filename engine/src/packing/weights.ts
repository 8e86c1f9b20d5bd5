import type { Problem } from './problem.ts';

/**
 * What the overlap of each pair weighs to begin with: the square root of the pieces' sizes (fourth root of their areas,
 * of each of the two), 1 on the average.
 */
export function startWeights({ pieces, stances, shapes, fixed, movable }: Problem): Float64Array {
  const count = pieces.length;
  const sizes = pieces.map((item, piece) => {
    const shape =
      shapes[piece < movable ? (stances[item]?.[0] ?? -1) : (fixed[piece - movable]?.shape ?? -1)];
    return Math.sqrt(Math.sqrt(Math.max(1, shape?.hullArea ?? 1)));
  });
  const mean = sizes.reduce((sum, size) => sum + size, 0) / Math.max(1, count);
  return Float64Array.from({ length: count * count }, (_, at) => {
    const [i, j] = [Math.floor(at / count), at % count];
    return ((sizes[i] ?? 1) * (sizes[j] ?? 1)) / (mean * mean);
  });
}
