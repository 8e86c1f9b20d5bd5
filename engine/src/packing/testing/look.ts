import { EndType, FillRule, inflatePaths, intersect, JoinType, type Path64 } from 'clipper2-ts';
import type { Outline, PackingJob, Placement } from '../job.ts';

/** Parts of a unit that the clipping library sees. */
const FINE = 10_000;

/** A placed piece, drawn by the definition of a placement and nothing else; the clipping library's whole numbers. */
export function drawn(job: PackingJob, { item, rotation, mirrored, x, y }: Placement): Path64 {
  const angle = (rotation * Math.PI) / 180;
  const outline = (job.items[item]?.outline ?? []).map((corner) => {
    const from = mirrored ? -corner.x : corner.x;
    return {
      x: Math.round((from * Math.cos(angle) - corner.y * Math.sin(angle) + x) * FINE),
      y: Math.round((from * Math.sin(angle) + corner.y * Math.cos(angle) + y) * FINE),
    };
  });
  return areaOf(outline) < 0 ? outline.toReversed() : outline;
}

export const fine = (outline: Outline): Path64 => {
  const path = outline.map(({ x, y }) => ({ x: Math.round(x * FINE), y: Math.round(y * FINE) }));
  return areaOf(path) < 0 ? path.toReversed() : path;
};

/** How thick the overlap of two pieces is at most, in units of the job: mean thickness of each part of it. */
export function overlap(a: Path64, b: Path64): number {
  const parts = intersect([a], [b], FillRule.NonZero);
  return Math.max(0, ...parts.map((part) => (2 * Math.abs(areaOf(part))) / roundOf(part) / FINE));
}

/** The piece grown on all sides. */
export const wider = (path: Path64, by: number): Path64 =>
  inflatePaths([path], by * FINE, JoinType.Round, EndType.Polygon, 2, FINE / 1000)[0] ?? path;

/** How far a piece reaches out of the strip. */
export const outside = (path: Path64, width: number, length: number): number =>
  Math.max(...path.map(({ x, y }) => Math.max(-x, -y, y - width * FINE, x - length * FINE))) / FINE;

const areaOf = (path: Path64): number =>
  path.reduce((sum, { x, y }, i) => {
    const next = path[(i + 1) % path.length] ?? { x, y };
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);

const roundOf = (path: Path64): number =>
  path.reduce((sum, { x, y }, i) => {
    const next = path[(i + 1) % path.length] ?? { x, y };
    return sum + Math.hypot(next.x - x, next.y - y);
  }, 1);
