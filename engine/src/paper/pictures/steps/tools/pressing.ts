import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, dot, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo } from '../lines.ts';
import { lying, type Lies } from './place.ts';

const body = { fill: inks.paper, width: mm(0.4) };

/** An iron seen from above, its tip towards +x. */
export const ironAbove = (at: Lies): Mark =>
  lying(
    'iron',
    [
      area(
        curve(
          [
            point(10, 0),
            point(5, -3.6),
            point(-2, -5),
            point(-8.6, -4.6),
            point(-9.2, 0),
            point(-8.6, 4.6),
            point(-2, 5),
            point(5, 3.6),
          ],
          true,
        ),
        body,
      ),
      area(
        curve(
          [point(3.4, 0), point(2, -1.6), point(-6, -1.5), point(-7, 0), point(-6, 1.5), point(2, 1.6)],
          true,
        ),
        body,
      ),
      stroke(curve([point(-7, 0), point(-11, 1), point(-14, -1)]), { width: mm(0.6) }),
    ],
    at,
  );

/** An iron seen from the side, standing on its sole at its point; one dot, as on a care label: cool. */
export const ironBeside = (at: Lies): Mark =>
  lying(
    'iron',
    [
      area(
        polyline([point(-11, 0), point(12, 0), point(10.6, -1.6), point(-11, -1.6)], { closed: true }),
        body,
      ),
      area(
        curve([point(10.4, -1.6), point(7, -5.4), point(1, -6.4), point(-11, -6.4), point(-11, -1.6)]),
        body,
      ),
      area(
        curve([
          point(5, -6),
          point(3.6, -11),
          point(-4, -12.4),
          point(-11, -11.6),
          point(-10.4, -6.4),
          point(-8, -6.4),
          point(-8.2, -9.2),
          point(-4, -9.8),
          point(1.4, -9),
          point(2.2, -6.3),
        ]),
        body,
      ),
      stroke(lineTo([5, -6.1], [2.2, -6.4]), { stroke: inks.paper, width: mm(0.5) }),
      dot(point(-1, -3.9), mm(0.8)),
    ],
    at,
  );
