import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { inks } from '../../../drawing/index.ts';
import { curve, lineTo, zigzag } from '../lines.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { band, ribbonLook } from '../ribbons.ts';
import { movement } from '../signs.ts';
import { patch } from '../surface.ts';
import { basin, peg } from '../tools/index.ts';
import { measured } from '../wording.ts';

const LEFT = 6;
const LONGEST = 74;

/** What is washed, before and after: cloth with its raw ends zigzagged, ribbon in a bag of its own. */
export const prewash: Draw = (scene) => {
  const before = spoken(scene, 'before');
  const after = spoken(scene, 'after');
  const ribbonToo = !scene.plan.request.ribbons.washed && scene.plan.ribbons.rows.length > 0;
  const marks: Mark[] = [];
  if (before && after) {
    const share = before.value > 0 ? after.value / before.value : 1;
    const right = LEFT + LONGEST * share;
    marks.push(
      ...patch('right', { left: LEFT, top: 10, right: LEFT + LONGEST, bottom: 19, torn: [] }),
      zigzag(lineTo([LEFT + 1.2, 10], [LEFT + 1.2, 19]), 1.8, 1),
      zigzag(lineTo([LEFT + LONGEST - 1.2, 10], [LEFT + LONGEST - 1.2, 19]), 1.8, 1),
      measured(point(LEFT, 10), point(LEFT + LONGEST, 10), scene.speaker.value(before), -3.4),
      ...onTheLine(right),
      measured(point(LEFT, 55), point(right, 55), scene.speaker.value(after), 3.4),
    );
  } else marks.push(...ribbonDries(scene));
  const x = before && ribbonToo ? 30 : 43;
  marks.push(
    ...movement(lineTo([x - 18, 23], [x - 18, 28], [x - 14.5, 28])),
    basin({ x, y: 25 }, 26),
    ...movement(lineTo([x + 14.5, 28], [x + 18, 28], [x + 18, 38])),
  );
  if (ribbonToo) marks.push(...bag(scene, before ? 68 : 43, before ? 30 : 12));
  return { height: 63, marks };
};

const onTheLine = (right: number): Mark[] => [
  stroke(lineTo([2, 42.6], [84, 42.6]), { width: mm(0.35) }),
  ...patch('right', { left: LEFT, top: 43, right, bottom: 52, torn: [] }),
  zigzag(lineTo([LEFT + 1.2, 43], [LEFT + 1.2, 52]), 1.8, 1),
  zigzag(lineTo([right - 1.2, 43], [right - 1.2, 52]), 1.8, 1),
  ...[0.06, 0.35, 0.65, 0.94].map((t) => peg({ x: LEFT + (right - LEFT) * t, y: 42.6 })),
];

const ribbonDries = (scene: Scene): Mark[] => [band(scene, 0, 8, 44, 78, 48), band(scene, 1, 8, 52, 78, 56)];

/** A wash bag: netting drawn shut over coiled ribbon. */
function bag(scene: Scene, x: number, y: number): Mark[] {
  return [
    rectangle(x - 8, y - 6, 16, 13, { fill: inks.paper, pattern: 'cross', width: mm(0.4) }),
    rectangle(x - 4.5, y - 2.5, 9, 6, { ...ribbonLook(scene, 0) }),
    stroke(curve([point(x - 8, y - 6), point(x - 9.4, y - 7.6), point(x - 7, y - 8.4)]), { width: mm(0.4) }),
  ];
}
