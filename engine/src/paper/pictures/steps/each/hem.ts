import { point, type Path } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { throughAll, turnedEdge } from '../section.ts';
import { cloth } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const FOLD = 50;

/** On the left the hem cut through: raw edge under, hem up, stitched by its inner fold. On the right as it looks inside. */
export const hem: Draw = (scene) => {
  const { speaker } = scene;
  const depth = spoken(scene, 'depth');
  const turnUnder = spoken(scene, 'turnUnder');
  const size = within(9, (depth?.value ?? 12) * 1.9, 30);
  const under = depth && turnUnder ? within(0, (turnUnder.value / Math.max(1, depth.value)) * size, size - 2) : 0;
  const x = 14;
  const inner = FOLD - size;
  const marks: Mark[] = [
    ...turnedEdge({ x, fold: FOLD, end: 6, depth: size, under, apart: 4.4 }),
    ...throughAll(x, x + 4.4, inner + 2),
    ...(depth ? [measured(point(x + 5.4, inner), point(x + 5.4, FOLD + 2.2), speaker.value(depth), -5)] : []),
    ...(turnUnder && turnUnder.value > 0.1
      ? [measured(point(x - 1.2, inner), point(x - 1.2, inner + under), speaker.value(turnUnder), 3)]
      : []),
    ...inside(scene, size),
  ];
  return { height: 58, marks };
};

/** The skirt inside out: its hem shows the right side of the cloth, pinned from the side seam on. */
function inside(scene: Scene, size: number): Mark[] {
  const bow = scene.plan.skirt.hang.shape === 'curved' ? 4 : 0;
  const [left, right] = [38, 83];
  const level = (y: number): Path =>
    bow === 0
      ? lineTo([left, y], [right, y])
      : curve([left, 49, 60.5, 72, right].map((px) => point(px, y - bow * Math.pow((px - 60.5) / 22.5, 2))));
  const back = (path: Path): Path =>
    path.toReversed().map((each) => (each.kind === 'line' ? { ...each, from: each.to, to: each.from } : each));
  const close = (upper: Path, lower: Path): Path => {
    const [a, b] = [upper.at(-1), lower.at(-1)];
    const [c, d] = [upper[0], lower[0]];
    if (a?.kind !== 'line' || b?.kind !== 'line' || c?.kind !== 'line' || d?.kind !== 'line') return [];
    return [...upper, ...lineTo([a.to.x, a.to.y], [b.to.x, b.to.y]), ...back(lower), ...lineTo([d.from.x, d.from.y], [c.from.x, c.from.y])];
  };
  const band = Math.min(size, 22);
  const innerFold = level(FOLD - band);
  const seam = 54;
  return [
    ...cloth('wrong', close(lineTo([left, 8], [right, 8]), level(FOLD)), { stroke: null }),
    stroke(lineTo([seam, 8], [seam, FOLD - band]), { width: mm(0.4) }),
    stroke(lineTo([seam + 3, 8], [seam + 3, FOLD - band]), thinLine),
    ...cloth('right', close(innerFold, level(FOLD)), { stroke: null }),
    stroke([innerFold, level(FOLD)], { width: mm(0.45) }),
    stroke(lineTo([seam, FOLD - band], [seam, FOLD]), { ...thinLine, stroke: inks.grey }),
    ...stitches(level(FOLD - band + 1.8)).slice(0, 1),
    ...(bow > 0 ? [62, 70, 78] : [66, 77]).map((px) =>
      pin({ x: px, y: FOLD - band - 4 - bow * Math.pow((px - 60.5) / 22.5, 2), turn: 90 }, 11, [3, 8]),
    ),
    pin({ x: seam + 1.5, y: FOLD - band - 4, turn: 90 }, 11, [3, 8]),
  ];
}
