import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, type Draw } from '../picture.ts';
import { movement } from '../signs.ts';
import { patch } from '../surface.ts';
import { pin, safetyPin } from '../tools/index.ts';
import { triedOn } from '../triedOn.ts';
import { measured, note } from '../wording.ts';
import { elasticLying, says } from '../waistParts.ts';

/** Elastic cut, drawn through with a safety pin while its other end is held, its ends lapped and pinned, and tried on. */
export const threadElastic: Draw = (scene) => {
  const { speaker } = scene;
  const cut = spoken(scene, 'cut');
  const width = spoken(scene, 'width');
  const marks: Mark[] = [
    ...elasticLying(4, 8, 38, 4.6),
    ...(cut ? [measured(point(4, 8), point(42, 8), speaker.value(cut), -2.2)] : []),
    ...(width ? note(point(43.4, 10.3), speaker.value(width), { align: 'start' }) : []),
    ...(says(scene, 'threadElastic.back')
      ? throughBack()
      : [
          ...drawnThrough(),
          ...elasticLying(4, 50, 26, 5.4),
          ...elasticLying(19, 51.4, 31, 5.4),
          safetyPin({ x: 19.4, y: 54.2 }, 11),
        ]),
    ...triedOn(scene),
  ];
  return { height: 64, marks };
};

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

/** The band from inside: in at the gap of one side seam, along the back half, out at the other, an end pinned at each. */
function throughBack(): Mark[] {
  const [left, right, top, low] = [3, 52, 22, 36];
  const [one, other] = [12, 43];
  const seam = (x: number): Mark[] => [
    stroke([lineTo([x, top], [x, top + 3]), lineTo([x, low - 3], [x, 54])], { width: mm(0.45) }),
    stroke([lineTo([x - 1, top + 3], [x + 1, top + 3]), lineTo([x - 1, low - 3], [x + 1, low - 3])], {
      width: mm(0.7),
    }),
  ];
  return [
    ...patch('wrong', { left, top: low - 1, right, bottom: 54, torn: ['left', 'right', 'bottom'] }),
    ...patch('right', { left, top, right, bottom: low, torn: ['left', 'right'] }),
    stroke(lineTo([left, top], [right, top]), { width: mm(0.8) }),
    ...stitches(lineTo([left, low - 1.3], [right, low - 1.3])),
    stroke([lineTo([one, top + 4.4], [other, top + 4.4]), lineTo([one, low - 4.4], [other, low - 4.4])], {
      dash: 'hidden',
      width: mm(0.45),
    }),
    ...seam(one),
    ...seam(other),
    ...elasticLying(one - 6, top + 4.4, 6, 5.2),
    ...elasticLying(other, top + 4.4, 6, 5.2),
    pin({ x: one - 3, y: top + 1, turn: 90 }, 12, [3.6, 8.4]),
    safetyPin({ x: other + 2, y: top + 7, scale: 0.7 }, 9),
    ...movement(lineTo([20, 45], [36, 45])),
  ];
}
