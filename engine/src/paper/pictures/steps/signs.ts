import {
  arc,
  lengthOf,
  point,
  pointAt,
  polyline,
  tangentAt,
  type Path,
  type Point,
} from '../../../geometry/index.ts';
import { mm, radians } from '../../../units/index.ts';
import { area, circle, inks, label, stroke, type Mark } from '../../drawing/index.ts';
import { lineTo } from './lines.ts';

/** So it should be. */
export const good = (x: number, y: number): Mark[] => [
  circle(point(x, y), mm(3), { fill: inks.paper, width: mm(0.4) }),
  stroke(lineTo([x - 1.5, y + 0.1], [x - 0.4, y + 1.4], [x + 1.7, y - 1.5]), { width: mm(0.6) }),
];

/** So it should not be. */
export const bad = (x: number, y: number): Mark[] => [
  circle(point(x, y), mm(3), { fill: inks.paper, width: mm(0.4) }),
  stroke([lineTo([x - 1.4, y - 1.4], [x + 1.4, y + 1.4]), lineTo([x - 1.4, y + 1.4], [x + 1.4, y - 1.4])], {
    width: mm(0.6),
  }),
];

/** First this, then that. */
export const turn = (x: number, y: number, number: string, radius = 2.6): Mark[] => [
  circle(point(x, y), mm(radius), { stroke: null, fill: inks.ink }),
  label(point(x, y), number, {
    size: mm(Math.max(3, radius * 1.3)),
    align: 'middle',
    baseline: 'middle',
    bold: true,
    ink: inks.paper,
  }),
];

/** An arrowhead whose tip is at a point, looking along `way` (of length 1). */
export function head(tip: Point, way: Point, size = 2.4): Mark {
  const at = (back: number, off: number) =>
    point(tip.x - way.x * back - way.y * off, tip.y - way.y * back + way.x * off);
  return area(polyline([tip, at(size, size * 0.34), at(size, -size * 0.34)], { closed: true }), {
    stroke: null,
    fill: inks.ink,
  });
}

/** A movement along a path. */
export function movement(path: Path): Mark[] {
  const length = lengthOf(path);
  return [stroke(path, { width: mm(0.45) }), head(pointAt(path, length), tangentAt(path, mm(length - 0.01)))];
}

/** A movement in a bow from one point to another; `rise` how far it bows to the left of the way there. */
export function bowed(from: Point, to: Point, rise: number): Mark[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const half = length / 2;
  const radius = (half * half + rise * rise) / (2 * Math.abs(rise));
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const side = rise > 0 ? 1 : -1;
  const back = radius - Math.abs(rise);
  const centre = point((from.x + to.x) / 2 - side * way.y * back, (from.y + to.y) / 2 + side * way.x * back);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const sweep = 2 * Math.asin(Math.min(1, half / radius));
  return movement([arc(centre, mm(radius), radians(start), radians(side * sweep))]);
}
