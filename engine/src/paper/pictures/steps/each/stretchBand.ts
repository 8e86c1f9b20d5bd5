import { arc, line, point, type Path } from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine } from '../../cloth.ts';
import { lineTo, wavy, zigzag } from '../lines.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { edgeOn, frayed, patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { firstPanel, toned } from '../tone.ts';
import { gathers, ringSeen, says } from '../waistParts.ts';
import { measured } from '../wording.ts';

/** A ring doubled along its middle; pinned at the quarters, stretched between them, and sewn with a zigzag. */
export const stretchBand: Draw = (scene) => ({
  height: 65,
  marks: [...ring(), ...doubled(scene), ...stretched(scene)],
});

const ring = (): Mark[] => [
  ...turn(4, 6, '1'),
  ...ringSeen(24, 9, 15, 14),
  stroke(lineTo([24, 11.4], [24, 25.4]), { width: mm(0.45) }),
  stroke([lineTo([22, 11.4], [22, 25.3]), lineTo([26, 11.4], [26, 25.3])], { width: mm(0.2) }),
];

/** Cut through: doubled, wrong sides together, its two raw edges as one. */
function doubled(scene: Scene): Mark[] {
  const height = spoken(scene, 'height');
  const [x, top, bottom] = [62, 9, 26];
  const path: Path = [
    line(point(x, bottom), point(x, top)),
    arc(point(x + 1.2, top), mm(1.2), radians(Math.PI), radians(Math.PI)),
    line(point(x + 2.4, top), point(x + 2.4, bottom)),
  ];
  return [
    ...turn(50, 6, '2'),
    ...edgeOn(path),
    frayed(x - 0.2, bottom + 0.3, -1),
    frayed(x + 2.6, bottom + 0.3, 1),
    ...(height
      ? [measured(point(x + 4, top - 1.4), point(x + 4, bottom - 4), scene.speaker.value(height), -3)]
      : []),
  ];
}

/** The band on top, stretched flat from pin to pin on the left; on the right it is still as short as it lies. */
function stretched(scene: Scene): Mark[] {
  const seam = spoken(scene, 'seam');
  const [left, right, top, low] = [8, 76, 39, 51];
  const quarters = [14, 46, 72];
  const drawn = says(scene, 'band.drawStretched');
  const loose = wavy(lineTo([46, top + 0.4], [72, top + 0.4]), 0.9, 5);
  return [
    ...turn(4, 34, '3'),
    ...toned(
      scene,
      firstPanel(scene),
      patch('right', { left, top, right, bottom: 62, torn: ['left', 'right', 'bottom'] }),
    ),
    gathers(drawn ? left + 2 : 48, drawn ? right - 2 : 70, low, 7),
    ...patch('right', { left, top, right, bottom: low, torn: ['left', 'right'] }),
    stroke(lineTo([left, low], [right, low]), { width: mm(0.9) }),
    stroke(loose, { width: mm(0.35) }),
    stroke(
      quarters.map((x) => lineTo([x, top], [x, low])),
      { ...chalkLine, width: mm(0.5) },
    ),
    zigzag(lineTo([left, top + 3.4], [38, top + 3.4]), 1.6, 0.9),
    ...quarters.map((x) => pin({ x, y: top - 4, turn: 90 }, 12, [5, 9])),
    ...movement(lineTo([27, 34], [16, 34])),
    ...movement(lineTo([33, 34], [44, 34])),
    ...(seam ? [measured(point(right, top), point(right, top + 3.4), scene.speaker.value(seam), -2.6)] : []),
  ];
}
