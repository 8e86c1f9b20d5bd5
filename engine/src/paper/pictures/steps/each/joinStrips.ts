import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { group, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { turn } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const END = 58;

/** Two strips end on end, right sides together (1); joined so one after the other they make a ring (2). */
export const joinStrips: Draw = (scene) => {
  const seam = spoken(scene, 'seam');
  const inset = within(4, (seam?.value ?? 10) * 0.6, 10);
  const line = END - inset;
  const sheet = { left: 10, top: 7, right: END, bottom: 23, torn: ['left'] } as const;
  return {
    height: 62,
    marks: [
      ...turn(4, 5, '1'),
      group('under', patch('right', sheet), { placement: { dx: mm(1.4), dy: mm(1.4) } }),
      ...patch('wrong', sheet),
      ...stitches(lineTo([line, 23], [line, 7])),
      ...[10.5, 19.5].map((y) => pin({ x: END + 3.4, y, turn: 180 }, 10, [3, 7])),
      ...(seam ? [measured(point(line, 23), point(END, 23), scene.speaker.value(seam), 3.4)] : []),
      ...turn(4, 36, '2'),
      ...ring(scene.plan.skirt.rounds.at(-1)?.panels.length ?? 2),
    ],
  };
};

const MIDDLE = 43;
const HALF = 33;
const TALL = 4;
const DEEP = 13;

/** The lowest tier's strips as a ring seen a little from above: right side out, its inside seen at the back. */
function ring(strips: number): Mark[] {
  const on = (angle: number, y: number) => point(MIDDLE + HALF * Math.cos(angle), y + TALL * Math.sin(angle));
  const half = (from: number, y: number) =>
    Array.from({ length: 25 }, (_, i) => on(from + (Math.PI * i) / 24, y));
  const top = 42;
  const seams = Array.from({ length: strips }, (_, i) => 0.35 + (2 * Math.PI * i) / strips);
  const seen = seams.filter((angle) => Math.sin(angle) > 0);
  const hidden = seams.filter((angle) => Math.sin(angle) <= 0);
  const join = (angle: number, deep: number) => {
    const { x, y } = on(angle, top);
    return lineTo([x, y], [x, y + deep]);
  };
  return [
    ...cloth('wrong', polyline([...half(0, top), ...half(Math.PI, top)], { closed: true }), {
      width: mm(0.4),
    }),
    stroke(
      hidden.map((angle) => join(angle, 2.4)),
      { width: mm(0.45), stroke: inks.grey },
    ),
    ...cloth('right', polyline([...half(0, top), ...half(0, top + DEEP).toReversed()], { closed: true }), {
      width: mm(0.4),
    }),
    ...seen.flatMap((angle) => [stroke(join(angle, DEEP), { width: mm(0.45) })]),
  ];
}
