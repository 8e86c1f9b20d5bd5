import { point, polyline } from '../../../../geometry/index.ts';
import { area, inks, type Mark } from '../../../drawing/index.ts';
import { mm } from '../../../../units/index.ts';
import { curve, lineTo } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { band, ribbonLook } from '../ribbons.ts';
import { bad, good, movement } from '../signs.ts';
import { patch } from '../surface.ts';
import { basin, drop, rag } from '../tools/index.ts';

/** A wet white rag is dabbed on cloth and ribbon; what it takes up tells which is washed by itself. */
export const colourTest: Draw = (scene) => {
  const hasRows = scene.plan.ribbons.rows.length > 0;
  const stain = area(
    curve(
      [point(63, 33.4), point(67, 32.4), point(70, 34.2), point(69.6, 37), point(66, 38), point(62.4, 36.6)],
      true,
    ),
    { ...(hasRows ? ribbonLook(scene, 0) : { fill: inks.wash, pattern: 'dots' as const }), width: mm(0.2) },
  );
  const marks: Mark[] = [
    ...patch('right', { left: 3, top: 10, right: 42, bottom: 46, torn: ['left', 'bottom'] }),
    ...(hasRows ? [band(scene, 0, 3, 17, 42, 24), band(scene, 1, 3, 32, 42, 39)] : []),
    rag({ x: 22, y: 20.5, scale: 1.15 }),
    ...movement(lineTo([22, 3], [22, 11])),
    drop({ x: 17.5, y: 3.4, scale: 1.1 }),
    drop({ x: 26.5, y: 3.4, scale: 1.1 }),
    ...movement(polyline([point(46, 28), point(53, 20)])),
    ...movement(polyline([point(46, 28), point(53, 35)])),
    rag({ x: 65, y: 13 }),
    ...good(79.5, 13),
    rag({ x: 65, y: 36 }),
    stain,
    ...bad(79.5, 36),
    basin({ x: 69.5, y: 47 }, 20),
  ];
  return { height: 58, marks };
};
