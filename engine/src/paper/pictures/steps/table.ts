import type { Lay, TableEdge } from '../../../cloth/index.ts';
import { boundsOf, point, polyline, type Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, straight, type Mark } from '../../drawing/index.ts';
import { chalkLine } from '../cloth.ts';
import { fitInto, type Box, type Fitted } from './fitted.ts';
import { WIDTH, type Scene } from './picture.ts';
import { patch } from './surface.ts';
import { note } from './wording.ts';

interface TableView {
  readonly fitted: Fitted;
  readonly marks: readonly Mark[];
}

/** A table of which only the beginning is drawn has no end on the right. */
type Shown = Omit<Lay['table'], 'right'> & { readonly right: TableEdge | null };

const WIDTHS_SHOWN = 2;

/** Of many straight widths along a bolt the first two, so that they are drawn large; others as they are. */
export function firstWidths({ table }: Lay): Shown {
  const [first] = table.pieces;
  const end = first ? boundsOf(first.outline).right : 0;
  if (end <= 0 || table.along <= (WIDTHS_SHOWN + 1) * end) return table;
  const pieces = table.pieces.filter(({ outline }) => boundsOf(outline).right <= WIDTHS_SHOWN * end + 1);
  return { ...table, along: mm((WIDTHS_SHOWN + 0.3) * end), right: null, pieces };
}

/** How far the layer below looks out. */
const FAN = 1.1;
const isFold = (edge: TableEdge | null): boolean => edge === 'fold' || edge === 'two folds';

/**
 * The cloth as it lies for cutting, to scale, with its panels chalked: folded it is wrong side up; a single layer lies right
 * side up, as panels are drawn, else those with a left and a right would be cut the wrong way round.
 */
export function bareTable(table: Shown, room: Box): TableView {
  const whole = polyline(
    [point(0, 0), point(table.along, 0), point(table.along, table.across), point(0, table.across)],
    { closed: true },
  );
  // Panels that don't fit are drawn all the same: the room holds them too.
  const everything = [...whole, ...table.pieces.flatMap(({ outline }) => outline)];
  const all = fitInto(everything, room, 'top');
  const fitted = { ...all, box: boxOf(all, whole) };
  return {
    fitted,
    marks: [
      ...under(table, fitted.box),
      ...sheet(table, fitted.box),
      ...table.pieces.map(({ outline }) => area(fitted.path(outline), { ...chalkLine, width: mm(0.35) })),
      ...folds(table, fitted.box),
    ],
  };
}

function boxOf({ path }: Fitted, whole: Path): Box {
  const { left, top, width, height } = boundsOf(path(whole));
  return { left, top, width, height };
}

/** The same with its edges named. */
export function tableView(scene: Scene, table: Shown, room: Box): TableView {
  const { fitted, marks } = bareTable(table, room);
  return { fitted, marks: [...marks, ...names(scene, table, fitted.box)] };
}

const sheet = (table: Shown, { left, top, width, height }: Box): Mark[] =>
  patch(table.layers === 1 ? 'right' : 'wrong', {
    left,
    top,
    right: left + width,
    bottom: top + height,
    torn: table.right === null ? ['right'] : [],
  });

/** The layer below looks out where its edge is an end of its own. */
function under(table: Shown, { left, top, width, height }: Box): Mark[] {
  if (table.layers === 1) return [];
  const beyond = (edge: TableEdge | null): number => (edge === null || isFold(edge) ? 0 : FAN);
  const right = left + width + beyond(table.right);
  const bottom = top + height + beyond(table.bottom);
  const corners = [
    point(left - beyond(table.left), top - beyond(table.top)),
    point(right, top - beyond(table.top)),
    point(right, bottom),
    point(left - beyond(table.left), bottom),
  ];
  return [area(polyline(corners, { closed: true }), { fill: inks.paper, width: mm(0.3), stroke: inks.grey })];
}

function folds(table: Shown, { left, top, width, height }: Box): Mark[] {
  const right = left + width;
  const bottom = top + height;
  const sides = [
    [table.left, point(left, top), point(left, bottom)],
    [table.right, point(right, top), point(right, bottom)],
    [table.top, point(left, top), point(right, top)],
    [table.bottom, point(left, bottom), point(right, bottom)],
  ] as const;
  return sides.filter(([edge]) => isFold(edge)).map(([, from, to]) => straight(from, to, { width: mm(1) }));
}

function names(scene: Scene, table: Shown, { left, top, width, height }: Box): Mark[] {
  const { tableEdges } = scene.speaker.words;
  const look = (edge: TableEdge) => ({ bold: isFold(edge), ink: isFold(edge) ? inks.ink : inks.grey });
  const x = left + width / 2;
  const y = top + height / 2;
  const right = left + width + 2.2;
  return [
    ...note(point(x, top - 3.4), tableEdges[table.top], look(table.top)),
    ...note(point(x, top + height + 3.6), tableEdges[table.bottom], look(table.bottom)),
    ...note(point(left - 2.2, y), tableEdges[table.left], {
      ...look(table.left),
      align: 'end',
      room: left - 3,
    }),
    ...(table.right
      ? note(point(right, y), tableEdges[table.right], {
          ...look(table.right),
          align: 'start',
          room: WIDTH - 1 - right,
        })
      : []),
  ];
}
