import type { Outline } from './job.ts';

// Quarter turns about the origin, counter-clockwise; exact. 0 − x and not −x, which would tell 0 from −0.
export const turnedX = (turns: number, x: number, y: number): number =>
  turns === 0 ? x : turns === 1 ? 0 - y : turns === 2 ? 0 - x : y;
export const turnedY = (turns: number, x: number, y: number): number =>
  turns === 0 ? y : turns === 1 ? x : turns === 2 ? 0 - y : 0 - x;

/** By so many quarter turns. */
export const quarterTurned = (outline: Outline, turns: number): Outline =>
  outline.map(({ x, y }) => ({ x: turnedX(turns, x, y), y: turnedY(turns, x, y) }));
