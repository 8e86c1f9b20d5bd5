import { boundsOf, point } from '../../../../geometry/index.ts';
import type { PanelShape } from '../../../../skirt/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { fitInto } from '../fitted.ts';
import { lineTo } from '../lines.ts';
import { openPanel, shapeOf } from '../panel.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { cloth, patch } from '../surface.ts';
import { shears, square } from '../tools/index.ts';
import { measured, named, note } from '../wording.ts';

/** The margin comes off the bottom of each panel, square to its side, before any row is chalked. */
export const trim: Draw = (scene) => {
  const { speaker } = scene;
  const { papers } = speaker.words;
  const shape = shapeOf(scene);
  const whole = fitInto(shape.cut, { left: 4, top: 8, width: 36, height: 46 });
  const room = { ...whole.box };
  const { fitted, marks: panel } = openPanel(scene, 'right', {
    ...room,
    height: room.height - (shape.cut === shape.trimmed ? 0 : marginOf(shape) * whole.scale),
  });
  const length = spoken(scene, 'length');
  const trimOff = spoken(scene, 'trimOff');
  const centre = fitted.at(point(0, -shape.topAllowance));
  const raw = fitted.at(point(0, shape.length + shape.hemAllowance));
  const strip = within(3.5, (trimOff?.value ?? 0) * 0.36, 11);
  const edge = 38;
  const marks: Mark[] = [
    ...panel,
    stroke(whole.path(shape.cut), { ...thinLine, dash: 'hidden' }),
    ...(length ? [measured(centre, raw, speaker.value(length), 0)] : []),
    rectangle(whole.box.left - 1.4, raw.y - 6, 8, 8, { width: mm(0.3), stroke: inks.grey }),
    stroke(lineTo([whole.box.left + 6.6, raw.y - 2], [46, 26]), thinLine),
    ...patch('right', { left: 48, top: 12, right: 83, bottom: edge, torn: ['top', 'right'] }),
    square(15, { x: 48, y: edge }),
    ...note(point(67, 18), papers.rightSideUp, { ink: inks.grey, halo: inks.wash, room: 28 }),
    ...note(point(67, edge - 8), papers.rawEdge, { halo: inks.wash, room: 24 }),
  ];
  if (trimOff && trimOff.value > 0.5)
    marks.push(
      ...offcut(edge, strip),
      shears({ x: 63.5, y: edge + 1.6, turn: 183 }),
      measured(point(48, edge), point(48, edge + strip), '', 2.6),
      ...named(point(58, edge + strip + 7), speaker.name(trimOff), speaker.value(trimOff), { room: 22 }),
    );
  return { height: 62, marks };
};

/** The strip below the edge: still one with the panel on the left, cut free and sinking on the right. */
const offcut = (edge: number, strip: number): Mark[] => [
  ...cloth(
    'right',
    lineTo(
      [48, edge],
      [58, edge],
      [83, edge + 5],
      [83, edge + strip + 5],
      [58, edge + strip],
      [48, edge + strip],
      [48, edge],
    ),
    { stroke: null },
  ),
  stroke(
    [
      lineTo([58, edge], [83, edge + 5]),
      lineTo([48, edge], [48, edge + strip], [58, edge + strip], [83, edge + strip + 5]),
      lineTo([58, edge], [83, edge]),
    ],
    { width: mm(0.4) },
  ),
  stroke(lineTo([48, edge], [58, edge]), { dash: 'chalk', width: mm(0.4) }),
];

/** Cloth that is cut off below the raw hem. */
const marginOf = ({ cut, trimmed }: PanelShape): number => boundsOf(cut).bottom - boundsOf(trimmed).bottom;
