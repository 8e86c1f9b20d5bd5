import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, foldLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const TOP = 14;

/** Chalked (1), folded right sides together and sewn to nothing at its point (2), pressed towards the centre (3). */
export const darts: Draw = (scene) => {
  const width = spoken(scene, 'width');
  const length = spoken(scene, 'length');
  const wide = within(5, (width?.value ?? 25) * 0.4, 12);
  const tip = TOP + within(18, (length?.value ?? 90) * 0.3, 36);
  return {
    height: 60,
    marks: [
      ...turn(4, 5, '1'),
      ...patch('wrong', { left: 4, top: TOP, right: 28, bottom: 57, torn: ['left', 'right', 'bottom'] }),
      stroke(lineTo([19 - wide / 2, TOP], [19, tip], [19 + wide / 2, TOP]), {
        ...chalkLine,
        width: mm(0.45),
      }),
      stroke(lineTo([19, TOP], [19, tip]), { ...foldLine, stroke: inks.ink }),
      ...(width
        ? [measured(point(19 - wide / 2, TOP), point(19 + wide / 2, TOP), scene.speaker.value(width), -3)]
        : []),
      ...(length ? [measured(point(9.4, TOP), point(9.4, tip), scene.speaker.value(length), 0)] : []),
      ...turn(33, 5, '2'),
      ...folded(wide, tip),
      ...turn(61, 5, '3'),
      ...pressed(wide, tip),
    ],
  };
};

/** The fold stands on the right; threads are tied at the point. */
function folded(wide: number, tip: number): Mark[] {
  const fold = 54;
  return [
    ...patch('wrong', { left: 34, top: TOP, right: fold, bottom: 57, torn: ['left', 'bottom'] }),
    stroke(lineTo([fold, TOP], [fold, 57]), { width: mm(0.8) }),
    ...stitches(lineTo([fold - wide / 2, TOP], [fold - 0.2, tip])),
    stroke([curve([point(fold, tip), point(fold + 2, tip + 2), point(fold + 1, tip + 5)])], {
      width: mm(0.3),
    }),
    stroke([curve([point(fold, tip), point(fold + 1.2, tip + 1), point(fold + 3, tip + 4.4)])], {
      width: mm(0.3),
    }),
    pin({ x: fold + 3, y: TOP + 5, turn: 180 }, 10, [3, 7]),
  ];
}

/** Wrong side up: the centre of the panel, drawn dotted, is at the left, and the dart lies over to it. */
function pressed(wide: number, tip: number): Mark[] {
  const seam = 76;
  return [
    ...patch('wrong', { left: 60, top: TOP, right: 84, bottom: 57, torn: ['left', 'right', 'bottom'] }),
    stroke(lineTo([64, TOP], [64, 57]), { ...foldLine, stroke: inks.ink }),
    area(lineTo([seam, TOP], [seam - wide / 2, TOP], [seam, tip], [seam, TOP]), {
      fill: inks.paper,
      width: mm(0.4),
    }),
    ...stitches(lineTo([seam, TOP], [seam, tip])),
    ...movement(lineTo([seam - 1, TOP - 3.4], [seam - 9, TOP - 3.4])),
  ];
}
