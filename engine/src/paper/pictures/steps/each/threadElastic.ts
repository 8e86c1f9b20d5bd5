import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
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
    rectangle(5, 8, 46, 4.4, { fill: inks.paper, width: mm(0.4) }),
    stroke([9.3, 10.2, 11.1].map((y) => lineTo([5, y], [51, y])), { width: mm(0.15), stroke: inks.grey }),
    ...(cut ? [measured(point(5, 8), point(51, 8), speaker.value(cut), -2.2)] : []),
    ...(width ? note(point(53, 10.2), speaker.value(width), { align: 'start' }) : []),
    ...drawnThrough(),
    ...lapped(),
    ...triedOn(scene),
  ];
  return { height: 64, marks };
};

function drawnThrough(): Mark[] {
  return [
    ...patch('wrong', { left: 3, top: 18, right: 56, bottom: 42, torn: ['left', 'right', 'bottom'] }),
    ...patch('right', { left: 3, top: 18, right: 56, bottom: 28, torn: ['left', 'right'] }),
    ...stitches(lineTo([3, 26.4], [8, 26.4])),
    ...stitches(lineTo([26, 26.4], [56, 26.4])),
    rectangle(27, 20.4, 12, 4.4, { fill: inks.paper, dash: 'hidden', width: mm(0.4) }),
    safetyPin({ x: 40, y: 22.6, scale: 0.85 }, 11),
    ...movement(lineTo([44, 31], [54, 31])),
    rectangle(12, 23, 9, 12, { fill: inks.paper, width: mm(0.35) }),
    stroke(lineTo([9, 27.8], [25, 27.8]), { width: mm(0.5) }),
    stroke([13.4, 15, 16.6, 18.2, 19.6].map((x) => lineTo([x, 28], [x, 35])), { width: mm(0.15), stroke: inks.grey }),
    pin({ x: 9.6, y: 33, turn: 0 }, 14, [3.4, 9]),
  ];
}

const lapped = (): Mark[] => [
  rectangle(4, 50, 30, 6, { fill: inks.paper, width: mm(0.4) }),
  rectangle(22, 51.2, 30, 6, { fill: inks.paper, width: mm(0.4) }),
  stroke([52.6, 54, 55.6].map((y) => lineTo([22.4, y], [52, y])), { width: mm(0.15), stroke: inks.grey }),
  safetyPin({ x: 22.6, y: 54 }, 11),
];

/** Worn: the finished length is measured from the waist down. */
function triedOn(scene: Scene): Mark[] {
  const body = person(scene, 70, 61.5, 56);
  const skirt = wornSkirt(scene, { scale: body.scale, x: 70, top: body.waist });
  const length = spoken(scene, 'length');
  return [
    ...body.marks,
    ...skirt.marks,
    ...(length
      ? [
          measured(point(83.4, body.waist), point(83.4, Math.min(62, skirt.bottom)), '', 0),
          stroke(lineTo([72, body.waist], [84, body.waist]), thinLine),
          ...note(point(78.5, body.waist - 4), scene.speaker.value(length), { bold: true }),
        ]
      : []),
  ];
}
