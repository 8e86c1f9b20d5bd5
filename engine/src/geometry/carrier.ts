import { norm, point, type Point } from './point.ts';
import type { Arc, Line, Segment } from './segment.ts';
import { TOUCH } from './tolerance.ts';

/** Lines that part by less than this sine are parallel: over ten metres they come a hundredth of SAME apart. */
const PARALLEL = 1e-12;

function lineWithLine(a: Line, b: Line): readonly Point[] {
  const ax = a.to.x - a.from.x;
  const ay = a.to.y - a.from.y;
  const bx = b.to.x - b.from.x;
  const by = b.to.y - b.from.y;
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) <= PARALLEL * norm(ax, ay) * norm(bx, by)) return [];
  const t = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross;
  return [point(a.from.x + ax * t, a.from.y + ay * t)];
}

/** Two points, or one where they touch, `half` each way from a foot along a direction of length 1. */
function bothWays(footX: number, footY: number, ux: number, uy: number, half: number): readonly Point[] {
  if (half === 0) return [point(footX, footY)];
  return [point(footX - ux * half, footY - uy * half), point(footX + ux * half, footY + uy * half)];
}

function lineWithCircle(a: Line, { centre, radius }: Arc): readonly Point[] {
  const dx = a.to.x - a.from.x;
  const dy = a.to.y - a.from.y;
  const long = norm(dx, dy);
  if (long === 0) return [];
  const ux = dx / long;
  const uy = dy / long;
  const along = (centre.x - a.from.x) * ux + (centre.y - a.from.y) * uy;
  const footX = a.from.x + ux * along;
  const footY = a.from.y + uy * along;
  const away = Math.abs((centre.x - a.from.x) * uy - (centre.y - a.from.y) * ux);
  if (away > radius + TOUCH) return [];
  const half = away > radius - TOUCH ? 0 : Math.sqrt((radius - away) * (radius + away));
  return bothWays(footX, footY, ux, uy, half);
}

function circleWithCircle(a: Arc, b: Arc): readonly Point[] {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const apart = norm(dx, dy);
  const sum = a.radius + b.radius;
  const difference = Math.abs(a.radius - b.radius);
  if (apart <= TOUCH || apart > sum + TOUCH || apart < difference - TOUCH) return [];
  const ux = dx / apart;
  const uy = dy / apart;
  const along = (apart + ((a.radius - b.radius) * sum) / apart) / 2;
  const touching = apart > sum - TOUCH || apart < difference + TOUCH;
  const half = touching ? 0 : Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)));
  return bothWays(a.centre.x + ux * along, a.centre.y + uy * along, -uy, ux, half);
}

/**
 * Where the whole lines and circles that carry two segments meet: none, one or two points. None where they
 * are parallel, concentric or the same.
 */
export function carriersMeet(a: Segment, b: Segment): readonly Point[] {
  if (a.kind === 'line') return b.kind === 'line' ? lineWithLine(a, b) : lineWithCircle(a, b);
  return b.kind === 'line' ? lineWithCircle(b, a) : circleWithCircle(a, b);
}
