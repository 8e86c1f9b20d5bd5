import { boundsOf, point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, straight, stroke, type Mark } from '../../../drawing/index.ts';
import { foldLine, thinLine } from '../../cloth.ts';
import { foldedPanel, type FoldedPanel } from '../foldedPanel.ts';
import { centreWords, foldingOf } from '../layers.ts';
import { lineTo } from '../lines.ts';
import { shapeOf } from '../panel.ts';
import { spoken, WIDTH, type Draw, type Scene } from '../picture.ts';
import { firstWidths, tableView } from '../table.ts';
import { markPiece, markStrips, markSwung } from './markPieces.ts';
import { chalk, ruler } from '../tools/index.ts';
import { measured, named, note, pointed } from '../wording.ts';

/** Dots and chalk lines on folded cloth, measured from the folds; or widths, pieces, arcs, as the plan is marked. */
export const mark: Draw = (scene) => ways[scene.plan.skirt.marking](scene);

const atTheFold: Draw = (scene) => {
  const { speaker, plan } = scene;
  const { papers } = speaker.words;
  const shape = shapeOf(scene);
  const folded = foldedPanel(scene, { left: 26, top: 5, width: 31, height: 52 });
  const { fitted } = folded;
  const { left, top, width, height } = fitted.box;
  const level = (y: number): number => fitted.at(point(0, y)).y;
  const middle = top + height / 2;
  const casingLine = spoken(scene, 'casingLine');
  const hemLine = spoken(scene, 'hemLine');
  const edge = foldingOf(scene) === 'twice' ? papers.foldAndEnds : papers.sideEdge;
  const marks: Mark[] = [
    ...folded.ground,
    folded.cutLine,
    stroke(
      [0, shape.length].map((y) => lineTo([left, level(y)], [left + width, level(y)])),
      { ...foldLine, stroke: inks.ink, width: mm(0.3) },
    ),
    ...(plan.skirt.hang.shape === 'straight' ? straightMarks(scene, folded) : curvedMarks(scene, folded)),
    ...note(point(left + width + OFF, top + height * 0.42), edge, {
      align: 'start',
      room: WIDTH - 1 - left - width - OFF,
      ink: inks.grey,
    }),
    ...note(point(11.5, middle), centreWords(scene), {
      room: 21,
      bold: true,
    }),
    ...(casingLine ? down(left, level(0), 5, papers.casingFold, speaker.value(casingLine)) : []),
    ...(hemLine ? down(left, level(shape.length), -5, papers.hemFold, speaker.value(hemLine)) : []),
  ];
  const curved = plan.skirt.hang.shape === 'curved';
  return { height: Math.max(61, level(shape.length) + (curved ? 10 : 0)), marks };
};

/** How far below the top edge a fold line is chalked. */
const down = (left: number, level: number, beside: number, name: string, value: string): Mark[] => [
  straight(point(20, level + beside), point(left - 0.8, level), thinLine),
  ...named(point(19, level + beside), name, value, { align: 'end', room: 18 }),
];

/** Right of the cloth: how many millimetres from it words begin. */
const OFF = 7;

/** Waist and hem dots, measured across from the folds; the side joins them. */
function straightMarks(scene: Scene, { fitted, side }: FoldedPanel): Mark[] {
  const { speaker, plan } = scene;
  const { papers } = speaker.words;
  const { marks } = plan.skirt;
  const { left, width } = fitted.box;
  const words = left + width + OFF;
  const room = WIDTH - 1 - words;
  const waist = side(marks.waistQuarter.value, 0);
  const hem = side(marks.hemQuarter.value, shapeOf(scene).length);
  const look = { room, bold: true };
  return [
    ruler(Math.max(6, hem.x - left), { x: left, y: hem.y - 4.4 }),
    dot(waist, mm(0.9)),
    dot(hem, mm(0.9)),
    chalk({ x: waist.x, y: waist.y, scale: 0.8 }),
    ...pointed(
      point(words, waist.y + 7),
      waist,
      speaker.text(papers.waistMark, { value: marks.waistQuarter }),
      'start',
      look,
    ),
    ...pointed(
      point(words, hem.y - 6),
      hem,
      speaker.text(papers.hemMark, { value: marks.hemQuarter }),
      'start',
      look,
    ),
  ];
}

/** Dots of a curve, each measured up from the line square to the fold. */
function curvedMarks(scene: Scene, { fitted, side }: FoldedPanel): Mark[] {
  const { speaker, plan } = scene;
  const { marks, hang } = plan.skirt;
  const { length } = shapeOf(scene);
  const at = (x: number, y: number) => fitted.at(point(x, y));
  const hem = side(marks.hemQuarter.value, length);
  const words = fitted.box.left + fitted.box.width + OFF;
  const last = hang.hemOrdinates.at(-1);
  const ups = hang.hemOrdinates.flatMap(({ across, up }): Mark[] => [
    straight(at(across, length), at(across, length - up.value), thinLine),
    dot(at(across, length - up.value), mm(0.6)),
  ]);
  return [
    ...ups,
    ...hang.waistOrdinates.map(({ across, up }) => dot(at(across, -up.value), mm(0.6))),
    chalk({ x: hem.x, y: hem.y, scale: 0.8 }),
    ...(last
      ? [
          measured(at(0, length), at(last.across, length), speaker.length(last.across), 4.4),
          ...pointed(
            point(words, hem.y - 8),
            at(last.across, length - last.up.value / 2),
            `${speaker.words.papers.measureUp} ${speaker.value(last.up)}`,
            'start',
            { room: WIDTH - 1 - words, bold: true },
          ),
        ]
      : []),
  ];
}

/** Straight widths: one ruler's length after the other, from selvage to selvage. */
const widths: Draw = (scene) => {
  const table = firstWidths(scene.plan.cloth.chosen);
  const { marks, fitted } = tableView(scene, table, { left: 15, top: 9, width: 56, height: 32 });
  const { left, top, width, height } = fitted.box;
  const [piece] = table.pieces;
  const cut = scene.plan.skirt.marks.cutLength;
  const bounds = boundsOf(piece ? fitted.path(piece.outline) : []);
  const value = scene.speaker.value(cut);
  const alongBolt = Math.abs(bounds.width / fitted.scale - cut.value) < 1;
  const line = alongBolt
    ? measured(point(bounds.left, top + height * 0.62), point(bounds.right, top + height * 0.62), value, 0)
    : measured(point(left + width * 0.3, bounds.top), point(left + width * 0.3, bounds.bottom), value, 0);
  const tools = alongBolt
    ? [
        ruler(Math.max(8, height - 2), { x: bounds.right, y: top + 1, turn: 90 }),
        chalk({ x: bounds.right, y: top + height - 3, scale: 0.9 }),
      ]
    : [ruler(Math.max(8, Math.min(30, width - 4)), { x: left + 2, y: bounds.bottom - 4 })];
  return { height: Math.max(38, top + height + 9, bounds.bottom + 4), marks: [...marks, ...tools, line] };
};

const ways: Readonly<Record<Scene['plan']['skirt']['marking'], Draw>> = {
  'at the fold': atTheFold,
  'straight widths': widths,
  'by piece': (scene) => (scene.plan.skirt.rounds.length > 1 ? markStrips : markPiece)(scene),
  swung: markSwung,
};
