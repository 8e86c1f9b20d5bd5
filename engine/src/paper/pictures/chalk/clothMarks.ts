import type { FoundTable, TableEdge } from '../../../cloth/index.ts';
import { boundsOf, flatten, point, polyline, type Path } from '../../../geometry/index.ts';
import { mm, radians } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { area, dimension, inks, label, rectangle, straight, type Mark } from '../../drawing/index.ts';
import { foldLine } from '../cloth.ts';
import { fitPoint, type Fit } from '../fit.ts';
import { namedWithin, SCALE_SIZE } from './labels.ts';
import { betweenUprights } from './within.ts';

/** Where a stretch of the cloth lies on the paper. */
export interface Sheet {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly across: number;
}

const isFold = (edge: TableEdge): boolean => edge === 'fold' || edge === 'two folds';

/** Folds are thick, raw ends and selvages thin; where a stretch goes on, the cloth is open. */
export function edges(table: FoundTable, { from, to, left, right, y, across }: Sheet): Mark[] {
  const sides = [
    ...(from <= 0 ? [[table.left, point(left, y), point(left, y + across)] as const] : []),
    ...(to >= table.along - 1 ? [[table.right, point(right, y), point(right, y + across)] as const] : []),
    [table.top, point(left, y), point(right, y)] as const,
    [table.bottom, point(left, y + across), point(right, y + across)] as const,
  ];
  return sides.map(([edge, start, end]) => straight(start, end, { width: mm(isFold(edge) ? 1 : 0.35) }));
}

/** What runs along each edge, and the width of the cloth. */
export function edgeNames(
  table: FoundTable,
  speaker: Speaker,
  of: Sheet & { readonly over: number; readonly under: number },
): Mark[] {
  const { tableEdges } = speaker.words;
  const middle = { x: (of.left + of.right) / 2, y: of.y + of.across / 2 };
  const words = (x: number, y: number, edge: TableEdge, upright: boolean): Mark =>
    label(point(x, y), tableEdges[edge], {
      size: mm(2.8),
      align: 'middle',
      baseline: 'middle',
      bold: isFold(edge),
      ink: isFold(edge) ? inks.ink : inks.grey,
      ...(upright ? { angle: radians(-Math.PI / 2) } : {}),
    });
  return [
    words(middle.x, of.y - of.over - 1.8, table.top, false),
    words(middle.x, of.y + of.across + of.under + 1.8, table.bottom, false),
    ...(of.from <= 0 ? [words(of.left - 2.4, middle.y, table.left, true)] : []),
    ...(of.to >= table.along - 1 ? [words(of.right + 2.6, middle.y, table.right, true)] : []),
    dimension({
      from: point(of.left, of.y + of.across),
      to: point(of.left, of.y),
      text: speaker.length(table.across),
      offset: mm(-5),
      size: mm(2.8),
    }),
  ];
}

/** The rectangle that is left in one piece, with its size. */
export function leftOver(
  { leftOver: rest }: FoundTable,
  { from, to }: Pick<Sheet, 'from' | 'to'>,
  fit: Fit,
  speaker: Speaker,
): Mark[] {
  if (!rest) return [];
  const [left, right] = [Math.max(from, rest.x), Math.min(to, rest.x + rest.along)];
  if (right - left < 5) return [];
  const [start, end] = [
    fitPoint(point(left, rest.y), fit),
    fitPoint(point(right, rest.y + rest.across), fit),
  ];
  const [wide, deep] = [end.x - start.x, end.y - start.y];
  const outline = rectangle(start.x, start.y, wide, deep, { ...foldLine, fill: null });
  // Told once: on the stretch that its middle lies on.
  const middle = rest.x + rest.along / 2;
  if (middle < from || middle >= to) return [outline];
  const text = speaker.text(speaker.words.workshop.leftOver, {
    count: rest.count,
    along: speaker.length(rest.opened.along),
    across: speaker.length(rest.opened.across),
  });
  return [
    outline,
    ...namedWithin(
      { at: point((start.x + end.x) / 2, (start.y + end.y) / 2), across: wide, down: deep },
      [[text]],
      [],
    ),
  ];
}

/** Places that nothing may be cut from, and holes where something was cut. */
export const holes = (
  table: FoundTable,
  stretch: Pick<Sheet, 'from' | 'to'>,
  fit: Fit,
  { words: { workshop } }: Speaker,
): Mark[] => [
  ...(table.cut ?? []).flatMap((cut) => hole(cut, stretch, fit, workshop.cutBefore, 'none')),
  ...table.flaws.flatMap((flaw) => hole(flaw, stretch, fit, workshop.flaw, 'cross')),
];

/** A narrower hole has no room for its name, and its neighbours say what it is. */
const NAMED = 14;

function hole(
  outline: Path,
  { from, to }: Pick<Sheet, 'from' | 'to'>,
  fit: Fit,
  name: string,
  pattern: 'none' | 'cross',
): Mark[] {
  const corners = betweenUprights(flatten(outline).slice(0, -1), from, to).map((at) => fitPoint(at, fit));
  if (corners.length < 3) return [];
  const drawn = polyline(corners, { closed: true });
  const { left, right, top, bottom } = boundsOf(drawn);
  return [
    area(drawn, { pattern, fill: inks.paper, width: mm(0.25) }),
    ...(pattern === 'none' && right - left < NAMED
      ? []
      : [
          label(point((left + right) / 2, (top + bottom) / 2), name, {
            size: mm(SCALE_SIZE),
            align: 'middle' as const,
            baseline: 'middle' as const,
            halo: inks.paper,
          }),
        ]),
  ];
}
