import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { throughAll, turnedEdge } from '../section.ts';
import { edgeOn, patch } from '../surface.ts';
import { says } from '../waistParts.ts';
import { measured } from '../wording.ts';

const FOLD = 9;

/** On the left the casing cut through, the elastic's room in it; on the right the stitching with its opening. */
export const casing: Draw = (scene) => {
  const { speaker, plan } = scene;
  const depth = spoken(scene, 'depth');
  const all = plan.skirt.waist.topAllowance.value;
  const size = within(14, (depth?.value ?? 20) * 1.05, 34);
  const under = within(0, ((all - (depth?.value ?? all)) / Math.max(1, depth?.value ?? 1)) * size, size - 4);
  const x = 14;
  const inner = FOLD + size;
  const elastic = plan.skirt.waist.elastic;
  const wide = elastic
    ? within(3, (elastic.width.value / Math.max(1, depth?.value ?? 1)) * size, size - 3.4)
    : 0;
  const marks: Mark[] = [
    ...turnedEdge({ x, fold: FOLD, end: 56, depth: size, under, apart: 6.6 }),
    // A lining that is caught in the stitching lies between skirt and casing.
    ...(says(scene, 'casing.lining') ? edgeOn(lineTo([x + 2.1, 56], [x + 2.1, inner - 5])) : []),
    ...throughAll(x, x + 6.6, inner - 1.6),
    ...(wide > 0
      ? [rectangle(x + 1.8, FOLD + 0.4, 1.7, wide, { dash: 'hidden', fill: inks.paper, width: mm(0.4) })]
      : []),
    ...(depth ? [measured(point(x + 7.6, FOLD - 3.2), point(x + 7.6, inner), speaker.value(depth), -5)] : []),
    ...inside(scene, size),
  ];
  return { height: 60, marks };
};

/** The skirt inside out at a seam: stitches stop on both sides of the opening, or go all round where a cord comes out by holes. */
function inside(scene: Scene, size: number): Mark[] {
  const [left, right, seam] = [38, 83, 50];
  const inner = FOLD + Math.min(size, 26);
  const opening = spoken(scene, 'opening');
  const [from, to] = [seam - 2, seam + 17];
  const line = inner - 1.8;
  return [
    ...patch('wrong', { left, top: FOLD, right, bottom: 50, torn: ['left', 'right', 'bottom'] }),
    stroke(lineTo([seam, inner], [seam, 50]), { width: mm(0.4) }),
    stroke(lineTo([seam + 3, inner], [seam + 3, 50]), thinLine),
    ...patch('right', { left, top: FOLD, right, bottom: inner, torn: ['left', 'right'] }),
    stroke(lineTo([seam, FOLD], [seam, inner]), thinLine),
    ...(opening
      ? [
          ...stitches(lineTo([left, line], [from, line])),
          ...stitches(lineTo([to, line], [right, line])),
          stroke([lineTo([from, line - 1], [from, line + 1]), lineTo([to, line - 1], [to, line + 1])], {
            width: mm(0.7),
          }),
          measured(point(from, inner), point(to, inner), scene.speaker.value(opening), 4),
        ]
      : stitches(lineTo([left, line], [right, line]))),
  ];
}
