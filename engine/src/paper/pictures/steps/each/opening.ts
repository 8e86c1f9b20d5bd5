import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, thinLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { measured } from '../wording.ts';
import { placket } from './placket.ts';

/** What closes the seam that was left open at the top. */
export const opening: Draw = (scene) =>
  scene.plan.skirt.waist.closure?.kind === 'placket' ? placket(scene) : zip(scene);

const TOP = 8;
const LINE = 14;
const STOP = 44;
const BOTTOM = 60;

const zip: Draw = (scene) => ({ height: 64, marks: [...laid(scene), ...sewnIn()] });

/** Inside: the seam basted, its allowances open, the zip face down with its teeth on the seam. */
function laid(scene: Scene): Mark[] {
  const below = spoken(scene, 'below');
  const [left, right, seam] = [10, 42, 26];
  return [
    ...turn(4, 6, '1'),
    ...patch('wrong', { left, top: TOP, right, bottom: BOTTOM, torn: ['left', 'right', 'bottom'] }),
    stroke(lineTo([left, LINE], [right, LINE]), { ...chalkLine, width: mm(0.35) }),
    ...allowances(seam),
    // Long stitches as far as the opening, short ones below it.
    stroke(lineTo([seam, TOP], [seam, STOP]), { ...chalkLine, width: mm(0.4) }),
    ...stitches(lineTo([seam, STOP], [seam, BOTTOM - 0.6])),
    ...tape(seam),
    ...(below ? [measured(point(left - 1, LINE), point(left - 1, STOP), scene.speaker.value(below), 3)] : []),
  ];
}

const allowances = (seam: number): Mark[] => [
  stroke(
    [lineTo([seam - 7, TOP], [seam - 7, BOTTOM - 0.6]), lineTo([seam + 7, TOP], [seam + 7, BOTTOM - 0.6])],
    {
      width: mm(0.35),
    },
  ),
];

/** A zip from behind: tapes, teeth, the slider below the line of the band, the stop at the end of the opening. */
const tape = (seam: number): Mark[] => [
  rectangle(seam - 5, TOP + 1, 10, STOP - TOP + 2, { fill: inks.paper, width: mm(0.4) }),
  stroke(
    [lineTo([seam - 4, TOP + 1], [seam - 4, STOP + 3]), lineTo([seam + 4, TOP + 1], [seam + 4, STOP + 3])],
    {
      dash: 'hidden',
      width: mm(0.3),
    },
  ),
  ...teeth(seam, LINE + 2, STOP),
  rectangle(seam - 1.5, LINE + 1.6, 3, 4, { fill: inks.paper, width: mm(0.4) }),
  stroke(lineTo([seam - 1.4, STOP], [seam + 1.4, STOP]), { width: mm(0.9) }),
];

const teeth = (x: number, from: number, to: number): Mark[] => [
  stroke(
    Array.from({ length: Math.floor((to - from) / 1.2) }, (_, i) => {
      const y = from + i * 1.2;
      return i % 2 === 0 ? lineTo([x - 1, y], [x + 0.2, y]) : lineTo([x - 0.2, y], [x + 1, y]);
    }),
    { width: mm(0.3) },
  ),
];

/** Outside: down one side, across below the stop, up the other; the long stitches out, so that the edges give. */
const sewnIn = (): Mark[] => {
  const [left, right, seam] = [54, 82, 68];
  const [out, low] = [3.6, STOP + 2.4];
  return [
    ...turn(49, 6, '2'),
    ...patch('right', { left, top: TOP, right, bottom: BOTTOM, torn: ['left', 'right', 'bottom'] }),
    rectangle(seam - 1.2, TOP, 2.4, 12, { fill: inks.paper, stroke: null }),
    ...teeth(seam, TOP + 0.8, TOP + 12),
    stroke(
      [
        curve([point(seam - 1.2, TOP), point(seam - 1.2, TOP + 8), point(seam, TOP + 14), point(seam, STOP)]),
        curve([point(seam + 1.2, TOP), point(seam + 1.2, TOP + 8), point(seam, TOP + 14)]),
      ],
      { width: mm(0.4) },
    ),
    stroke(lineTo([seam, STOP], [seam, BOTTOM - 0.6]), thinLine),
    stroke(lineTo([left, LINE], [right, LINE]), { ...chalkLine, width: mm(0.35) }),
    rectangle(seam - 1.3, TOP + 8, 2.6, 4, { fill: inks.paper, width: mm(0.4) }),
    rectangle(seam - 0.8, TOP + 11, 1.6, 5, { fill: inks.paper, width: mm(0.35) }),
    ...stitches(lineTo([seam - out, TOP], [seam - out, low], [seam + out, low], [seam + out, TOP])),
  ];
};
