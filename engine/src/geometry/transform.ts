import { radians, type Radians } from '../units/index.ts';
import type { Path } from './path.ts';
import { point, type Point } from './point.ts';
import { arc, line } from './segment.ts';

/** Moves each point by `move`, and each arc's angles by `turn`; `mirrored` runs the arcs the other way round. */
const moved = (
  path: Path,
  move: (at: Point) => Point,
  turn: (angle: number) => number,
  mirrored = false,
): Path =>
  path.map((each) =>
    each.kind === 'line'
      ? line(move(each.from), move(each.to))
      : arc(
          move(each.centre),
          each.radius,
          radians(turn(each.start)),
          mirrored ? radians(each.sweep * -1) : each.sweep,
        ),
  );

export const translate = (path: Path, dx: number, dy: number): Path =>
  moved(
    path,
    ({ x, y }) => point(x + dx, y + dy),
    (angle) => angle,
  );

/** Turned by `angle`, from +x towards +y: clockwise on the sheet. */
export function rotate(path: Path, angle: Radians, about: Point = point(0, 0)): Path {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return moved(
    path,
    ({ x, y }) =>
      point(
        about.x + (x - about.x) * cos - (y - about.y) * sin,
        about.y + (x - about.x) * sin + (y - about.y) * cos,
      ),
    (start) => start + angle,
  );
}

/** Mirrored left to right across the upright line x = `aboutX`; an outline then runs the other way round. */
export const mirrorX = (path: Path, aboutX = 0): Path =>
  moved(
    path,
    ({ x, y }) => point(2 * aboutX - x, y),
    (start) => Math.PI - start,
    true,
  );

/** Turned upside down about a point, as a piece of cloth is turned on the table. */
export const halfTurn = (path: Path, about: Point): Path =>
  moved(
    path,
    ({ x, y }) => point(2 * about.x - x, 2 * about.y - y),
    (start) => start + Math.PI,
  );
