import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import type { Draw, Scene } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { firstPanel, toned } from '../tone.ts';
import { shears } from '../tools/index.ts';
import { block, says } from '../waistParts.ts';

/** Folded right sides together and sewn along the long edge and one end; turned and pressed; its raw end is what is sewn on. */
export const ties: Draw = (scene) => ({ height: 62, marks: [...sewn(), ...turned(), ...sewnOn(scene)] });

/** Wrong side out: the fold above, the long edge and one end sewn, the corner trimmed, the other end open. */
const sewn = (): Mark[] => [
  ...turn(4, 6, '1'),
  ...cloth('right', block(9, 6, 79, 18), { width: mm(0.3) }),
  ...cloth('wrong', block(10, 5, 79, 17)),
  stroke(lineTo([10, 5], [79, 5]), { width: mm(0.9) }),
  ...stitches(lineTo([10, 13.6], [75.6, 13.6], [75.6, 5.6])),
  stroke(lineTo([75.4, 19], [81, 13.4]), { width: mm(0.6) }),
  shears({ x: 76, y: 18.4, turn: -45, scale: 0.6 }),
];

/** Half turned: the finished end comes out of the tube. */
const turned = (): Mark[] => [
  ...turn(4, 28, '2'),
  ...cloth('wrong', block(10, 26, 32, 36)),
  ...cloth('right', block(31, 27, 60, 35)),
  stroke(curve([point(32, 26), point(33.4, 28), point(33.4, 34), point(32, 36)]), { width: mm(0.6) }),
  ...movement(lineTo([63, 31], [74, 31])),
];

/** Into the end of a band it goes when that is made; without one, it is sewn to the skirt's top corner. */
function sewnOn(scene: Scene): Mark[] {
  const corner = says(scene, 'ties.corner');
  const edge = 44;
  return [
    ...turn(4, 46, '3'),
    ...(corner ? [] : cloth('right', block(10, 46, edge + 2, 52), { width: mm(0.4) })),
    ...toned(
      scene,
      firstPanel(scene),
      patch('right', { left: edge, top: 44, right: 80, bottom: 60.5, torn: ['right', 'bottom'] }),
    ),
    ...(corner
      ? [
          ...cloth('right', block(10, 46, edge + 8, 52)),
          ...stitches(
            lineTo(
              [edge + 1.4, 46.8],
              [edge + 7, 46.8],
              [edge + 7, 51.2],
              [edge + 1.4, 51.2],
              [edge + 1.4, 46.8],
            ),
          ),
        ]
      : [
          ...toned(
            scene,
            'waistband',
            patch('right', { left: edge, top: 44, right: 80, bottom: 54, torn: ['right'] }),
          ),
          stroke(lineTo([edge + 10, 46], [edge + 10, 52], [edge, 52]), { dash: 'hidden', width: mm(0.45) }),
          stroke(lineTo([edge, 46], [edge + 10, 46]), { dash: 'hidden', width: mm(0.45) }),
          ...stitches(lineTo([edge + 1.2, 44.4], [edge + 1.2, 53.6])),
        ]),
  ];
}
