import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine } from '../../cloth.ts';
import { curve, lineTo } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { bad, good, movement } from '../signs.ts';
import { cloth } from '../surface.ts';
import { looseThread, shears } from '../tools/index.ts';

/** A pulled thread shows the true end; ends that don't meet are pulled square on the short corners. */
export const straighten: Draw = () => {
  const crooked = [
    ...lineTo([3, 8], [41, 8]),
    ...curve([point(41, 8), point(38.6, 18), point(36.4, 28), point(32, 46)]),
    ...lineTo([32, 46], [3, 46], [3, 8]),
  ];
  const skewed = polyline([point(57, 7), point(80, 7), point(74, 24), point(51, 24)], { closed: true });
  const marks: Mark[] = [
    ...cloth('wrong', crooked),
    stroke(lineTo([29, 8], [29, 46]), { width: mm(1.1), stroke: inks.paper }),
    stroke(lineTo([29, 8], [29, 46]), { ...chalkLine, width: mm(0.3) }),
    looseThread({ x: 29, y: 46.4 }),
    shears({ x: 29, y: 20, turn: 90 }),
    ...cloth('wrong', skewed),
    ...movement(lineTo([57, 7], [51, 3])),
    ...movement(lineTo([74, 24], [80, 28])),
    ...bad(65.5, 15.5),
    ...movement(lineTo([62, 27], [62, 34])),
    ...cloth(
      'wrong',
      polyline([point(53, 37), point(77, 37), point(77, 54), point(53, 54)], { closed: true }),
    ),
    rectangle(53, 51, 3, 3, { width: mm(0.3) }),
    ...good(65, 45.5),
  ];
  return { height: 57, marks };
};
