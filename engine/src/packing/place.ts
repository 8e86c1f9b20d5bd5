import type { Layout } from './layout.ts';
import { snapped } from './problem.ts';

/** Where a piece may lie, in one of its stances, and what it overlaps there, weighted. */
export interface Place {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
  readonly loss: number;
}

/** The place nearest to a wish where the origin may stand; NaN where there is none. */
export function placeX({ problem, end }: Layout, shape: number, x: number): number {
  const least = problem.fromX[shape]!;
  const most = problem.atStart[shape] === 1 ? least : end - problem.right[shape]!;
  const lattice = problem.latticeX[shape];
  const whole = Math.round(x);
  if (lattice) return snapped(whole, lattice, least, most) ?? NaN;
  return most < least ? NaN : whole < least ? least : whole > most ? most : whole;
}

export function placeY({ problem }: Layout, shape: number, y: number): number {
  const least = problem.least[shape]!;
  const most = problem.most[shape]!;
  const lattice = problem.latticeY[shape];
  const whole = Math.round(y);
  if (lattice) return snapped(whole, lattice, least, most) ?? NaN;
  return whole < least ? least : whole > most ? most : whole;
}
