import { boundsOf, point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, straight, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { foldedPanel } from '../foldedPanel.ts';
import { BETWEEN_LAYERS, foldingOf, layersOf, layersSeen } from '../layers.ts';
import { lineTo } from '../lines.ts';
import { shapeOf } from '../panel.ts';
import type { Draw } from '../picture.ts';
import { movement } from '../signs.ts';
import { frayed } from '../surface.ts';
import { tableView } from '../table.ts';
import { pin, shears } from '../tools/index.ts';
import { note } from '../wording.ts';

/** Pins inside the lines, long strokes along them, and at the double fold the one fold slit at the side. */
export const cut: Draw = (scene) =>
  scene.plan.skirt.marking === 'straight widths' ? widths(scene) : throughLayers(scene);

const throughLayers: Draw = (scene) => {
  const shape = shapeOf(scene);
  const { skirt } = scene.plan;
  const folded = foldedPanel(scene, { left: 5, top: 4, width: 34, height: 55 });
  const { left, top, height } = folded.fitted.box;
  const waist = folded.side(skirt.marks.waistQuarter.value, 0);
  const hem = folded.side(skirt.marks.hemQuarter.value, shape.length);
  const on = (t: number) => point(waist.x + (hem.x - waist.x) * t, waist.y + (hem.y - waist.y) * t);
  const lean = (Math.atan2(waist.y - hem.y, waist.x - hem.x) * 180) / Math.PI;
  const pins = [0.08, 0.36, 0.64, 0.92].map((t) => {
    const at = on(t);
    return pin({ x: at.x - 2.4, y: at.y, turn: lean, scale: 0.8 });
  });
  const folding = foldingOf(scene);
  const layers = layersOf[folding];
  const edge = 16;
  const bottom = edge + (layers - 1) * BETWEEN_LAYERS;
  const [from, to] = [51, 70];
  const slit: Mark[] =
    folding === 'twice'
      ? [
          shears({ x: to + 4.6, y: bottom - BETWEEN_LAYERS / 2, turn: 180, scale: 0.8 }),
          ...movement(lineTo([60.5, bottom + 5], [60.5, bottom + 11])),
          ...slitEdge(from, to, bottom + 16),
        ]
      : [];
  const marks: Mark[] = [
    ...folded.ground,
    folded.cutLine,
    ...pins,
    ...[0.2, 0.5, 0.8].map((t) => pin({ x: left + 3, y: top + height * t, turn: -90, scale: 0.8 })),
    shears({ x: on(0.5).x, y: on(0.5).y, turn: lean }),
    stroke(lineTo([hem.x, hem.y], [on(0.5).x, on(0.5).y]), { width: mm(0.8) }),
    ...layersSeen(folding, from, to, edge),
    ...slit,
    ...note(point(60.5, 9), scene.speaker.text(scene.speaker.words.papers.layers, { layers }), { ink: inks.grey }),
  ];
  return { height: 62, marks };
};

/** The same layers once the fold at the side is slit: two panels, each with its own fold at the centre. */
function slitEdge(left: number, right: number, top: number): Mark[] {
  const ends = [0, 1, 2, 3].map((layer) => frayed(right + 0.3, top + layer * BETWEEN_LAYERS, 1));
  return [...layersSeen('fold on fold', left, right - 3.2, top).slice(0, 4), ...ends.slice(0, 0), straightEnd(right, top)];
}

const straightEnd = (x: number, top: number): Mark =>
  straight(point(x + 2.5, top - 1), point(x + 2.5, top + 3 * BETWEEN_LAYERS + 1), { ...thinLine, dash: 'hidden' });

/** Straight widths are cut, or torn, one after the other from selvage to selvage. */
const widths: Draw = (scene) => {
  const lay = scene.plan.cloth.chosen;
  const { marks, fitted } = tableView(scene, lay, { left: 14, top: 8, width: 58, height: 32 });
  const [piece] = lay.table.pieces;
  const bounds = boundsOf(piece ? fitted.path(piece.outline) : []);
  const middle = fitted.box.top + fitted.box.height * 0.42;
  return {
    height: fitted.box.top + fitted.box.height + 10,
    marks: [
      ...marks,
      stroke(lineTo([bounds.right, fitted.box.top], [bounds.right, middle - 7]), { width: mm(0.8) }),
      ...(lay.table.layers > 1
        ? [0.25, 0.7].map((t) => pin({ x: bounds.right - 9, y: fitted.box.top + fitted.box.height * t }))
        : []),
      shears({ x: bounds.right, y: middle, turn: 90 }),
    ],
  };
};
