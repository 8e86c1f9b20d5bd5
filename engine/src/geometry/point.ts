import { mm, type Mm } from '../units/index.ts';

/** A place on the drafting sheet in millimetres: x to the right, y down. Also used for a direction. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const point = (x: number, y: number): Point => ({ x, y });

/** Length of a vector. Plain, as Math.hypot guards against sizes no cloth has and takes ten times as long. */
export const norm = (x: number, y: number): number => Math.sqrt(x * x + y * y);

export const distance = (a: Point, b: Point): Mm => mm(norm(b.x - a.x, b.y - a.y));

/** The point at share `t` of the way from `a` (0) to `b` (1); both ends come out exact. */
export const between = (a: Point, b: Point, t: number): Point =>
  t === 1 ? b : point(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t);

export const midpoint = (a: Point, b: Point): Point => point((a.x + b.x) / 2, (a.y + b.y) / 2);
