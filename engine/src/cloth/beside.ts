import { flatten, type Path } from '../geometry/index.ts';
import { mm } from '../units/index.ts';

/** How wide an outline is at every level between its points: `low` and `high` at each. */
export interface Silhouette {
  readonly levels: readonly number[];
  readonly lowAt: (level: number) => number;
  readonly highAt: (level: number) => number;
}

/** Left and right side by the level down the sheet (`y`), or upper and lower side by the place along it (`x`). */
export function silhouetteOf(outline: Path, by: 'x' | 'y', tolerance: number): Silhouette {
  const points = flatten(outline, mm(tolerance)).map(({ x, y }) =>
    by === 'y' ? { level: y, side: x } : { level: x, side: y },
  );
  const extreme = (level: number, pick: (a: number, b: number) => number, start: number): number => {
    let found = start;
    let a = points.at(-1);
    for (const b of points) {
      if (a && isBetween(level, a.level, b.level)) found = pick(found, crossing(level, a, b, pick));
      a = b;
    }
    return found;
  };
  return {
    levels: points.map(({ level }) => level),
    lowAt: (level) => extreme(level, Math.min, Infinity),
    highAt: (level) => extreme(level, Math.max, -Infinity),
  };
}

/**
 * Least distance from the start of one to the start of the next at which they lie beside one another without
 * overlap: the widest of (high side of the one − low side of the next) at any level that both have.
 */
export function besideOf(one: Silhouette, next: Silhouette): number {
  let most = 0;
  for (const levels of [one.levels, next.levels])
    for (const level of levels) most = Math.max(most, one.highAt(level) - next.lowAt(level));
  return most;
}

/** Chords lie that far within a curve, and where it runs to the side some times as far beside it. */
const FLAT = 0.02;
const BESIDE = 4 * FLAT;

/** The same of two outlines that stand on one sheet, the next to the right of the one. */
export function nestBeside(one: Path, next: Path): number {
  const isRound = [...one, ...next].some(({ kind }) => kind === 'arc');
  return besideOf(silhouetteOf(one, 'y', FLAT), silhouetteOf(next, 'y', FLAT)) + (isRound ? BESIDE : 0);
}

interface Corner {
  readonly level: number;
  readonly side: number;
}

const HAIR = 1e-9;
const isBetween = (level: number, a: number, b: number): boolean =>
  level >= Math.min(a, b) - HAIR && level <= Math.max(a, b) + HAIR;

const crossing = (level: number, a: Corner, b: Corner, pick: (a: number, b: number) => number): number =>
  Math.abs(b.level - a.level) < HAIR
    ? pick(a.side, b.side)
    : a.side + ((b.side - a.side) * (level - a.level)) / (b.level - a.level);
