import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches, zigzag } from '../lines.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const TOP = 15;
const BOTTOM = 54;

/** A strip on each edge, right sides together, sewn (1); turned inside and stitched down, the end tacked (2). */
export const slits: Draw = (scene) => {
  const height = spoken(scene, 'height');
  const facing = spoken(scene, 'facing');
  const size = within(6, (facing?.value ?? 25) * 0.32, 11);
  return {
    height: 62,
    marks: [
      ...turn(4, 5, '1'),
      ...sewn(size),
      ...turn(46, 5, '2'),
      ...inside(size),
      ...(height ? [measured(point(84, TOP), point(84, BOTTOM), scene.speaker.value(height), 0)] : []),
      ...(facing
        ? [
            measured(
              point(62.6 + 0.6, BOTTOM),
              point(62.6 + 0.6 + size, BOTTOM),
              scene.speaker.value(facing),
              3.4,
            ),
          ]
        : []),
    ],
  };
};

/** Right side out, one edge of the slit: the strip lies on it wrong side up. */
function sewn(size: number): Mark[] {
  const edge = 34;
  return [
    ...patch('right', { left: 6, top: 8, right: edge, bottom: BOTTOM + 3, torn: ['left', 'top'] }),
    ...patch('wrong', { left: edge - size - 4, top: TOP - 3, right: edge, bottom: BOTTOM + 3, torn: [] }),
    ...stitches(lineTo([edge - 3, TOP], [edge - 3, BOTTOM + 3])),
    ...[24, 42].map((y) => pin({ x: edge + 2.6, y, turn: 180 }, 10, [3, 7.4])),
    ...movement(lineTo([edge + 2, 49], [edge + 8, 49])),
  ];
}

/** Inside out: facings show their right side along both edges, meeting at the seam above. */
function inside(size: number): Mark[] {
  const x = 62.6;
  return [
    ...patch('wrong', { left: 47, top: 8, right: 79, bottom: BOTTOM, torn: ['left', 'right', 'top'] }),
    stroke(lineTo([x, 8], [x, TOP]), { width: mm(0.5) }),
    stroke([lineTo([x - 2.4, 8], [x - 2.4, TOP]), lineTo([x + 2.4, 8], [x + 2.4, TOP])], thinLine),
    ...patch('right', { left: x - 0.6 - size, top: TOP - 3, right: x - 0.6, bottom: BOTTOM, torn: [] }),
    ...patch('right', { left: x + 0.6, top: TOP - 3, right: x + 0.6 + size, bottom: BOTTOM, torn: [] }),
    stroke(lineTo([x, TOP], [x, BOTTOM + 1]), { width: mm(1), stroke: inks.paper }),
    ...[-1, 1].flatMap((side) =>
      stitches(lineTo([x + side * (size - 0.8), TOP - 2.4], [x + side * (size - 0.8), BOTTOM])),
    ),
    zigzag(lineTo([x - 3, TOP], [x + 3, TOP]), 2, 0.6, { width: mm(0.4) }),
  ];
}
