import type { Hold } from '../../../../ribbon/index.ts';
import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { circle, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine } from '../../cloth.ts';
import { lineTo } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { band, ribbonLook } from '../ribbons.ts';
import { bad, good, movement } from '../signs.ts';
import { edgeOn, patch } from '../surface.ts';
import { bottle, clip, drop, openWindow, pin, sprayCan } from '../tools/index.ts';
import { measured, note } from '../wording.ts';

/** The strip on its chalk line, and what holds it there until it is stitched. */
export const holdRibbon: Draw = (scene) => ways[scene.plan.request.ribbons.hold](scene);

const SIDE = 15;
const LOWER = 31;
const UPPER = 19;

/** Half of what lies past each side of the panel, as far as it can be drawn. */
const overhangOf = ({ plan }: Scene): number => within(0, plan.ribbons.overhang.value * 0.6, 11);

/** The side of an open panel with its line, and the extra beyond it. */
function ground(scene: Scene, bottom: number): Mark[] {
  return [
    ...patch('right', { left: SIDE, top: 6, right: 83, bottom, torn: ['top', 'right', 'bottom'] }),
    stroke(lineTo([SIDE, LOWER], [83, LOWER]), { ...chalkLine, width: mm(0.5) }),
  ];
}

function extra(scene: Scene): Mark[] {
  const over = overhangOf(scene);
  if (over < 0.5) return [];
  const { speaker, plan } = scene;
  return [
    measured(point(SIDE - over, UPPER), point(SIDE, UPPER), '', -4),
    ...note(point(SIDE - 0.9, UPPER - 7), speaker.value(plan.ribbons.overhang), { align: 'end', bold: true }),
  ];
}

const pins: Draw = (scene) => {
  const over = overhangOf(scene);
  const marks: Mark[] = [
    ...ground(scene, 41),
    band(scene, 0, SIDE - over, UPPER, 83, LOWER),
    stroke(lineTo([SIDE, UPPER], [SIDE, LOWER]), { dash: 'hidden', width: mm(0.35), stroke: inks.paper }),
    ...extra(scene),
    clip({ x: SIDE + 2, y: (UPPER + LOWER) / 2 }),
    ...[34, 52, 70].map((x) => pin({ x, y: UPPER - 5, turn: 90 }, 21, [2.6, 2.6 + 0.001])),
    ...[34, 52, 70].flatMap((x) => entries(x)),
    ...good(80, 36),
    ...wrongPin(scene),
  ];
  return { height: 62, marks };
};

/** Where the pin dips into the cloth: beyond both edges of the ribbon. */
const entries = (x: number): Mark[] =>
  [UPPER - 1.6, LOWER + 1.6].map((y) =>
    circle(point(x, y), mm(0.6), { fill: inks.ink, stroke: inks.paper, width: mm(0.3) }),
  );

const wrongPin = (scene: Scene): Mark[] => [
  ...patch('right', { left: 30, top: 45, right: 60, bottom: 60, torn: ['left', 'right', 'top', 'bottom'] }),
  band(scene, 0, 30, 48, 60, 57),
  pin({ x: 38, y: 52.5 }, 13, [3.6, 9]),
  ...bad(67, 52.5),
];

const glue: Draw = (scene) => {
  const over = overhangOf(scene);
  const middle = (UPPER + LOWER) / 2;
  const marks: Mark[] = [
    ...ground(scene, 44),
    ...[58, 65, 72].map((x) => circle(point(x, middle), mm(1.1), { fill: inks.paper, width: mm(0.4) })),
    band(scene, 0, SIDE - over, UPPER, 47, LOWER),
    ...[22, 29, 36, 43].map((x) =>
      circle(point(x, middle), mm(1.1), { dash: 'hidden', fill: inks.paper, width: mm(0.35) }),
    ),
    ...roll(scene, 47),
    ...extra(scene),
    bottle({ x: 76.5, y: middle - 3, turn: 12 }),
    drop({ x: 76.2, y: middle - 2.2, scale: 0.8 }),
    ...movement(lineTo([24, 38], [46, 38])),
  ];
  return { height: 47, marks };
};

/** What is still to be laid, rolled up at the end of what lies. */
const roll = (scene: Scene, x: number): Mark[] => [
  band(scene, 0, x - 1, UPPER - 1, x + 5.5, LOWER + 1),
  stroke(
    [lineTo([x + 1, UPPER - 1], [x + 1, LOWER + 1]), lineTo([x + 3.2, UPPER - 1], [x + 3.2, LOWER + 1])],
    {
      width: mm(0.9),
      stroke: inks.paper,
    },
  ),
  stroke(
    [lineTo([x + 1, UPPER - 1], [x + 1, LOWER + 1]), lineTo([x + 3.2, UPPER - 1], [x + 3.2, LOWER + 1])],
    {
      width: mm(0.35),
    },
  ),
];

const spray: Draw = (scene) => {
  const { speaker } = scene;
  const distance = spoken(scene, 'distance');
  const mist = [-7, -3.5, 0, 3.5, 7].map((dx) => lineTo([57, 14], [38 + dx, 42]));
  const look = ribbonLook(scene, 0);
  const marks: Mark[] = [
    openWindow({ x: 17, y: 3 }),
    ...edgeOn(lineTo([6, 46], [80, 46]), inks.paper),
    stroke(lineTo([6, 46.6], [6, 55]), { width: mm(0.35) }),
    stroke(lineTo([80, 46.6], [80, 55]), { width: mm(0.35) }),
    stroke([lineTo([14, 47], [14, 58]), lineTo([72, 47], [72, 58])], { width: mm(0.5), stroke: inks.grey }),
    stroke(lineTo([14, 44.4], [56, 44.4]), { width: mm(1.9) }),
    stroke(lineTo([14.4, 44.4], [55.6, 44.4]), { width: mm(1.2), stroke: look.fill ?? inks.paper }),
    stroke(mist, { dash: 'hidden', width: mm(0.4) }),
    sprayCan({ x: 58, y: 12, turn: -35 }),
    ...(distance ? [measured(point(58, 12), point(38, 43), speaker.value(distance), 10)] : []),
  ];
  return { height: 61, marks };
};

const ways: Readonly<Record<Hold, Draw>> = { pins, glue, spray };
