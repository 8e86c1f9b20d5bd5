import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { curve, lineTo } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { ribbonLook } from '../ribbons.ts';
import { edgeOn, patch } from '../surface.ts';
import { ironAbove, ironBeside } from '../tools/index.ts';
import { note } from '../wording.ts';

/** From the wrong side, a cloth between: above as the eye sees it, below layer by layer. */
export const pressRows: Draw = (scene) => {
  const { words } = scene.speaker;
  const beneath = [12, 21.5].map((y) =>
    stroke([lineTo([4, y], [82, y]), lineTo([4, y + 5], [82, y + 5])], { dash: 'hidden', width: mm(0.35) }),
  );
  const pressCloth = area(
    curve(
      [
        point(18, 8),
        point(40, 7),
        point(66, 8),
        point(67, 18),
        point(66, 28),
        point(42, 29),
        point(17, 28),
        point(17, 18),
      ],
      true,
    ),
    { fill: inks.paper, width: mm(0.4) },
  );
  const y = 50;
  const marks: Mark[] = [
    ...patch('wrong', { left: 4, top: 4, right: 82, bottom: 31, torn: ['left', 'right', 'top', 'bottom'] }),
    ...beneath,
    pressCloth,
    ironAbove({ x: 42, y: 18 }),
    stroke(lineTo([4, y + 8], [82, y + 8]), { width: mm(1.6), stroke: inks.grey }),
    ...[18, 46].map((x) => rectangle(x, y + 3.6, 14, 2.4, ribbonLook(scene, 0))),
    ...edgeOn(lineTo([6, y + 2.4], [80, y + 2.4])),
    ...edgeOn(polyline([...[10, 24, 38, 52, 66].map((x) => point(x, y - 1))]), inks.paper),
    ironBeside({ x: 38, y: y - 2.4 }),
    stroke(lineTo([64, y + 4.8], [61, y + 4.8]), thinLine),
    ...note(point(65, y + 5.2), words.papers.ribbon, { align: 'start', room: 18 }),
  ];
  return { height: 62, marks };
};
