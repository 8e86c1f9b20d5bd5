import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { throughAll } from '../section.ts';
import { turn } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { firstPanel, toned } from '../tone.ts';
import { pin } from '../tools/index.ts';
import { block, foldedOver, gathers, groove, says } from '../waistParts.ts';
import { measured } from '../wording.ts';
import { stretchBand } from './stretchBand.ts';

/** Pinned and sewn to the top right sides together, its ends closed, folded over the seam and caught there. */
export const band: Draw = (scene) =>
  scene.plan.skirt.waist.build === 'stretch band'
    ? stretchBand(scene)
    : {
        height: 65,
        marks: [...pinned(scene), ...(says(scene, 'band.ends') ? ends(scene) : []), ...folded(scene)],
      };

const TOP = 8;
const LOW = 22;
const END = 12;
const SIDE = 50;
const RIGHT = 77;

/** The top right side up, the band on it wrong side up, raw edges level; what will lie over stands free of the edge. */
function pinned(scene: Scene): Mark[] {
  const { waist } = scene.plan.skirt;
  const { speaker } = scene;
  const seam = spoken(scene, 'seam');
  const overlap = spoken(scene, 'overlap');
  const inFront = waist.elastic?.where === 'back';
  const sewn = TOP + within(4, (seam?.value ?? 10) * 0.5, 6);
  const edge = overlap ? 26 : END;
  const [from, to] = inFront ? [6, SIDE] : [edge, RIGHT];
  const drawn = waist.takenUp?.by === 'gathers';
  const pins = inFront ? [18, 36, 66] : [from + 5, (from + to) / 2, to - 8];
  return [
    ...turn(3.4, 4, '1'),
    ...toned(
      scene,
      firstPanel(scene),
      patch('right', {
        left: from,
        top: TOP,
        right: RIGHT,
        bottom: 35,
        torn: inFront ? ['left', 'right', 'bottom'] : ['right', 'bottom'],
      }),
    ),
    ...(drawn ? [gathers(from + 2, to - 2, LOW, 9)] : []),
    ...patch('wrong', {
      left: inFront ? 6 : END,
      top: TOP,
      right: RIGHT,
      bottom: LOW,
      torn: inFront ? ['left', 'right'] : ['right'],
    }),
    ...(inFront ? sideSeam() : []),
    ...stitches(lineTo([from, sewn], [RIGHT, sewn])),
    ...pins.map((x) => pin({ x, y: TOP - 4, turn: 90 }, 12, [5, 9])),
    ...(seam ? [measured(point(RIGHT, TOP), point(RIGHT, sewn), speaker.value(seam), -2.6)] : []),
    ...(overlap ? [measured(point(END, LOW), point(edge, LOW), speaker.value(overlap), 3.4)] : []),
  ];
}

/** Side seam to side seam: the skirt's goes on below the band's, whose allowances are open. */
const sideSeam = (): Mark[] => [
  stroke(lineTo([SIDE, TOP], [SIDE, 35]), { width: mm(0.45) }),
  stroke(
    [lineTo([SIDE - 2.6, TOP], [SIDE - 2.6, LOW]), lineTo([SIDE + 2.6, TOP], [SIDE + 2.6, LOW])],
    thinLine,
  ),
];

/** An end of the band folded right sides together, sewn across, its corner off; a tie lies within where there is one. */
function ends(scene: Scene): Mark[] {
  const [left, right, fold, seam] = [12, 35, 42, 55];
  const tie = says(scene, 'band.ties');
  return [
    ...turn(4, 42, '2'),
    ...patch('right', { left: left + 6, top: seam - 1, right, bottom: 63.5, torn: ['right', 'bottom'] }),
    ...(tie ? toned(scene, 'tie', cloth('right', block(left - 1.6, 46, left + 2, 53))) : []),
    ...patch('wrong', { left, top: fold, right, bottom: seam, torn: ['right'] }),
    stroke(lineTo([left, fold], [right, fold]), { width: mm(0.9) }),
    ...(tie
      ? [
          stroke([lineTo([left, 46], [right - 0.6, 46]), lineTo([left, 53], [right - 0.6, 53])], {
            dash: 'hidden',
            width: mm(0.45),
          }),
        ]
      : []),
    ...stitches(lineTo([left + 3.4, fold + 0.4], [left + 3.4, seam - 0.4])),
    stroke(lineTo([left - 0.6, fold + 3], [left + 3, fold - 0.8]), { width: mm(0.6) }),
  ];
}

/** Cut through: the seam pressed up into the band, the pressed edge just covering it, stitched in the groove. */
function folded(scene: Scene): Mark[] {
  const height = spoken(scene, 'height');
  const of = { x: 58, fold: 45, seam: 56, end: 64.5, allowance: 5 };
  const { from, to, y } = groove(of);
  return [
    ...turn(42, 42, says(scene, 'band.ends') ? '3' : '2'),
    ...foldedOver(scene, 'waistband', of),
    ...throughAll(from, to, y),
    ...(height ? [measured(point(67, 40.6), point(67, 56), scene.speaker.value(height), -3)] : []),
  ];
}
