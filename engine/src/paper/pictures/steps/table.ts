import type { Lay, TableEdge } from '../../../cloth/index.ts';
import { point, polyline } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, straight, type Mark } from '../../drawing/index.ts';
import { chalkLine } from '../cloth.ts';
import { fitInto, type Box, type Fitted } from './fitted.ts';
import type { Scene } from './picture.ts';
import { cloth } from './surface.ts';
import { note } from './wording.ts';

const FAN = 1.1;
const isFold = (edge: TableEdge): boolean => edge === 'fold' || edge === 'two folds';

/** The cloth as it lies for cutting, to scale, wrong side up, with its panels chalked and its edges named. */
export function tableView(scene: Scene, lay: Lay, room: Box): { fitted: Fitted; marks: Mark[] } {
  const { table } = lay;
  const whole = polyline(
    [point(0, 0), point(table.along, 0), point(table.along, table.across), point(0, table.across)],
    { closed: true },
  );
  const fitted = fitInto(whole, room, 'top');
  const { left, top, width, height } = fitted.box;
  const marks: Mark[] = [
    ...under(lay, left, top, width, height),
    ...cloth('wrong', fitted.path(whole), { width: mm(0.3) }),
    ...table.pieces.map(({ outline }) => area(fitted.path(outline), { ...chalkLine, width: mm(0.35) })),
    ...foldsOf(lay, left, top, width, height),
    ...names(scene, lay, left, top, width, height),
  ];
  return { fitted, marks };
}

/** The layer below looks out where its edge is an end of its own. */
function under({ table }: Lay, x: number, y: number, width: number, height: number): Mark[] {
  if (table.layers === 1) return [];
  const shift = (edge: TableEdge): number => (isFold(edge) ? 0 : FAN);
  const corners = [
    point(x - shift(table.left), y - shift(table.top)),
    point(x + width + shift(table.right), y - shift(table.top)),
    point(x + width + shift(table.right), y + height + shift(table.bottom)),
    point(x - shift(table.left), y + height + shift(table.bottom)),
  ];
  return [area(polyline(corners, { closed: true }), { fill: inks.paper, width: mm(0.3), stroke: inks.grey })];
}

function foldsOf({ table }: Lay, x: number, y: number, width: number, height: number): Mark[] {
  const sides = [
    [table.left, point(x, y), point(x, y + height)],
    [table.right, point(x + width, y), point(x + width, y + height)],
    [table.top, point(x, y), point(x + width, y)],
    [table.bottom, point(x, y + height), point(x + width, y + height)],
  ] as const;
  return sides.filter(([edge]) => isFold(edge)).map(([, from, to]) => straight(from, to, { width: mm(1) }));
}

function names(scene: Scene, { table }: Lay, x: number, y: number, width: number, height: number): Mark[] {
  const { tableEdges } = scene.speaker.words;
  const look = (edge: TableEdge) => ({ bold: isFold(edge), ink: isFold(edge) ? inks.ink : inks.grey });
  const middle = x + width / 2;
  return [
    ...note(point(middle, y - 3.4), tableEdges[table.top], look(table.top)),
    ...note(point(middle, y + height + 3.6), tableEdges[table.bottom], look(table.bottom)),
    ...note(point(x - 2.2, y + height / 2), tableEdges[table.left], { ...look(table.left), align: 'end', room: x - 3 }),
    ...note(point(x + width + 2.2, y + height / 2), tableEdges[table.right], {
      ...look(table.right),
      align: 'start',
      room: 84 - x - width - 2.2,
    }),
  ];
}
