import type { Path64 } from 'clipper2-ts';

/** Whole steps of a micrometre. */
export const UNITS = 1000;

/**
 * Corners in mm as the clipping library reads them. Edges of a few steps are left out: where one lies along a
 * scan line, clipper2-ts loses the corner at the far end of the next (seen with 0.001 mm before one of 918 mm).
 */
export function whole(corners: readonly { readonly x: number; readonly y: number }[]): Path64 {
  const path: Path64 = [];
  const isNear = (a: Path64[number] | undefined, b: Path64[number]): boolean =>
    a !== undefined && Math.abs(a.x - b.x) <= 2 && Math.abs(a.y - b.y) <= 2;
  for (const { x, y } of corners) {
    const corner = { x: Math.round(x * UNITS), y: Math.round(y * UNITS) };
    if (!isNear(path.at(-1), corner)) path.push(corner);
  }
  const [first] = path;
  if (path.length > 1 && first && isNear(path.at(-1), first)) path.pop();
  return path;
}
