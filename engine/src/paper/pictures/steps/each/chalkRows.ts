import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, thinLine } from '../../cloth.ts';
import { lineTo } from '../lines.ts';
import { chalkLines, dots, flatRows, openPanel, rowDots } from '../panel.ts';
import type { Draw, Scene } from '../picture.ts';
import { band } from '../ribbons.ts';
import { patch } from '../surface.ts';
import { ruler } from '../tools/index.ts';
import { measured, note } from '../wording.ts';

/** The opened panel, right side up, with its dots and lines; beside it the ruler stands on the raw edge. */
export const chalkRows: Draw = (scene) => {
  const { papers } = scene.speaker.words;
  const { rows, shape } = flatRows(scene);
  const room = { left: 3, top: 4, width: 43, height: 50 };
  const { fitted, marks: panel } = openPanel(scene, 'right', room, shape);
  const { left, top, width, height } = fitted.box;
  const middle = left + width / 2;
  const bottom = top + height;
  const marks: Mark[] = [
    ...panel,
    ...chalkLines(rows, fitted),
    ...rows.flatMap(({ lower }) => dots(rowDots(lower), fitted)),
    ...note(point(middle, top + height * 0.26), papers.rightSideUp, { halo: inks.wash, room: width - 6 }),
    ...note(point(middle, bottom + 4), papers.rawEdge, { ink: inks.grey }),
    rectangle(middle - 5, bottom - 14, 10, 15, { width: mm(0.3), stroke: inks.grey }),
    stroke(lineTo([middle + 5, bottom - 7], [52.4, 40]), thinLine),
    ...detail(scene),
  ];
  return { height: Math.max(62, bottom + 8), marks };
};

const EDGE = 56;
const TOP = 6;

/** The lowest two rows close by: each measured from the raw edge, each line the lower edge of its ribbon. */
function detail(scene: Scene): Mark[] {
  const [first, second] = flatRows(scene).rows;
  if (!first) return [];
  const highest = (second ?? first).fromRawEdge.value + (second ?? first).width.value;
  const scale = Math.min((EDGE - TOP - 5) / highest, 0.4);
  const lines = [first, ...(second ? [second] : [])].map((row) => ({
    row,
    y: EDGE - row.fromRawEdge.value * scale,
    up: row.width.value * scale,
  }));
  return [
    ...patch('right', { left: 54, top: TOP, right: 84, bottom: EDGE, torn: ['left', 'top', 'right'] }),
    ruler(EDGE - TOP - 3, { x: 57, y: EDGE, turn: -90 }),
    ...lines.flatMap(({ row, y, up }, i): Mark[] => [
      band(scene, i, 73, y - up, 84, y),
      stroke(lineTo([54.6, y], [84, y]), { ...chalkLine, width: mm(0.5) }),
      dot(point(61.4, y), mm(0.7)),
      measured(
        point(63.5 + i * 5.2, EDGE),
        point(63.5 + i * 5.2, y),
        scene.speaker.value(row.fromRawEdge),
        0,
      ),
    ]),
  ];
}
