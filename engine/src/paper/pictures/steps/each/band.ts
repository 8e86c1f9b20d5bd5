import { line, point, type Path } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { throughAll } from '../section.ts';
import { movement, turn } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { block, foldedOver, gathers, groove, says } from '../waistParts.ts';
import { measured } from '../wording.ts';
import { stretchBand } from './stretchBand.ts';

/** Pinned and sewn to the top right sides together, its ends closed, folded over the seam and caught there. */
export const band: Draw = (scene) =>
  scene.plan.skirt.waist.build === 'stretch band'
    ? stretchBand(scene)
    : { height: 65, marks: [...pinned(scene), ...ends(scene), ...folded(scene)] };

const TOP = 7;
const END = 14;

/** The top, right side up, the band on it wrong side up, raw edges level; the free end as long as what lies over. */
function pinned(scene: Scene): Mark[] {
  const { waist } = scene.plan.skirt;
  const seam = spoken(scene, 'seam');
  const overlap = spoken(scene, 'overlap');
  const inFront = waist.elastic?.where === 'back';
  const inset = within(3.4, (seam?.value ?? 10) * 0.45, 6);
  const sewn = TOP + inset;
  const [edge, right] = [overlap ? 26 : END, 80];
  const side = 52;
  const drawn = waist.takenUp?.by === 'gathers';
  const from = inFront ? 6 : edge;
  const to = inFront ? side : right;
  return [
    ...turn(3.4, 3.4, '1', 2.4),
    ...patch('right', {
      left: from,
      top: TOP,
      right,
      bottom: 36,
      torn: inFront ? ['left', 'right', 'bottom'] : ['right', 'bottom'],
    }),
    ...cloth('wrong', block(inFront ? 6 : END, TOP, right, TOP + 17)),
    ...(drawn ? [gathers(from + 2, to - 2, TOP + 17, 9), gathers(from + 2, to - 2, TOP, 2.2)] : []),
    ...(inFront ? sideOf(side) : []),
    ...stitches(lineTo([from, sewn], [right, sewn])),
    ...(inFront ? [16, 34, 66] : [from + 5, from + (right - from) * 0.5, right - 6]).map((x) =>
      pin({ x, y: TOP - 3, turn: 90 }, 10, [3, 7.6]),
    ),
    ...(seam ? [measured(point(right + 1, TOP), point(right + 1, sewn), '', 0)] : []),
    ...(seam ? [measuredSeam(scene, right, sewn)] : []),
    ...(overlap ? [measured(point(END, TOP + 17), point(edge, TOP + 17), scene.speaker.value(overlap), 3)] : []),
  ];
}

const measuredSeam = (scene: Scene, right: number, sewn: number): Mark => {
  const seam = spoken(scene, 'seam');
  return measured(point(right - 14, sewn), point(right - 14, TOP), seam ? scene.speaker.value(seam) : '', 0);
};

/** The side seam of skirt and band, one below the other. */
const sideOf = (x: number): Mark[] => [
  stroke([lineTo([x, TOP], [x, 36])], { width: mm(0.45) }),
  stroke([lineTo([x - 2.4, TOP], [x - 2.4, TOP + 17]), lineTo([x + 2.4, TOP], [x + 2.4, TOP + 17])], thinLine),
];
