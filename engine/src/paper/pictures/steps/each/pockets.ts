import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { turn } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const TOP = 8;
const EDGE = 23;
const LINE = 54;

/** A bag piece on each side edge, right sides together (1); pressed out, side and bag are later sewn in one round (2). */
export const pockets: Draw = (scene) => {
  const below = spoken(scene, 'below');
  const opening = spoken(scene, 'opening');
  const scale = within(0.05, 22 / Math.max(1, opening?.value ?? 150), 0.3);
  const from = TOP + within(5, (below?.value ?? 76) * scale, 13);
  const to = from + (opening?.value ?? 150) * scale;
  return {
    height: 62,
    marks: [
      ...turn(4, 4, '1'),
      ...laid(scene, from, to),
      ...turn(46, 4, '2'),
      ...inOne(from, to),
      ...(below ? [measured(point(82, TOP), point(82, from), scene.speaker.value(below), 0)] : []),
      ...(opening ? [measured(point(82, from), point(82, to), scene.speaker.value(opening), 0)] : []),
    ],
  };
};

const HEADROOM = 3.4;

/** A bag piece: straight along the side, round below. */
const bag = (edge: number, from: number, to: number, out: number) =>
  curve([
    point(edge, from - HEADROOM),
    point(edge + out * 6, from - HEADROOM),
    point(edge + out * 13, from + 3),
    point(edge + out * 17, to),
    point(edge + out * 14, to + 9),
    point(edge + out * 7, to + 11),
    point(edge + out * 1.5, to + HEADROOM + 3),
    point(edge, to + HEADROOM),
  ]);

const notches = (x: number, from: number, to: number, way: number): Mark =>
  stroke(
    [from, to].map((y) => lineTo([x, y], [x + way * 2.6, y])),
    { width: mm(0.8) },
  );

function laid(scene: Scene, from: number, to: number): Mark[] {
  const seam = spoken(scene, 'seam');
  const edge = EDGE + 15;
  return [
    ...patch('right', { left: 6, top: TOP, right: edge, bottom: 55, torn: ['left', 'bottom'] }),
    ...cloth('wrong', [
      ...bag(edge, from, to, -1),
      ...lineTo([edge, to + HEADROOM], [edge, from - HEADROOM]),
    ]),
    ...stitches(lineTo([edge - 3, from - HEADROOM], [edge - 3, to + HEADROOM])),
    notches(edge, from, to, -1),
    ...[from + 4, to - 4].map((y) => pin({ x: edge + 2.6, y, turn: 180 }, 10, [3, 7.4])),
    ...(seam ? [measured(point(edge - 3, 55), point(edge, 55), scene.speaker.value(seam), 2.2)] : []),
  ];
}

/** Wrong side up, the bag out beside the side: down the side to the notch, round the bag, on down the side. */
function inOne(from: number, to: number): Mark[] {
  const edge = LINE + 3;
  const line = edge - 2.6;
  const round = curve([
    point(line, TOP + 1),
    point(line, from - 2),
    point(line + 1, from),
    point(line + 8, from - HEADROOM + 2.4),
    point(line + 13, from + 5),
    point(line + 16, to),
    point(line + 13, to + 7),
    point(line + 7, to + 8.4),
    point(line + 1.4, to + 2),
    point(line, to + 4),
    point(line, 54),
  ]);
  return [
    ...patch('wrong', { left: 46, top: TOP, right: edge, bottom: 55, torn: ['left', 'bottom'] }),
    ...cloth('wrong', [...bag(edge, from, to, 1), ...lineTo([edge, to + HEADROOM], [edge, from - HEADROOM])]),
    stroke(lineTo([edge, from - HEADROOM], [edge, to + HEADROOM]), { width: mm(0.3), stroke: inks.grey }),
    notches(edge, from, to, -1),
    ...stitches(round),
  ];
}
