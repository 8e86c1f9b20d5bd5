import { arc, point, polyline } from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { area, circle, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo } from '../lines.ts';
import { lying, type Lies } from './place.ts';

const body = { fill: inks.paper, width: mm(0.35) };
const wire = { width: mm(0.4) };

/**
 * A pin from its head, along +x. Between `from` and `to` it runs beneath what it pins.
 */
export const pin = (at: Lies, length = 9, under: readonly [number, number] = [2.6, 6.2]): Mark => {
  const [from, to] = under;
  const shown = [lineTo([0, 0], [from, 0]), ...(to < length ? [lineTo([to, 0], [length, 0])] : [])];
  return lying(
    'pin',
    [
      stroke(shown, { stroke: inks.paper, width: mm(1.1) }),
      stroke(shown, wire),
      stroke(lineTo([from, 0], [Math.min(to, length), 0]), { dash: 'hidden', width: mm(0.25) }),
      circle(point(0, 0), mm(0.9), { fill: inks.paper, width: mm(0.4) }),
    ],
    at,
  );
};

/** A clip that bites an edge from the left, at its point. */
export const clip = (at: Lies): Mark =>
  lying(
    'clip',
    [
      area(
        polyline([point(3.5, -2.2), point(-4, -1.7), point(-4, 1.7), point(3.5, 2.2)], { closed: true }),
        body,
      ),
      stroke([lineTo([0.6, -1.9], [0.6, 1.9]), lineTo([-2.6, -1.7], [-2.6, 1.7])], { width: mm(0.25) }),
    ],
    at,
  );

/** A closed safety pin along +x, its coil at the left. */
export const safetyPin = (at: Lies, length = 13): Mark =>
  lying(
    'safety pin',
    [
      stroke(lineTo([0.8, -1.4], [length - 2, -1.4]), { stroke: inks.paper, width: mm(1.2) }),
      stroke(lineTo([0.8, 1.2], [length - 2, 0.9]), { stroke: inks.paper, width: mm(1.2) }),
      stroke([lineTo([0.4, -1.4], [length - 2, -1.4]), lineTo([0.4, 1.3], [length - 2, 0.9])], wire),
      circle(point(0, 0), mm(1.4), { fill: inks.paper, width: mm(0.4) }),
      area(
        curve(
          [
            point(length - 2.6, -2),
            point(length + 0.4, -1.6),
            point(length + 0.6, 1),
            point(length - 2.6, 1.7),
          ],
          true,
        ),
        body,
      ),
    ],
    at,
  );

/** A small bottle whose spout points down at its point. */
export const bottle = (at: Lies): Mark =>
  lying(
    'bottle',
    [
      area(
        polyline([point(-0.4, 0), point(0.4, 0), point(1.3, -4), point(-1.3, -4)], { closed: true }),
        body,
      ),
      area(
        curve([
          point(-1.4, -4),
          point(-3.2, -6.4),
          point(-3.2, -14),
          point(3.2, -14),
          point(3.2, -6.4),
          point(1.4, -4),
        ]),
        body,
      ),
      stroke(lineTo([-3.2, -9], [3.2, -9]), { width: mm(0.25) }),
    ],
    at,
  );

/** A spray can that stands up, its nozzle at its point and looking left. */
export const sprayCan = (at: Lies): Mark =>
  lying(
    'spray can',
    [
      rectangle(0, -1.4, 3, 2.8, body),
      area(curve([point(-0.4, 1.4), point(-1.6, 4), point(4.6, 4), point(3.4, 1.4)]), body),
      rectangle(-2, 3.6, 7, 15, body),
      stroke([lineTo([-2, 7], [5, 7]), lineTo([-2, 15], [5, 15])], { width: mm(0.25) }),
    ],
    at,
  );

/** A drop that hangs from its point. */
export const drop = (at: Lies): Mark =>
  lying(
    'drop',
    [
      area(
        [
          ...curve([point(0.98, 2), point(0.6, 1), point(0, 0), point(-0.6, 1), point(-0.98, 2)]),
          arc(point(0, 2.2), mm(1), radians(Math.PI), radians(-Math.PI)),
        ],
        { ...body, width: mm(0.3) },
      ),
    ],
    at,
  );

/** A small flame above its point. */
export const flame = (at: Lies): Mark =>
  lying(
    'flame',
    [
      area(
        curve(
          [point(0, 0), point(-2, -2), point(-1.2, -5), point(0.4, -8), point(0.9, -5.4), point(2.2, -2.6)],
          true,
        ),
        body,
      ),
      area(curve([point(0, -0.6), point(-0.8, -2), point(0, -4), point(0.9, -2)], true), {
        ...body,
        width: mm(0.25),
      }),
    ],
    at,
  );
