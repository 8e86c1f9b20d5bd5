import { clothsAmong } from '../../../../cloth/index.ts';
import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches, zigzag } from '../lines.ts';
import type { Draw, Picture, Scene } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { firstPanel, toned, topPiece } from '../tone.ts';
import { gathers as drawnUp, says } from '../waistParts.ts';

/** Gathers spread evenly, the lap zigzagged, the opening closed, and the elastic caught at each side seam. */
export const closeElastic: Draw = (scene) =>
  says(scene, 'closeElastic.sides') ? behind(scene) : round(scene);

function round(scene: Scene): Picture {
  const [left, right, top] = [6, 80, 27];
  const gathers = Array.from({ length: 17 }, (_, i) => {
    const x = left + 5 + i * 4;
    const long = i % 3 === 0 ? 15 : i % 3 === 1 ? 8 : 11;
    return curve([point(x, top + 9.4), point(x + 0.5, top + 9 + long / 2), point(x - 0.2, top + 9 + long)]);
  });
  const seams = says(scene, 'closeElastic.catch') ? [left + 4, right - 4] : [];
  const marks: Mark[] = [
    ...turn(6, 6, '2'),
    rectangle(12, 6, 30, 8, { fill: inks.paper, width: mm(0.4) }),
    rectangle(30, 7.4, 30, 8, { fill: inks.paper, width: mm(0.4) }),
    ...[31.8, 34.6, 37.4, 40.2].map((x) => zigzag(lineTo([x, 7.6], [x, 15.2]), 1.7, 0.9, { width: mm(0.3) })),
    ...toned(scene, firstPanel(scene), patch('right', { left, top, right, bottom: 56, torn: ['bottom'] })),
    ...strip(scene, left, top, right, top + 8.6),
    stroke(gathers, { width: mm(0.25) }),
    ...stitches(lineTo([left, top + 8.6], [right, top + 8.6])),
    ...turn(43, top - 4.4, '1'),
    ...movement(lineTo([39, top - 4.4], [24, top - 4.4])),
    ...movement(lineTo([47, top - 4.4], [62, top - 4.4])),
    stroke(lineTo([left, top + 4], [right, top + 4]), { dash: 'hidden', width: mm(0.3), stroke: inks.grey }),
    ...seams.flatMap((x, i) => [
      stroke(lineTo([x, top], [x, 56]), { width: mm(0.4), stroke: inks.grey }),
      ...stitches(lineTo([x + (i === 0 ? 1.1 : -1.1), top], [x + (i === 0 ? 1.1 : -1.1), top + 9]), true),
      ...turn(x, top - 4.4, '4'),
    ]),
    ...turn(22, 50.5, '3'),
    ...movement(lineTo([22, 47.6], [22, top + 10])),
    stroke(lineTo([15, top + 7.5], [15, top + 9.7]), { width: mm(0.7) }),
    stroke(lineTo([29, top + 7.5], [29, top + 9.7]), { width: mm(0.7) }),
  ];
  return { height: 60, marks };
}

/** The skirt from behind, front on both sides: the back drawn up, stitched down in both side seams. */
function behind(scene: Scene): Picture {
  const [left, right, top, low] = [4, 82, 18, 30];
  const sides = [20, 66] as const;
  const marks: Mark[] = [
    ...toned(
      scene,
      firstPanel(scene),
      patch('right', { left, top, right, bottom: 55, torn: ['left', 'right', 'bottom'] }),
    ),
    ...strip(scene, left, top, right, low),
    drawnUp(sides[0] + 2, sides[1] - 2, low, 14),
    drawnUp(sides[0] + 2, sides[1] - 2, top + 1, 4),
    stroke([lineTo([left, top], [right, top]), lineTo([left, low], [right, low])], { width: mm(0.45) }),
    stroke(
      [
        lineTo([sides[0], top + 4], [sides[1], top + 4]),
        lineTo([sides[0], low - 2.6], [sides[1], low - 2.6]),
      ],
      { dash: 'hidden', width: mm(0.4) },
    ),
    ...sides.flatMap((x) => [
      stroke(lineTo([x, top], [x, 55]), { width: mm(0.4), stroke: inks.grey }),
      ...stitches(lineTo([x, top + 0.6], [x, low - 0.4]), true),
      ...turn(x, top - 5, '2'),
    ]),
    ...turn(43, top - 5, '1'),
    ...movement(lineTo([39, top - 5], [28, top - 5])),
    ...movement(lineTo([47, top - 5], [58, top - 5])),
  ];
  return { height: 59, marks };
}

/** The waist's own piece, where it is of another cloth than the panels below it. */
const strip = (scene: Scene, left: number, top: number, right: number, bottom: number): Mark[] =>
  clothsAmong(scene.plan.cloths, [topPiece(scene), firstPanel(scene)]).length === 1
    ? []
    : patch('right', { left, top, right, bottom, torn: ['left', 'right'] });
