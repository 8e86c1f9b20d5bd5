import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import type { Draw, Scene } from '../picture.ts';
import { bowed, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { firstPanel, toned } from '../tone.ts';
import { pin } from '../tools/index.ts';
import { button, buttonhole, says } from '../waistParts.ts';

/** The hole in the end that lies on top, a pin across its end; the button where the skirt closes. */
export const fasten: Draw = (scene) => ({
  height: 64,
  marks: says(scene, 'fasten.wrap') ? wrapped(scene) : [...holed(scene), ...overlapped(scene)],
});

const TOP = 8;
const LOW = 21;
const BOTTOM = 33;

/** The end of a band on its skirt, which runs on to the left; sewn round its end. */
const endOnTop = (scene: Scene, [left, end]: readonly [number, number]): Mark[] => [
  ...skirt(scene, { left, top: LOW - 1, right: end, bottom: BOTTOM, torn: ['left', 'bottom'] }),
  ...patch('right', { left, top: TOP, right: end, bottom: LOW, torn: ['left'] }),
  stroke(lineTo([left, TOP], [end, TOP]), { width: mm(0.8) }),
];

/** The panels below the band. */
const skirt = (scene: Scene, of: Parameters<typeof patch>[1]): Mark[] =>
  toned(scene, firstPanel(scene), patch('right', of));

const holed = (scene: Scene): Mark[] => [
  ...turn(4, 5, '1'),
  ...endOnTop(scene, [9, 56]),
  ...buttonhole(point(42, 14.5), point(51, 14.5), false),
  stroke(lineTo([42.6, 14.5], [48.4, 14.5]), { width: mm(0.4) }),
  pin({ x: 49.6, y: TOP - 3, turn: 90 }, 13, [4, 9]),
];

/** Closed as it is worn: the button sits on the part that lies below, under the hole. */
function overlapped(scene: Scene): Mark[] {
  const zip = scene.plan.skirt.waist.closure?.kind === 'zip';
  const [top, low, bottom] = [40, 50, 62.5];
  return [
    ...turn(4, 40, '2'),
    ...skirt(scene, { left: 44, top: low - 1, right: 80, bottom, torn: ['right', 'bottom'] }),
    ...patch('right', { left: 36, top, right: 80, bottom: low, torn: ['right'] }),
    stroke(lineTo([36, top], [80, top]), { width: mm(0.8) }),
    ...button(point(52, 45), 2.6),
    ...skirt(scene, { left: 9, top: low - 1, right: 40, bottom, torn: ['left', 'bottom'] }),
    ...patch('right', { left: 9, top, right: 40, bottom: low, torn: ['left'] }),
    stroke(lineTo([9, top], [40, top]), { width: mm(0.8) }),
    ...buttonhole(point(32, 45), point(38, 45)),
    ...(zip
      ? stitches(lineTo([48, low], [48, bottom - 0.8]))
      : [stroke(lineTo([46, low], [46, bottom - 0.8]), thinLine)]),
    ...bowed(point(34, 38), point(52, 38), 2.4),
  ];
}

/** A wrap from the front: the end on top buttoned, and inside it a second pair that holds the end below. */
const wrapped = (scene: Scene): Mark[] => [
  ...turn(4, 5, '1'),
  ...skirt(scene, { left: 9, top: LOW - 1, right: 80, bottom: BOTTOM, torn: ['left', 'right', 'bottom'] }),
  ...patch('right', { left: 9, top: TOP, right: 80, bottom: LOW, torn: ['left', 'right'] }),
  ...endOnTop(scene, [9, 56]),
  stroke(lineTo([9, TOP], [80, TOP]), { width: mm(0.8) }),
  ...buttonhole(point(44, 14.5), point(51, 14.5)),
  ...button(point(48, 14.5), 2.6),
  ...turn(4, 40, '2'),
  ...patch('wrong', { left: 9, top: 50, right: 80, bottom: 62.5, torn: ['left', 'right', 'bottom'] }),
  ...patch('right', { left: 9, top: 40, right: 80, bottom: 51, torn: ['left', 'right'] }),
  ...patch('wrong', { left: 9, top: 50, right: 48, bottom: 62.5, torn: ['left', 'bottom'] }),
  ...patch('right', { left: 9, top: 40, right: 48, bottom: 51, torn: ['left'] }),
  stroke(lineTo([9, 40], [80, 40]), { width: mm(0.8) }),
  ...buttonhole(point(37, 45.4), point(44, 45.4)),
  ...button(point(41, 45.4), 2.6),
];
