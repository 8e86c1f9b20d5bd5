import { boundsOf, lengthOf, point, pointAt, stretch, tangentAt } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { foldedPanel } from '../foldedPanel.ts';
import { BETWEEN_LAYERS, foldingOf, layersOf, layersSeen } from '../layers.ts';
import { lineTo } from '../lines.ts';
import { shapeOf } from '../panel.ts';
import { WIDTH, type Draw, type Scene } from '../picture.ts';
import { movement } from '../signs.ts';
import { bareTable, firstWidths } from '../table.ts';
import { pin, shears } from '../tools/index.ts';
import { note } from '../wording.ts';

/** Pins inside the lines, long strokes along them, and at the double fold the one fold slit at the side. */
export const cut: Draw = (scene) => ways[scene.plan.skirt.marking](scene);

const throughLayers: Draw = (scene) => {
  const { skirt } = scene.plan;
  const folded = foldedPanel(scene, { left: 6, top: 4, width: 33, height: 55 });
  const { left, top, height } = folded.fitted.box;
  const waist = folded.side(skirt.marks.waistQuarter.value, 0);
  const hem = folded.side(skirt.marks.hemQuarter.value, shapeOf(scene).length);
  const on = (t: number) => point(waist.x + (hem.x - waist.x) * t, waist.y + (hem.y - waist.y) * t);
  const lean = (Math.atan2(waist.y - hem.y, waist.x - hem.x) * 180) / Math.PI;
  const marks: Mark[] = [
    ...folded.ground,
    folded.cutLine,
    ...[0.28, 0.62, 0.94].map((t) => pin({ x: on(t).x - 4.4, y: on(t).y, turn: lean })),
    ...[0.28, 0.58, 0.9].map((t) => pin({ x: left + 4, y: top + height * t, turn: -90 })),
    stroke(lineTo([hem.x, hem.y], [on(0.5).x, on(0.5).y]), { width: mm(0.8) }),
    shears({ x: on(0.5).x, y: on(0.5).y, turn: lean }),
    ...(foldingOf(scene) === 'twice' ? slit(scene) : seenFromEdge(scene, 28)),
  ];
  return { height: 62, marks };
};

const FROM = 50;
const TO = 64;

const layersWords = ({ speaker }: Scene, layers: number, y: number): Mark[] =>
  note(point((FROM + TO) / 2, y), speaker.text(speaker.words.papers.layers, { layers }), { ink: inks.grey });

const seenFromEdge = (scene: Scene, top: number): Mark[] => [
  ...layersWords(scene, layersOf[foldingOf(scene)], top - 5),
  ...layersSeen(foldingOf(scene), FROM + 2, TO + 10, top),
];

/** From the edge: the one fold among the ends at the side is slit, and there are two panels, one in the other. */
function slit(scene: Scene): Mark[] {
  const top = 15;
  const crease = top + 2.5 * BETWEEN_LAYERS;
  return [
    ...layersWords(scene, layersOf.twice, top - 5),
    ...layersSeen('twice', FROM, TO, top),
    shears({ x: TO + 4.2, y: crease, turn: 180, scale: 0.85 }),
    ...movement(lineTo([57, top + 12], [57, top + 18])),
    ...layersSeen('slit', FROM, TO, top + 23),
  ];
}

/** Straight widths are cut, or torn, one after the other from selvage to selvage. */
const widths: Draw = (scene) => {
  const table = firstWidths(scene.plan.cloth.chosen);
  const { marks, fitted } = bareTable(table, { left: 6, top: 20, width: 74, height: 36 });
  const { top, height } = fitted.box;
  const [piece] = table.pieces;
  const bounds = boundsOf(piece ? fitted.path(piece.outline) : []);
  const alongBolt = Math.abs(bounds.width / fitted.scale - scene.plan.skirt.marks.cutLength.value) < 1;
  const line = alongBolt ? bounds.right : bounds.left;
  const pins =
    table.layers > 1 ? [0.3, 0.7].map((t) => pin({ x: Math.max(4, line - 10), y: top + height * t })) : [];
  const tools = alongBolt
    ? [
        stroke(lineTo([line, top], [line, top + 8]), { width: mm(0.9) }),
        ...pins,
        shears({ x: line, y: top + 7, turn: 90 }),
      ]
    : [
        stroke(lineTo([line, bounds.bottom], [line + 12, bounds.bottom]), { width: mm(0.9) }),
        shears({ x: line + 12, y: bounds.bottom }),
      ];
  return {
    height: Math.max(38, top + height + 5, bounds.bottom + 8),
    marks: [
      ...marks,
      ...tools,
      ...(table.layers > 1
        ? note(
            point(70, 12),
            scene.speaker.text(scene.speaker.words.papers.layers, { layers: table.layers }),
            { ink: inks.grey },
          )
        : []),
    ],
  };
};

/** Pieces on the cloth, each cut out along its chalk: pins inside its line. */
const pieces: Draw = (scene) => {
  const { table } = scene.plan.cloth.chosen;
  const { marks, fitted } = bareTable(table, { left: 4, top: 14, width: 78, height: 42 });
  const { top, height } = fitted.box;
  const [piece] = table.pieces;
  if (!piece) return { height: 40, marks };
  const outline = fitted.path(piece.outline);
  const long = lengthOf(outline);
  const { layers } = table;
  const under = Math.max(top + height, boundsOf(outline).bottom);
  // The shears lie behind their cut: it ends at the first place where there is room for them.
  const cut = [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]
    .map((share) => ({
      at: pointAt(outline, mm(share * long)),
      way: tangentAt(outline, mm(share * long)),
      share,
    }))
    .find(({ at, way }) =>
      [-SHEARS, BLADES].every((along) => hasRoom(at.x + along * way.x, at.y + along * way.y, under)),
    );
  return {
    height: Math.max(40, under + 9),
    marks: [
      ...marks,
      ...(cut
        ? [
            stroke(stretch(outline, mm(0), mm(cut.share * long)), { width: mm(0.8) }),
            shears({
              x: cut.at.x,
              y: cut.at.y,
              turn: (Math.atan2(cut.way.y, cut.way.x) * 180) / Math.PI,
              scale: 0.8,
            }),
          ]
        : []),
      ...note(
        point(WIDTH / 2, under + 5),
        scene.speaker.text(scene.speaker.words.papers.layers, { layers }),
        {
          ink: inks.grey,
        },
      ),
    ],
  };
};

/** Length of the shears behind the point that they cut at, and of their blades before it. */
const SHEARS = 14;
const BLADES = 12;

const hasRoom = (x: number, y: number, bottom: number): boolean =>
  x > 5 && x < WIDTH - 5 && y > 5 && y < bottom + 3;

const ways: Readonly<Record<Scene['plan']['skirt']['marking'], Draw>> = {
  'at the fold': throughLayers,
  'straight widths': widths,
  'by piece': pieces,
  swung: pieces,
};
