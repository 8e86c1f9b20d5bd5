import { arc, line, point, type Path } from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { turn } from '../signs.ts';
import { cloth, edgeOn, patch } from '../surface.ts';
import { block, sheet } from '../waistParts.ts';
import { measured } from '../wording.ts';

/** Both edges of the opening spread into one line and bound with one strip, which is then folded under on top. */
export const placket: Draw = (scene) => ({ height: 65, marks: [...spread(scene), ...bound(), ...closed()] });

/** The opening's two edges in one line, the strip on them right sides together, sewn in one go past the seam's end. */
function spread(scene: Scene): Mark[] {
  const below = spoken(scene, 'below');
  const [left, right, top, end] = [10, 78, 12, 44];
  const from = 15;
  return [
    ...turn(4, 5, '1'),
    ...patch('right', { left, top, right, bottom: 33, torn: ['bottom'] }),
    stroke(lineTo([end, top + 3], [end, 32.6]), { width: mm(0.45) }),
    ...cloth('wrong', block(left, top - 1, right, top + 9)),
    stroke([lineTo([from, top - 1], [from, top + 9])], { ...chalkLine, width: mm(0.35) }),
    ...stitches(lineTo([left, top + 2.6], [right, top + 2.6])),
    ...(below ? [measured(point(from, top - 1), point(end, top - 1), scene.speaker.value(below), -3)] : []),
  ];
}

/** Cut through: the strip round the raw edge, its other edge turned under and stitched down. */
function bound(): Mark[] {
  const [x, y] = [12, 48];
  const bend = (cx: number, cy: number, radius: number, from: number, sweep: number): Path => [
    arc(point(cx, cy), mm(radius), radians(from), radians(sweep)),
  ];
  const strip: Path = [
    line(point(x + 15, y + 1.9), point(x + 10, y + 1.9)),
    ...bend(x + 10, y + 2.85, 0.95, -Math.PI / 2, -Math.PI),
    line(point(x + 10, y + 3.8), point(x + 20, y + 3.8)),
    ...bend(x + 20, y, 3.8, Math.PI / 2, -Math.PI),
    line(point(x + 20, y - 3.8), point(x + 8.6, y - 3.8)),
    ...bend(x + 8.6, y - 2.85, 0.95, -Math.PI / 2, -Math.PI),
    line(point(x + 8.6, y - 1.9), point(x + 14, y - 1.9)),
  ];
  return [
    ...turn(4, 40, '2'),
    ...edgeOn(lineTo([x - 6, y], [x + 15, y])),
    ...edgeOn(strip),
    ...throughUp(x + 11.6, y - 3.8, y + 3.8),
  ];
}

/** A stitch through all layers of cloth that lies level. */
const throughUp = (x: number, from: number, to: number): Mark[] => [
  stroke(lineTo([x, from - 1.4], [x, to + 1.4]), { width: mm(0.6) }),
];

/** Inside, nearly shut: the strip left out below lies over the one that is folded back on top; sewn across its end. */
function closed(): Mark[] {
  const [left, right, seam, top, stop] = [48, 82, 62, 37, 56];
  return [
    ...turn(43, 40, '3'),
    ...patch('wrong', { left, top, right, bottom: 64, torn: ['left', 'right', 'bottom'] }),
    stroke(lineTo([seam, stop], [seam, 63.6]), { width: mm(0.45) }),
    stroke(
      [lineTo([seam - 3, stop], [seam - 3, 63.6]), lineTo([seam + 3, stop], [seam + 3, 63.6])],
      thinLine,
    ),
    ...cloth('right', sheet([seam + 3, top], [seam + 11, top], [seam + 8, stop], [seam, stop])),
    ...cloth('right', block(seam, top, seam + 7, stop)),
    stroke(lineTo([seam, top], [seam, stop]), { width: mm(0.6) }),
    ...stitches(lineTo([seam + 1.2, top], [seam + 1.2, stop - 3])),
    ...stitches(lineTo([seam + 0.2, stop - 1.6], [seam + 7.6, stop - 1.6])),
  ];
}
