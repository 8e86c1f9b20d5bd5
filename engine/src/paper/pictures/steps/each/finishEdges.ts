import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { lineTo, overEdge, stitches, zigzag } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { movement } from '../signs.ts';
import { edgeOn, patch } from '../surface.ts';
import { note } from '../wording.ts';

const EDGE = 28;
const SEAM = 17;

/** Both edges of a seam overlocked or zigzagged together, then pressed to the back. */
export const finishEdges: Draw = (scene) => {
  const { words } = scene.speaker;
  const edge = lineTo([82, EDGE], [4, EDGE]);
  const finished = scene.plan.request.sewing.overlocker
    ? overEdge(edge, 5)
    : [zigzag(lineTo([4, EDGE - 1.9], [82, EDGE - 1.9]), 5, 2.2, { width: mm(0.4) })];
  const y = 44;
  const seam = 43;
  const marks: Mark[] = [
    ...patch('right', { left: 5, top: 7, right: 83.4, bottom: EDGE, torn: ['left', 'right', 'top'] }),
    ...patch('wrong', { left: 4, top: 6, right: 82, bottom: EDGE, torn: ['left', 'right', 'top'] }),
    ...stitches(lineTo([4, SEAM], [82, SEAM])),
    ...finished,
    ...edgeOn(lineTo([8, y], [seam, y], [seam + 1.6, y + 5.4], [seam + 15, y + 5.4])),
    ...edgeOn(
      lineTo([78, y], [seam + 2, y], [seam + 1.2, y + 1.6], [seam + 2.4, y + 2.7], [seam + 15, y + 2.7]),
    ),
    stroke(lineTo([seam + 0.4, y - 1.8], [seam + 0.4, y + 3.6]), { width: mm(0.5) }),
    dot(point(seam + 0.4, y - 1.8), mm(0.5)),
    stroke(
      [
        lineTo(
          [seam + 14, y + 1.6],
          [seam + 16.4, y + 3],
          [seam + 14, y + 4.2],
          [seam + 16.4, y + 5.6],
          [seam + 14, y + 6.6],
        ),
      ],
      { width: mm(0.3) },
    ),
    ...movement(lineTo([seam + 4, y + 11], [seam + 15, y + 11])),
    ...note(point(18, y + 6), words.panels.front, { ink: inks.grey }),
    ...note(point(72, y + 6), words.panels.back, { ink: inks.grey }),
  ];
  return { height: 58, marks };
};
