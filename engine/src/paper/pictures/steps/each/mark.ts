import { boundsOf, point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, straight, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, foldLine, thinLine } from '../../cloth.ts';
import { foldedPanel, type FoldedPanel } from '../foldedPanel.ts';
import { layersOf, foldingOf } from '../layers.ts';
import { lineTo } from '../lines.ts';
import { shapeOf } from '../panel.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { tableView } from '../table.ts';
import { chalk, ruler } from '../tools/index.ts';
import { measured, note, pointed } from '../wording.ts';

/** Dots and chalk lines on the folded cloth, all measured from the folds; or straight widths on the open one. */
export const mark: Draw = (scene) =>
  scene.plan.skirt.marking === 'straight widths' ? widths(scene) : atTheFold(scene);

const atTheFold: Draw = (scene) => {
  const { speaker, plan } = scene;
  const { papers } = speaker.words;
  const { skirt } = plan;
  const shape = shapeOf(scene);
  const folded = foldedPanel(scene, { left: 25, top: 4, width: 30, height: 55 });
  const { fitted } = folded;
  const { left, top, width, height } = fitted.box;
  const hemLine = spoken(scene, 'hemLine');
  const waistY = fitted.at(point(0, 0)).y;
  const hemY = fitted.at(point(0, shape.length)).y;
  const middle = top + height / 2;
  const centre = layersOf[foldingOf(scene)] > 2 ? papers.twoFolds : papers.oneFold;
  const marks: Mark[] = [
    ...folded.ground,
    folded.cutLine,
    stroke(
      [lineTo([left, waistY], [left + width, waistY]), lineTo([left, hemY], [left + width, hemY])],
      { ...foldLine, stroke: inks.ink, width: mm(0.3) },
    ),
    ...quarters(scene, folded),
    ...note(point(13, middle), centre, { room: 20, bold: true }),
    straight(point(20.5, middle), point(left - 2.2, middle), thinLine),
    ...pointed(point(18.5, waistY + 1), point(left - 0.6, (top + waistY) / 2), speaker.value(skirt.waist.topAllowance), 'end'),
  ];
  if (hemLine) marks.push(...pointed(point(18.5, hemY - 3), point(left - 0.6, hemY), speaker.value(hemLine), 'end'));
  return { height: 63, marks };
};

function quarters(scene: Scene, folded: FoldedPanel): Mark[] {
  const { speaker, plan } = scene;
  const { papers } = speaker.words;
  const { marks, hang } = plan.skirt;
  const { fitted } = folded;
  const shape = shapeOf(scene);
  const { left, width } = fitted.box;
  const words = left + width + 6;
  const room = 85 - words;
  const waist = folded.side(marks.waistQuarter.value, 0);
  const hem = folded.side(marks.hemQuarter.value, shape.length);
  const at = (x: number, y: number) => fitted.at(point(x, y));
  const foldAt = at(0, 0);
  if (hang.shape === 'straight') {
    const start = at(0, shape.length);
    return [
      ruler(Math.max(6, hem.x - start.x), { x: start.x, y: start.y - 4.4 }),
      dot(waist, mm(0.9)),
      dot(hem, mm(0.9)),
      chalk({ x: waist.x, y: waist.y, turn: 0, scale: 0.8 }),
      ...pointed(point(words, waist.y + 9), waist, speaker.text(papers.waistMark, { value: marks.waistQuarter }), 'start', {
        room,
        bold: true,
      }),
      ...pointed(point(words, hem.y - 9), hem, speaker.text(papers.hemMark, { value: marks.hemQuarter }), 'start', {
        room,
        bold: true,
      }),
    ];
  }
  const last = hang.hemOrdinates.at(-1);
  const ups = hang.hemOrdinates.flatMap(({ across, up }): Mark[] => {
    const foot = at(across, shape.length);
    const end = at(across, shape.length - up.value);
    return [straight(foot, end, thinLine), dot(end, mm(0.6))];
  });
  const waistUps = hang.waistOrdinates.map(({ across, up }) => dot(at(across, -up.value), mm(0.6)));
  const arcs = shape.edges.filter(({ turned }) => turned).map(({ finished }) => fitted.path(finished));
  const halves = arcs.map((path) => path.filter((each) => boundsOf([each]).right > left));
  return [
    ...halves.flatMap(() => []),
    ...ups,
    ...waistUps,
    dot(foldAt, mm(0.6)),
    chalk({ x: hem.x, y: hem.y, scale: 0.8 }),
    ...(last
      ? [
          measured(at(0, shape.length), at(last.across, shape.length), speaker.length(last.across), 4.4),
          ...pointed(
            point(words, hem.y + 7),
            at(last.across, shape.length - last.up.value / 2),
            `${papers.measureUp} ${speaker.value(last.up)}`,
            'start',
            { room, bold: true },
          ),
        ]
      : []),
    stroke(lineTo([left, foldAt.y], [left, foldAt.y]), chalkLine),
  ];
}

const widths: Draw = (scene) => {
  const lay = scene.plan.cloth.chosen;
  const { marks, fitted } = tableView(scene, lay, { left: 14, top: 8, width: 58, height: 30 });
  const [piece] = lay.table.pieces;
  const cut = scene.plan.skirt.marks.cutLength;
  const bounds = piece ? boundsOf(fitted.path(piece.outline)) : boundsOf([]);
  const down = fitted.box.top + fitted.box.height;
  const alongBolt = Math.abs(bounds.width / fitted.scale - cut.value) < 1;
  const length = alongBolt
    ? measured(point(bounds.left, down), point(bounds.right, down), scene.speaker.value(cut), 6)
    : measured(point(bounds.left, bounds.top), point(bounds.left, bounds.bottom), scene.speaker.value(cut), 4);
  return {
    height: down + 15,
    marks: [
      ...marks,
      ruler(Math.max(8, fitted.box.height - 2), { x: bounds.right, y: fitted.box.top + 1, turn: 90 }),
      chalk({ x: bounds.right, y: down - 2, scale: 0.9 }),
      length,
    ],
  };
};
