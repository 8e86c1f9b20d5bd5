import { endOf, point, startOf } from '../../../../geometry/index.ts';
import type { Notch } from '../../../../skirt/index.ts';
import { mm } from '../../../../units/index.ts';
import { group, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import type { Fitted } from '../fitted.ts';
import { lineTo, stitches } from '../lines.ts';
import { openPanel, shapeOf } from '../panel.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { band, rowsMeet } from '../ribbons.ts';
import { movement } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

/** One panel on the next, right sides together: notch on notch, the seam sewn from the hem up. */
export const panelSeams: Draw = (scene) => {
  const shape = shapeOf(scene);
  const { fitted, marks: panel } = openPanel(scene, 'wrong', { left: 5, top: 5, width: 38, height: 52 });
  const { left, top, width, height } = fitted.box;
  const path = fitted.path(shape.edges.find(({ name }) => name === 'right')?.finished ?? []);
  const [first, last] = [path[0], path.at(-1)];
  const [a, b] = [first ? startOf(first) : point(left, top), last ? endOf(last) : point(left, top)];
  const [low, high] = a.y > b.y ? [a, b] : [b, a];
  const third = point(low.x + (high.x - low.x) * 0.3, low.y + (high.y - low.y) * 0.3);
  const middle = point(left + width / 2, top);
  const notches = shape.notches.filter(({ at }) => fitted.at(at).x > middle.x);
  const corner = point((low.x + high.x) / 2, top + height * 0.45);
  return {
    height: 62,
    marks: [
      group('under', cloth('right', fitted.path(shape.trimmed), { width: mm(0.3) }), {
        placement: { dx: mm(1), dy: mm(1) },
      }),
      ...panel,
      ...stitches(path),
      ...notches.map((each) => notchMark(each, fitted)),
      ...movement(lineTo([low.x + 4, low.y], [third.x + 4, third.y])),
      rectangle(corner.x - 4, corner.y - 4, 8, 8, { width: mm(0.3), stroke: inks.grey }),
      stroke(lineTo([corner.x + 4, corner.y], [54, 30]), thinLine),
      ...detail(scene),
    ],
  };
};

const notchMark = ({ at, inward }: Notch, { at: fit }: Fitted): Mark => {
  const from = fit(at);
  return stroke(lineTo([from.x, from.y], [from.x + inward.x * 1.8, from.y + inward.y * 1.8]), {
    width: mm(0.5),
  });
};

/** The edge close by: the upper panel's corner is turned back, and a row and a notch are seen on both. */
function detail(scene: Scene): Mark[] {
  const seam = spoken(scene, 'seam');
  const inset = within(4, (seam?.value ?? 0) * 0.6, 10);
  const [left, edge, top, bottom] = [55, 77, 6, 50];
  const line = edge - inset;
  const meet = rowsMeet(scene);
  return [
    ...patch('right', { left, top, right: edge + 1.6, bottom, torn: ['left', 'top', 'bottom'] }),
    ...(meet ? [band(scene, 0, left, 13, edge + 1.6, 19)] : []),
    ...cloth(
      'wrong',
      lineTo([left, top + 17], [edge, top + 28], [edge, bottom], [left, bottom], [left, top + 17]),
    ),
    ...cloth('right', lineTo([left, top + 17], [edge, top + 28], [left + 6, top + 35], [left, top + 17])),
    ...stitches(lineTo([line, bottom], [line, top + 28])),
    stroke(
      [lineTo([edge, top + 36], [edge - 2.6, top + 36]), lineTo([edge + 1.6, top + 36], [edge, top + 36])],
      {
        width: mm(0.8),
      },
    ),
    stroke(lineTo([edge + 1.6, top + 25], [edge - 1, top + 25]), { width: mm(0.8) }),
    pin({ x: edge + 4.6, y: top + 36, turn: 180 }, 11, [3.4, 8]),
    pin({ x: edge + 4.6, y: top + 42, turn: 180 }, 11, [3.4, 8]),
    ...(seam ? [measured(point(line, bottom), point(edge, bottom), scene.speaker.value(seam), 3)] : []),
  ];
}
