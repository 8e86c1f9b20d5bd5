import { mm } from '../../../../units/index.ts';
import { stroke } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { patch } from '../surface.ts';

/** Stitching on the cloth along an edge: the edge above, two lines below it, their threads left long. */
export const plainStitch: Draw = () => ({
  height: 44,
  marks: [
    ...patch('right', { left: 6, top: 8, right: 78, bottom: 38, torn: ['left', 'right', 'bottom'] }),
    ...[14, 18].flatMap((y) => [
      ...stitches(lineTo([16, y], [68, y])),
      stroke([lineTo([16, y], [11, y + 2], [9, y + 6]), lineTo([68, y], [73, y + 2], [75, y + 6])], {
        ...thinLine,
        width: mm(0.3),
      }),
    ]),
  ],
});
