import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, circle, dot, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { lineTo } from '../lines.ts';
import { lying, type Lies } from './place.ts';

const body = { fill: inks.paper, width: mm(0.35) };

/** A presser foot seen from above; its needle is at its point, and it sews towards +x. */
export const foot = (at: Lies): Mark =>
  lying(
    'foot',
    [
      area(
        polyline(
          [
            point(-3, -2.6),
            point(5.4, -2.6),
            point(7, -1.4),
            point(5.4, -0.6),
            point(-0.8, -0.6),
            point(-0.8, 0.6),
            point(5.4, 0.6),
            point(7, 1.4),
            point(5.4, 2.6),
            point(-3, 2.6),
          ],
          { closed: true },
        ),
        body,
      ),
      rectangle(-6, -1.2, 3, 2.4, body),
      dot(point(0, 0), mm(0.45)),
    ],
    at,
  );

/** A machine needle whose point is at its point, upright. */
export const needle = (at: Lies): Mark =>
  lying(
    'needle',
    [
      rectangle(-1, -16, 2, 5, body),
      area(
        polyline([point(-0.5, -11), point(0.5, -11), point(0.45, -1.6), point(0, 0), point(-0.45, -1.6)], {
          closed: true,
        }),
        body,
      ),
      stroke(lineTo([0, -2.9], [0, -2.1]), { width: mm(0.3) }),
    ],
    at,
  );

/** A bobbin on its side. */
export const bobbin = (at: Lies): Mark =>
  lying(
    'bobbin',
    [
      circle(point(0, 0), mm(4), body),
      circle(point(0, 0), mm(3), { ...body, width: mm(0.2) }),
      circle(point(0, 0), mm(2.3), { ...body, width: mm(0.2) }),
      circle(point(0, 0), mm(1), { ...body, width: mm(0.3) }),
      stroke(lineTo([3, 0], [6.5, 1.6], [9, 0.6]), { width: mm(0.25) }),
    ],
    at,
  );
