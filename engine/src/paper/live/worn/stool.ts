import { point, polyline, type Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, type Mark } from '../../drawing/index.ts';
import { quiet } from './colours.ts';
import type { Seat, Stance } from './stance.ts';

/** Levels of the seat, of drawing millimetres from the top. */
export function levelsOf(s: Stance, { crease, thigh, slope, thick }: Seat) {
  return { lap: s.waist + crease, knee: s.waist + crease + slope * thigh, seat: s.waist + crease + thick };
}

const wood = (paths: readonly Path[]): Mark =>
  area(paths, { fill: quiet.shoe, stroke: quiet.line, width: mm(0.22) });

const box = (x: number, y: number, to: number, down: number): Path =>
  polyline([point(x, y), point(to, y), point(to, down), point(x, down)], { closed: true });

/** From the front or from behind: as broad as who sits on it. */
export function stoolAcross(s: Stance, seat: Seat): Mark {
  const { seat: y } = levelsOf(s, seat);
  const half = Math.max(0.17 * s.hipGirth, 0.14 * seat.path);
  const leg = 0.022 * seat.path;
  const deep = 0.035 * seat.path;
  return wood([
    box(-half + leg, y + deep, -half + 2.2 * leg, s.floor),
    box(half - 2.2 * leg, y + deep, half - leg, s.floor),
    box(-half, y, half, y + deep),
  ]);
}

/** From the side: from the seat behind to under the thighs. */
export function stoolFromSide(s: Stance, seat: Seat, y: number): Mark {
  const back = seat.aside + 0.1 * s.hipGirth + 0.04 * seat.path;
  const front = seat.aside - 0.27 * seat.path;
  const leg = 0.022 * seat.path;
  const deep = 0.035 * seat.path;
  return wood([
    box(front + leg, y + deep, front + 2.2 * leg, s.floor),
    box(back - 2.2 * leg, y + deep, back - leg, s.floor),
    box(front, y, back, y + deep),
  ]);
}
