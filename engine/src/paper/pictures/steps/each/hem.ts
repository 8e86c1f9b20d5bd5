import { point, polyline, type Point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches, wavy } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { throughAll, turnedEdge } from '../section.ts';
import { cloth } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const FOLD = 51;

/** On the left the hem cut through: raw edge under, hem up, stitched by its inner fold. On the right as it looks inside. */
export const hem: Draw = (scene) => {
  const { speaker } = scene;
  const depth = spoken(scene, 'depth');
  const turnUnder = spoken(scene, 'turnUnder');
  const size = within(9, (depth?.value ?? 12) * 1.9, 30);
  const share = depth && turnUnder ? turnUnder.value / Math.max(1, depth.value) : 0;
  const under = within(0, share * size, size - 2);
  const x = 14;
  const inner = FOLD - size;
  const marks: Mark[] = [
    ...turnedEdge({ x, fold: FOLD, end: 6, depth: size, under, apart: 4.4 }),
    ...throughAll(x, x + 4.4, inner + 2),
    ...(depth ? [measured(point(x + 5.4, inner), point(x + 5.4, FOLD + 2.2), speaker.value(depth), -5)] : []),
    ...(turnUnder && turnUnder.value > 0.1
      ? [measured(point(x - 1.2, inner), point(x - 1.2, inner + under), speaker.value(turnUnder), 3)]
      : []),
    ...inside(scene, Math.min(size, 24)),
  ];
  return { height: 58, marks };
};

const LEFT = 36;
const RIGHT = 83;
const SEAM = 53;
const TOP = 6;
const ACROSS = Array.from({ length: 13 }, (_, i) => LEFT + ((RIGHT - LEFT) * i) / 12);

/** The skirt inside out: the turned hem shows the right side of the cloth, pinned from the side seam on. */
function inside(scene: Scene, depth: number): Mark[] {
  const curved = scene.plan.skirt.hang.shape === 'curved';
  const middle = (LEFT + RIGHT) / 2;
  const bow = (x: number): number => (curved ? 4 * Math.pow((2 * (x - middle)) / (RIGHT - LEFT), 2) : 0);
  const level = (y: number): Point[] => ACROSS.map((x) => point(x, y - bow(x)));
  const inner = FOLD - depth;
  const ends = (x: number, from: number, to: number) => wavy(lineTo([x, from], [x, to - bow(x)]), 0.6, 7);
  const pins = curved ? [SEAM + 1.5, 61, 69, 77] : [SEAM + 1.5, 65, 77];
  return [
    ...cloth(
      'wrong',
      polyline([point(LEFT, TOP), point(RIGHT, TOP), ...level(FOLD).toReversed()], { closed: true }),
      { stroke: null },
    ),
    ...cloth('right', polyline([...level(inner), ...level(FOLD).toReversed()], { closed: true }), {
      stroke: null,
    }),
    stroke([ends(LEFT, TOP, FOLD), ends(RIGHT, TOP, FOLD), wavy(lineTo([LEFT, TOP], [RIGHT, TOP]), 0.6, 7)], {
      stroke: inks.rule,
      width: mm(0.25),
    }),
    stroke([polyline(level(inner)), polyline(level(FOLD))], { width: mm(0.45) }),
    stroke(lineTo([SEAM, TOP], [SEAM, inner - bow(SEAM)]), { width: mm(0.4) }),
    stroke(lineTo([SEAM + 3, TOP], [SEAM + 3, inner - bow(SEAM)]), thinLine),
    stroke(lineTo([SEAM, inner - bow(SEAM)], [SEAM, FOLD - bow(SEAM)]), thinLine),
    ...stitches(polyline(level(inner + 1.8))),
    ...pins.map((x) => pin({ x, y: inner - 4 - bow(x), turn: 90 }, 11, [3, 8])),
  ];
}
