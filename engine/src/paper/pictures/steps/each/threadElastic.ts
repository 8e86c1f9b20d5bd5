import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { person } from '../person.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { movement } from '../signs.ts';
import { patch } from '../surface.ts';
import { pin, safetyPin } from '../tools/index.ts';
import { measured, note } from '../wording.ts';
import { wornSkirt } from '../worn.ts';

/** Elastic cut, drawn through with a safety pin while its other end is held, its ends lapped and pinned, and tried on. */
export const threadElastic: Draw = (scene) => {
  const { speaker } = scene;
  const cut = spoken(scene, 'cut');
  const width = spoken(scene, 'width');
  const marks: Mark[] = [
    ...elastic(4, 8, 38, 4.6),
    ...(cut ? [measured(point(4, 8), point(42, 8), speaker.value(cut), -2.2)] : []),
    ...(width ? note(point(43.4, 10.3), speaker.value(width), { align: 'start' }) : []),
    ...drawnThrough(),
    ...elastic(4, 50, 26, 5.4),
    ...elastic(19, 51.4, 31, 5.4),
    safetyPin({ x: 19.4, y: 54.2 }, 11),
    ...triedOn(scene),
  ];
  return { height: 64, marks };
};

const elastic = (x: number, y: number, length: number, width: number): Mark[] => [
  rectangle(x, y, length, width, { fill: inks.paper, width: mm(0.4) }),
  stroke(
    [0.27, 0.5, 0.73].map((t) => lineTo([x + 0.4, y + width * t], [x + length - 0.4, y + width * t])),
    { width: mm(0.15), stroke: inks.grey },
  ),
];

/** The casing from inside: the elastic goes in at the opening, its tail pinned beside it, and the safety pin leads. */
function drawnThrough(): Mark[] {
  const line = 26.4;
  return [
    ...patch('wrong', { left: 3, top: 18, right: 52, bottom: 43, torn: ['left', 'right', 'bottom'] }),
    ...patch('right', { left: 3, top: 18, right: 52, bottom: 28, torn: ['left', 'right'] }),
    stroke(lineTo([9, 28], [9, 20.2], [36, 20.2]), { dash: 'hidden', width: mm(0.45) }),
    stroke(lineTo([13.6, 28], [13.6, 24.8], [36, 24.8]), { dash: 'hidden', width: mm(0.45) }),
    ...stitches(lineTo([3, line], [7.6, line])),
    ...stitches(lineTo([23, line], [52, line])),
    stroke([lineTo([7.6, line - 1], [7.6, line + 1]), lineTo([23, line - 1], [23, line + 1])], {
      width: mm(0.7),
    }),
    area(lineTo([9, 28], [13.6, 28], [13.6, 40], [9, 40], [9, 28]), { fill: inks.paper, width: mm(0.4) }),
    stroke(
      [10.3, 11.3, 12.3].map((x) => lineTo([x, 28.4], [x, 39.6])),
      {
        width: mm(0.15),
        stroke: inks.grey,
      },
    ),
    pin({ x: 5.4, y: 36 }, 12, [3, 9]),
    safetyPin({ x: 35, y: 22.6, scale: 0.85 }, 11),
    ...movement(lineTo([34, 32.6], [46, 32.6])),
  ];
}

/** Worn: the finished length is measured from the waist down. */
function triedOn(scene: Scene): Mark[] {
  const x = 68;
  const body = person(scene, x, 61.5, 57);
  // A skirt longer than its wearer is drawn to the floor.
  const longest = (61.5 - body.waist) / scene.plan.skirt.finishedLength.value;
  const skirt = wornSkirt(scene, { scale: Math.min(body.scale, longest), x, top: body.waist, widest: 13.6 });
  const length = spoken(scene, 'length');
  const hem = Math.min(62.5, skirt.bottom);
  return [
    ...body.marks,
    ...skirt.marks,
    ...(length
      ? [
          stroke([lineTo([x + skirt.halfTop + 1, body.waist], [85, body.waist])], thinLine),
          measured(point(84, body.waist), point(84, hem), scene.speaker.value(length), 0),
        ]
      : []),
  ];
}
