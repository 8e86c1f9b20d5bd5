import { point, type Point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { circle, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, type Draw } from '../picture.ts';
import { movement } from '../signs.ts';
import { patch } from '../surface.ts';
import { safetyPin } from '../tools/index.ts';
import { triedOn } from '../triedOn.ts';
import { buttonhole, gathers, says } from '../waistParts.ts';
import { measured, note } from '../wording.ts';

/** A cord cut, drawn in at one hole and out at the other, held behind where a child wears it, and tried on. */
export const threadCord: Draw = (scene) => {
  const { speaker } = scene;
  const cut = spoken(scene, 'cut');
  const width = spoken(scene, 'width');
  const caught = says(scene, 'threadCord.catch');
  return {
    height: 64,
    marks: [
      ...cord([point(4, 9), point(42, 9)]),
      ...(cut ? [measured(point(4, 8), point(42, 8), speaker.value(cut), -2.2)] : []),
      ...(width ? note(point(43.8, 9), speaker.value(width), { align: 'start' }) : []),
      ...drawnThrough(caught ? 15 : 20),
      ...(caught ? held() : []),
      ...triedOn(scene),
    ],
  };
};

/** A round cord: two edges, and the twist between them. */
function cord(through: readonly Point[]): Mark[] {
  const path = curve(through);
  return [stroke(path, { width: mm(1.9) }), stroke(path, { stroke: inks.paper, width: mm(1.2) })];
}

/** The front from outside: one end hangs out by the left hole, the safety pin leads the other out by the right one. */
function drawnThrough(top: number): Mark[] {
  const [left, right, centre] = [3, 52, 27];
  const fold = top + 11;
  const y = top + 5.4;
  const holes = [centre - 5, centre + 5];
  return [
    ...patch('right', { left, top, right, bottom: top + 25, torn: ['left', 'right', 'bottom'] }),
    gathers(left + 2, right - 2, fold, 6),
    stroke(lineTo([left, top], [right, top]), { width: mm(0.8) }),
    ...stitches(lineTo([left, fold], [right, fold])),
    stroke(lineTo([centre, top], [centre, fold]), { ...chalkLine, width: mm(0.3) }),
    stroke(
      [lineTo([left, y - 0.8], [holes[0] ?? 0, y - 0.8]), lineTo([left, y + 0.8], [holes[0] ?? 0, y + 0.8])],
      { dash: 'hidden', width: mm(0.4) },
    ),
    stroke(
      [
        lineTo([holes[1] ?? 0, y - 0.8], [right, y - 0.8]),
        lineTo([holes[1] ?? 0, y + 0.8], [right, y + 0.8]),
      ],
      { dash: 'hidden', width: mm(0.4) },
    ),
    ...holes.flatMap((x) => buttonhole(point(x, y - 2), point(x, y + 2))),
    ...cord([point(holes[0] ?? 0, y), point(19, y + 6), point(17.6, y + 13), point(19, y + 18)]),
    ...knot(point(19, y + 18)),
    ...cord([point(holes[1] ?? 0, y), point(34, y + 5), point(36, y + 11)]),
    safetyPin({ x: 36.4, y: y + 11, turn: 62, scale: 0.7 }, 12),
    ...movement(lineTo([42.6, y + 9], [42.6, y + 17])),
  ];
}

const knot = ({ x, y }: Point): Mark[] => [
  circle(point(x, y), mm(1.5), { fill: inks.paper, width: mm(0.45) }),
  stroke(curve([point(x - 1.3, y + 0.5), point(x, y - 0.6), point(x + 1.3, y + 0.3)]), { width: mm(0.3) }),
  stroke([lineTo([x - 0.5, y + 1.5], [x - 0.9, y + 3.2]), lineTo([x + 0.5, y + 1.5], [x + 0.9, y + 3.2])], {
    width: mm(0.3),
  }),
];

/** Behind: stitched through casing and cord at the centre, back and forth. */
function held(): Mark[] {
  const [left, right, top, x] = [10, 45, 45, 27];
  const y = top + 4.4;
  return [
    ...patch('right', { left, top, right, bottom: 62.5, torn: ['left', 'right', 'bottom'] }),
    gathers(left + 2, right - 2, top + 9, 4.6),
    stroke(lineTo([left, top], [right, top]), { width: mm(0.8) }),
    ...stitches(lineTo([left, top + 9], [right, top + 9])),
    stroke([lineTo([left, y - 0.8], [right, y - 0.8]), lineTo([left, y + 0.8], [right, y + 0.8])], {
      dash: 'hidden',
      width: mm(0.4),
    }),
    stroke(lineTo([x, top + 8.8], [x, 62]), { ...chalkLine, width: mm(0.3) }),
    ...[-0.7, 0.7].flatMap((off) => stitches(lineTo([x + off, top + 0.6], [x + off, top + 8.6]))),
  ];
}
