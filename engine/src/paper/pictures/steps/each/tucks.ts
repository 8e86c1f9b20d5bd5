import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, foldLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { edgeOn, patch } from '../surface.ts';
import { measured } from '../wording.ts';

const TOP = 8;
/** Fold or seam of the waist, which the first tuck is measured from. */
const LINE = 10.5;
const UPPER = 21;

/** Two lines chalked on the right side (1); brought together and stitched long, the fold down (2), and cut through. */
export const tucks: Draw = (scene) => {
  const lines = spoken(scene, 'lines');
  const below = spoken(scene, 'below');
  const depth = spoken(scene, 'depth');
  const size = within(7, (depth?.value ?? 20) * 0.45, 14);
  const lower = UPPER + 2 * size;
  return {
    height: 60,
    marks: [
      ...turn(4, 5, '1'),
      ...patch('right', {
        left: 5,
        top: TOP,
        right: 33,
        bottom: 56,
        torn: ['left', 'right', 'top', 'bottom'],
      }),
      stroke(lineTo([5, LINE], [33, LINE]), { ...foldLine, stroke: inks.ink }),
      ...[UPPER, lower].map((y) => stroke(lineTo([5, y], [33, y]), { ...chalkLine, width: mm(0.5) })),
      ...(below ? [measured(point(24, LINE), point(24, UPPER), scene.speaker.value(below), 0)] : []),
      ...(lines ? [measured(point(14, UPPER), point(14, lower), scene.speaker.value(lines), 0)] : []),
      ...turn(38, 5, '2'),
      ...patch('right', { left: 39, top: TOP, right: 65, bottom: 56, torn: ['left', 'right', 'bottom'] }),
      ...patch('right', { left: 39, top: UPPER, right: 65, bottom: UPPER + size, torn: ['left', 'right'] }),
      stroke(lineTo([39, UPPER + size], [65, UPPER + size]), { width: mm(0.8) }),
      ...stitches(lineTo([39, UPPER + 0.2], [65, UPPER + 0.2]), true),
      ...movement(lineTo([59, UPPER + 2], [59, UPPER + size - 1])),
      ...(depth ? [measured(point(47, UPPER), point(47, UPPER + size), scene.speaker.value(depth), 0)] : []),
      ...section(size),
    ],
  };
};

/** Right side on the left: the fold hangs there, outside, caught by one line of stitching. */
function section(size: number): Mark[] {
  const x = 79;
  return [
    ...edgeOn(
      lineTo(
        [x, TOP],
        [x, UPPER],
        [x - 4.4, UPPER + 2],
        [x - 4.4, UPPER + size],
        [x - 2.2, UPPER + size],
        [x - 2.2, UPPER + 3],
        [x, UPPER + 2.6],
        [x, 56],
      ),
    ),
    stroke(lineTo([x - 6.4, UPPER + 2.6], [x + 1.8, UPPER + 1]), { width: mm(0.6) }),
    dot(point(x - 6.4, UPPER + 2.6), mm(0.6)),
    dot(point(x + 1.8, UPPER + 1), mm(0.6)),
  ];
}
