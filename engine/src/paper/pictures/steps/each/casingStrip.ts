import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { throughAll } from '../section.ts';
import { turn } from '../signs.ts';
import { edgeOn, frayed, patch } from '../surface.ts';
import { firstPanel, toned } from '../tone.ts';
import { foldedOver, groove, ringSeen } from '../waistParts.ts';
import { measured } from '../wording.ts';

/** The strip a ring, inside out; sewn on right sides together; folded over the seam; stitched with a gap left. */
export const casingStrip: Draw = (scene) => ({
  height: 65,
  marks: [...ring(), ...sewnOn(scene), ...folded(scene), ...inside(scene)],
});

/** Its join lies in front, the allowances pressed open. */
const ring = (): Mark[] => [
  ...turn(6, 6, '1'),
  ...ringSeen(23, 13, 17, 10),
  stroke(lineTo([23, 15.7], [23, 25.7]), { width: mm(0.45) }),
  stroke([lineTo([20.4, 15.7], [20.4, 25.6]), lineTo([25.6, 15.7], [25.6, 25.6])], thinLine),
];

/** Cut through: the strip on the right side of the skirt, raw edges level. */
function sewnOn(scene: Scene): Mark[] {
  const seam = spoken(scene, 'seam');
  const inset = within(4, (seam?.value ?? 10) * 0.6, 9);
  const [x, top] = [60, 6];
  return [
    ...turn(48, 6, '2'),
    ...toned(scene, firstPanel(scene), edgeOn(lineTo([x, 30], [x, top]))),
    ...edgeOn(lineTo([x - 2.4, top], [x - 2.4, 25])),
    frayed(x - 2.4, 25.4, -1),
    ...throughAll(x - 2.4, x, top + inset),
    ...(seam ? [measured(point(x + 3, top), point(x + 3, top + inset), scene.speaker.value(seam), -3)] : []),
  ];
}

/** Cut through: the seam pressed up into the strip, its other edge turned under, the room for the elastic within. */
function folded(scene: Scene): Mark[] {
  const height = spoken(scene, 'height');
  const of = { x: 16, fold: 40, seam: 54, end: 64, allowance: 5 };
  const { from, to, y } = groove(of);
  const { elastic } = scene.plan.skirt.waist;
  return [
    ...turn(6, 35, '3'),
    ...foldedOver(scene, 'casing strip', of),
    ...throughAll(from, to, y),
    ...(elastic
      ? [rectangle(15, 37.4, 1.7, 10.4, { dash: 'hidden', fill: inks.paper, width: mm(0.4) })]
      : []),
    ...(height ? [measured(point(23, 35.6), point(23, 53.6), scene.speaker.value(height), -3)] : []),
  ];
}

/** The skirt inside out: the strip's folded edge covers the seam; a gap is left beside a seam of the skirt. */
function inside(scene: Scene): Mark[] {
  const [left, right, top, edge] = [44, 83, 36, 50];
  const seam = 54;
  const [from, to] = [seam - 2, seam + 16];
  const y = edge - 1.7;
  const opening = spoken(scene, 'opening');
  return [
    ...turn(40, 35, '4'),
    ...patch('wrong', { left, top: edge - 2, right, bottom: 63.5, torn: ['left', 'right', 'bottom'] }),
    stroke(lineTo([seam, edge], [seam, 63.2]), { width: mm(0.4) }),
    stroke(lineTo([seam + 3, edge], [seam + 3, 63.2]), thinLine),
    ...patch('right', { left, top, right, bottom: edge, torn: ['left', 'right'] }),
    ...stitches(lineTo([left, y], [from, y])),
    ...stitches(lineTo([to, y], [right, y])),
    stroke([lineTo([from, y - 1], [from, y + 1]), lineTo([to, y - 1], [to, y + 1])], { width: mm(0.7) }),
    ...(opening ? [measured(point(from, edge), point(to, edge), scene.speaker.value(opening), 4)] : []),
  ];
}
