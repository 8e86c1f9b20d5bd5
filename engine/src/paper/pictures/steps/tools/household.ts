import { arc, point, polyline } from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { area, circle, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, wavy } from '../lines.ts';
import { lying, type Lies } from './place.ts';

const body = { fill: inks.paper, width: mm(0.4) };

/** A basin of water; its point is the middle of its rim. */
export const basin = (at: Lies, width = 24): Mark => {
  const half = width / 2;
  return lying(
    'basin',
    [
      area(
        polyline([point(-half, 0), point(half, 0), point(half - 3.4, 9), point(-half + 3.4, 9)], {
          closed: true,
        }),
        body,
      ),
      stroke(lineTo([-half - 1.2, 0], [half + 1.2, 0]), { width: mm(0.8) }),
      stroke([wavy(lineTo([-half + 2.4, 3], [half - 2.4, 3]), 0.5, 5)], { width: mm(0.3) }),
      stroke([wavy(lineTo([-half + 5, 5.4], [half - 5, 5.4]), 0.5, 5)], { width: mm(0.2) }),
    ],
    at,
  );
};

/** A white rag, folded small; its point is its middle. */
export const rag = (at: Lies): Mark =>
  lying(
    'rag',
    [
      area(
        curve(
          [
            point(-8, -5),
            point(-1, -6),
            point(7, -5),
            point(8.4, 0),
            point(7.4, 5),
            point(0, 6),
            point(-7.4, 5.2),
            point(-8.4, 0),
          ],
          true,
        ),
        body,
      ),
      stroke(
        [
          curve([point(-7.6, 2.6), point(0, 3.4), point(7.8, 2.4)]),
          curve([point(4.4, -5.2), point(4.8, -1), point(4.2, 3)]),
        ],
        {
          width: mm(0.22),
        },
      ),
    ],
    at,
  );

/** A clothes peg that hangs over a line at its point. */
export const peg = (at: Lies): Mark =>
  lying('peg', [rectangle(-0.7, -2, 1.4, 5, { ...body, width: mm(0.3) })], at);

/** A window whose left wing stands open. */
export const openWindow = (at: Lies): Mark =>
  lying(
    'window',
    [
      rectangle(-7, 0, 14, 14, body),
      area(
        polyline([point(-7, 0), point(-12.4, 2.4), point(-12.4, 16.4), point(-7, 14)], { closed: true }),
        body,
      ),
      stroke([lineTo([0, 0], [0, 14]), lineTo([0, 7], [7, 7]), lineTo([-7, 7], [-12.4, 9.4])], {
        width: mm(0.3),
      }),
      ...[3.6, 6.6, 9.6].map((y) =>
        stroke(curve([point(-1, y), point(-3.4, y - 0.8), point(-5.4, y + 0.6), point(-9, y)]), {
          width: mm(0.25),
        }),
      ),
    ],
    at,
  );

/** A hanger; its point is the middle of its bar. */
export const hanger = (at: Lies, half: number): Mark =>
  lying(
    'hanger',
    [
      stroke(
        [
          ...curve([point(-half, 0), point(-half * 0.5, -2.6), point(0, -5)]),
          ...curve([point(0, -5), point(half * 0.5, -2.6), point(half, 0)]),
        ],
        { width: mm(0.7) },
      ),
      stroke(lineTo([-half, 0], [half, 0]), { width: mm(0.7) }),
      stroke([arc(point(0, -8), mm(1.8), radians(Math.PI), radians(1.5 * Math.PI))], { width: mm(0.6) }),
      stroke(lineTo([0, -6.2], [0, -5]), { width: mm(0.6) }),
    ],
    at,
  );

/** A clock. */
export const clock = (at: Lies): Mark =>
  lying(
    'clock',
    [
      circle(point(0, 0), mm(6), body),
      stroke([lineTo([0, 0], [0, -4.2]), lineTo([0, 0], [2.8, 1.4])], { width: mm(0.5) }),
      stroke(
        [0, 90, 180, 270].map((turn) => {
          const way = { x: Math.sin((turn * Math.PI) / 180), y: Math.cos((turn * Math.PI) / 180) };
          return lineTo([way.x * 5, way.y * 5], [way.x * 5.7, way.y * 5.7]);
        }),
        { width: mm(0.3), stroke: inks.grey },
      ),
    ],
    at,
  );
