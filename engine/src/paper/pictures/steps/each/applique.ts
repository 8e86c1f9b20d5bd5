import { mirrorX, point, translate, type Path } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches, zigzag } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { band } from '../ribbons.ts';
import { movement, turn } from '../signs.ts';
import { patch } from '../surface.ts';

/** Any motif whose left differs from its right; it stands for the maker's own. */
const motif: Path = curve(
  [
    point(-9, 9),
    point(-8, 0),
    point(-3, -8),
    point(6, -11),
    point(9, -7),
    point(7, -1),
    point(10, 3),
    point(6, 8),
    point(-1, 7),
    point(-5, 11),
  ],
  true,
);

/** Drawn mirrored on the web's paper, fused, and stitched round on the panel while that lies flat. */
export const applique: Draw = (scene) => {
  const mirrored = translate(mirrorX(motif), 17, 24);
  const placed = translate(motif, 62, 25);
  const hasRows = scene.plan.ribbons.rows.length > 0;
  const marks: Mark[] = [
    ...turn(6, 6, '1'),
    area(lineTo([5, 11], [30, 11], [30, 38], [5, 38], [5, 11]), { fill: inks.paper, width: mm(0.4) }),
    stroke(curve([point(30, 33), point(26.6, 34), point(25.6, 38)]), { width: mm(0.3) }),
    area(mirrored, { dash: 'chalk', width: mm(0.4) }),
    ...movement(lineTo([32, 25], [38, 25])),
    ...turn(42, 6, '2'),
    ...patch('right', { left: 41, top: 11, right: 84, bottom: 52, torn: ['left', 'top', 'right'] }),
    ...(hasRows
      ? [band(scene, 0, 41, 43, 84, 48), band(scene, 1, 41, 32, 84, 37)].flatMap((each, i) => [
          each,
          ...stitches(lineTo([41, 47.2 - i * 11], [84, 47.2 - i * 11]), true),
          ...stitches(lineTo([41, 43.8 - i * 11], [84, 43.8 - i * 11]), true),
        ])
      : []),
    area(placed, { fill: inks.paper, width: mm(0.4) }),
    zigzag(placed, 1.7, 0.75, { width: mm(0.3) }),
  ];
  return { height: 55, marks };
};
