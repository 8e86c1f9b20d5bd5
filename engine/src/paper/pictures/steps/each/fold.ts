import type { LayKind } from '../../../../cloth/index.ts';
import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { foldLine } from '../../cloth.ts';
import { BETWEEN_LAYERS, centreWords, ENDS, foldingOf, layersOf, layersSeen } from '../layers.ts';
import { lineTo } from '../lines.ts';
import { spoken, type Draw, type Picture, type Scene } from '../picture.ts';
import { bowed, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { tableView } from '../table.ts';
import { measured, note } from '../wording.ts';

/** From cloth that lies open to cloth that is folded for marking. */
export const fold: Draw = (scene) => folds[scene.plan.cloth.chosen.kind](scene);

const folds: Readonly<Record<LayKind, Draw>> = {
  'double fold': (scene) => ({ height: 66, marks: [...openCloth(scene, 'across'), ...stack(scene, 36)] }),
  'lengthwise fold': (scene) => onTable(scene, 'along'),
  'crosswise fold': (scene) => onTable(scene, 'across'),
  open: (scene) => onTable(scene, null),
};

const LEFT = 12;
const RIGHT = 74;
const DEEP = 11;
const MIDDLE = (LEFT + RIGHT) / 2;

/** The cloth right side up, with the line it is folded on and the way it goes: right sides come together. */
function openCloth(scene: Scene, way: 'across' | 'along'): Mark[] {
  const cloth = spoken(scene, 'cloth');
  const upper = topOf(way);
  const lower = upper + DEEP;
  const twice = scene.plan.cloth.chosen.kind === 'double fold';
  return [
    ...patch('right', { left: LEFT, top: upper, right: RIGHT, bottom: lower, torn: [] }),
    ...(way === 'along' ? foldedAlong(upper) : foldedAcross(upper, twice)),
    ...(cloth ? [measured(point(LEFT, lower), point(RIGHT, lower), scene.speaker.value(cloth), 3)] : []),
  ];
}

/** Ends are carried over in a bow that wants room above. */
const topOf = (way: 'across' | 'along'): number => (way === 'along' ? 4 : 13);

const creases = (lines: Parameters<typeof stroke>[0]): Mark =>
  stroke(lines, { ...foldLine, stroke: inks.ink, width: mm(0.4) });

const foldedAlong = (upper: number): Mark[] => [
  creases(lineTo([LEFT, upper + DEEP / 2], [RIGHT, upper + DEEP / 2])),
  ...bowed(point(MIDDLE - 3, upper + 0.8), point(MIDDLE - 3, upper + DEEP - 0.8), 5),
];

/** In half, end to end; and the double fold in half once more. */
function foldedAcross(upper: number, twice: boolean): Mark[] {
  const level = upper - 0.6;
  const crease = (x: number) => lineTo([x, upper - 1.6], [x, upper + DEEP + 1.6]);
  return [
    creases([crease(MIDDLE), ...(twice ? [crease((LEFT + MIDDLE) / 2)] : [])]),
    ...bowed(point(RIGHT - 1, level), point(LEFT + 1, level), -9),
    ...(twice
      ? [
          ...turn(MIDDLE + 10, level - 8, '1'),
          ...bowed(point(MIDDLE - 1, level), point(LEFT + 3.4, level), -3.8),
          ...turn(MIDDLE - 9, level - 3.4, '2'),
        ]
      : []),
  ];
}

/** A corner of the folded stack, its layers seen from their edge, and what each of its sides is. */
function stack(scene: Scene, top: number, deep = 12): Mark[] {
  const { papers } = scene.speaker.words;
  const folding = foldingOf(scene);
  const layers = layersOf[folding];
  const [left, right, edge] = [29, 58, top + deep];
  const bottom = edge + (layers - 1) * BETWEEN_LAYERS;
  const middle = (edge + bottom) / 2;
  const below = Array.from({ length: layers - 1 }, (_, i) => layers - 1 - i).map((layer) =>
    rectangle(right - 2, top + 0.8, 2 + (ENDS[layer] ?? 0), edge - top - 0.8, {
      fill: inks.paper,
      width: mm(0.3),
      stroke: inks.grey,
    }),
  );
  return [
    ...below,
    ...patch('wrong', { left, top, right, bottom: edge, torn: ['top'] }),
    ...layersSeen(folding, left, right, edge),
    ...note(point(23.4, middle), centreWords(scene), {
      room: 22,
      align: 'end',
      bold: true,
    }),
    ...note(point(65.5, middle), folding === 'twice' ? papers.foldAndEnds : papers.sideEdge, {
      room: 19.5,
      align: 'start',
    }),
    ...note(point((left + right) / 2, bottom + 5.4), scene.speaker.text(papers.layers, { layers }), {
      ink: inks.grey,
    }),
  ];
}

/** Cloth folded once or not at all, with the panels where they are cut; cut apart, they are laid fold on fold. */
function onTable(scene: Scene, way: 'across' | 'along' | null): Picture {
  const stacked = foldingOf(scene) === 'fold on fold';
  if (way === null) return notFolded(scene, stacked);
  const below = topOf(way) + DEEP + 9;
  const open = openCloth(scene, way);
  if (stacked) return { height: below + 26, marks: [...open, ...stack(scene, below, 9)] };
  const { marks, fitted } = tableView(scene, scene.plan.cloth.chosen.table, {
    left: 17,
    top: below + 4,
    width: 52,
    height: 22,
  });
  return { height: Math.max(38, fitted.box.top + fitted.box.height + 7), marks: [...open, ...marks] };
}

function notFolded(scene: Scene, stacked: boolean): Picture {
  const room = { left: 17, top: 7, width: 52, height: stacked ? 15 : 40 };
  const { marks, fitted } = tableView(scene, scene.plan.cloth.chosen.table, room);
  const { left, top, width, height } = fitted.box;
  const bottom = top + height;
  const cloth = spoken(scene, 'cloth');
  const length = cloth
    ? [measured(point(left, bottom), point(left + width, bottom), scene.speaker.value(cloth), 7)]
    : [];
  return {
    height: stacked ? bottom + 43 : Math.max(38, bottom + 13),
    marks: [...marks, ...length, ...(stacked ? stack(scene, bottom + 14, 7) : [])],
  };
}
