import { arc, line, point, type Path } from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { turn } from '../signs.ts';
import { cloth, edgeOn, frayed } from '../surface.ts';
import { ironAbove } from '../tools/index.ts';
import { block, says } from '../waistParts.ts';

/** Interfacing on the wrong side; the band folded and one edge pressed under; its quarters marked. */
export const bandPrepare: Draw = (scene) => {
  const inTwo = says(scene, 'bandPrepare.stiffenFront');
  return { height: 57, marks: [...stiffened(inTwo), ...pressed(), ...marked(inTwo)] };
};

/** Where front and back are pieces of their own, only the front is stiffened, and the two are joined at the sides. */
const stiffened = (inTwo: boolean): Mark[] => [
  ...turn(6, 6, '1'),
  ...cloth('wrong', block(11, 3, inTwo ? 52 : 83, 19)),
  area(block(13, 5, inTwo ? 50 : 81, 17), { fill: inks.paper, pattern: 'dots', width: mm(0.25) }),
  stroke(lineTo([11, 11], [inTwo ? 52 : 83, 11]), { ...chalkLine, width: mm(0.3) }),
  ironAbove({ x: inTwo ? 44 : 62, y: 11, scale: 0.75 }),
  ...(inTwo ? joined() : []),
];

/** A side of the ring, right sides together: a gap in its inner half for the elastic. */
const joined = (): Mark[] => [
  ...turn(57.4, 6, '2'),
  ...cloth('right', block(63, 4, 84, 20), { width: mm(0.3) }),
  ...cloth('wrong', block(62, 3, 83, 19)),
  stroke(lineTo([62, 11], [83, 11]), { ...chalkLine, width: mm(0.3) }),
  ...stitches(lineTo([79.5, 3], [79.5, 12])),
  ...stitches(lineTo([79.5, 16.8], [79.5, 19])),
  stroke([lineTo([78.5, 12.4], [80.5, 12.4]), lineTo([78.5, 16.6], [80.5, 16.6])], { width: mm(0.7) }),
];

/** Cut through: the fold above, one edge raw and one pressed under. */
function pressed(): Mark[] {
  const [x, top, bottom] = [14, 31, 51];
  const bend = (cx: number, y: number, radius: number, from: number): Path => [
    arc(point(cx, y), mm(radius), radians(from), radians(Math.PI)),
  ];
  return [
    ...edgeOn([
      line(point(x, bottom), point(x, top)),
      ...bend(x + 2.6, top, 2.6, Math.PI),
      line(point(x + 5.2, top), point(x + 5.2, bottom - 2)),
      ...bend(x + 4.25, bottom - 2, 0.95, 0),
      line(point(x + 3.3, bottom - 2), point(x + 3.3, bottom - 9)),
    ]),
    frayed(x, bottom + 0.3, -1),
  ];
}

/** Seen from outside, the edge that was pressed under in front: its centre and its quarters notched. */
function marked(inTwo: boolean): Mark[] {
  const [left, right, top, bottom] = [31, 83, 32, 49];
  const notches = [0.25, 0.5, 0.75].map((t) => left + (right - left) * t);
  return [
    ...turn(6, 29, inTwo ? '3' : '2'),
    ...turn(26.6, 29, inTwo ? '4' : '3'),
    ...cloth('right', block(left, top, right, bottom + 3), { width: mm(0.3) }),
    ...cloth('right', block(left, top, right, bottom)),
    stroke(lineTo([left, top], [right, top]), { width: mm(0.9) }),
    stroke(
      notches.map((x) => lineTo([x, bottom - 4], [x, bottom + 3])),
      { ...chalkLine, width: mm(0.5) },
    ),
    stroke(lineTo([left, bottom - 1.4], [right, bottom - 1.4]), { ...thinLine, dash: 'hidden' }),
  ];
}
