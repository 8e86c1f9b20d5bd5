import type { LaidPiece, Table, TableEdge } from '../../cloth/index.ts';
import { boundsOf, point, polyline } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { area, dimension, inks, label, rectangle, straight, type Ink, type Mark } from '../drawing/index.ts';
import { chalkLine, clothStyle } from './cloth.ts';
import { fitPath, type Fit } from './fit.ts';
import { nameOn } from './layNames.ts';
import { swingMarks, swingsOf } from './laySwings.ts';

/** How a table is drawn: fills of cloth and pieces, the ink on them, and the words where it is drawn large. */
export interface TableLook {
  readonly cloth: Ink;
  readonly piece: Ink;
  readonly line: Ink;
  /** Whether panels are swung with a string: the middles are shown. */
  readonly swung: boolean;
  readonly words: { readonly speaker: Speaker; readonly nameOf: (piece: LaidPiece) => string } | null;
}

/** How far a table reaches with what hangs over it: panels too large for the cloth are drawn too. */
export interface Reach {
  readonly above: number;
  readonly along: number;
  readonly across: number;
}

export function reachOf(table: Table, swung: boolean): Reach {
  const dots = swung ? swingsOf(table).map(({ centre }) => boundsOf(polyline([centre, centre]))) : [];
  const reach = [...table.pieces.map(({ outline }) => boundsOf(outline)), ...dots];
  const least = Math.min(0, ...reach.map((each) => each.top));
  return {
    above: -least,
    along: Math.max(table.along, ...reach.map((each) => each.right)),
    across: Math.max(table.across, ...reach.map((each) => each.bottom)) - least,
  };
}

/** One table to scale, its pieces chalked on it; `fit` says where its upper left corner lies. */
export function tableMarks(table: Table, fit: Fit, look: TableLook): Mark[] {
  const { dx: x, dy: y, scale } = fit;
  const along = table.along * scale;
  const across = table.across * scale;
  const pieces = table.pieces.map((piece) => ({ piece, outline: fitPath(piece.outline, fit) }));
  const { words } = look;
  // What hangs over the cloth is named where it hangs.
  const reach = reachOf(table, words !== null && look.swung);
  const sheet = boundsOf(
    fitPath(polyline([point(0, -reach.above), point(reach.along, reach.across - reach.above)]), fit),
  );
  return [
    rectangle(x, y, along, across, { ...clothStyle, fill: look.cloth }),
    ...edgeLines(table, x, y, along, across),
    ...(table.cut ?? []).map((outline) =>
      area(fitPath(outline, fit), { fill: inks.paper, stroke: look.line, width: mm(0.2) }),
    ),
    ...pieces.flatMap(({ piece, outline }) => [
      area(outline, {
        ...chalkLine,
        fill: look.piece,
        stroke: look.line,
        width: mm(words ? 0.45 : 0.3),
      }),
      ...(words ? nameOn(outline, words.nameOf(piece), sheet, look.piece, look.line) : []),
    ]),
    ...(words && look.swung
      ? swingMarks(table, words.speaker, fit, { halo: look.piece, line: look.line })
      : []),
    ...(words ? measures(table, words.speaker, x, y, along, across) : []),
  ];
}

const isFold = (edge: TableEdge): boolean => edge === 'fold' || edge === 'two folds';

/** Folds are drawn thick, raw ends and selvages thin: the eye finds the fold first. */
function edgeLines(table: Table, x: number, y: number, along: number, across: number): Mark[] {
  const sides = [
    [table.left, point(x, y), point(x, y + across)],
    [table.right, point(x + along, y), point(x + along, y + across)],
    [table.top, point(x, y), point(x + along, y)],
    [table.bottom, point(x, y + across), point(x + along, y + across)],
  ] as const;
  return sides.filter(([edge]) => isFold(edge)).map(([, from, to]) => straight(from, to, { width: mm(1) }));
}

/** Shorter than this, an edge has no room for its own name beside its measure. */
const NAMED = 12;

function measures(
  table: Table,
  speaker: Speaker,
  x: number,
  y: number,
  along: number,
  across: number,
): Mark[] {
  const { tableEdges } = speaker.words;
  const upright = radians(-Math.PI / 2);
  const words = (at: ReturnType<typeof point>, edge: TableEdge, turned: boolean): Mark[] =>
    (turned ? across : along) < NAMED
      ? []
      : [
          label(at, tableEdges[edge], {
            size: mm(3),
            align: 'middle',
            baseline: 'middle',
            bold: isFold(edge),
            ink: isFold(edge) ? inks.ink : inks.grey,
            ...(turned ? { angle: upright } : {}),
          }),
        ];
  const middle = { x: x + along / 2, y: y + across / 2 };
  return [
    ...words(point(middle.x, y - 3), table.top, false),
    ...words(point(middle.x, y + across + 3.4), table.bottom, false),
    ...words(point(x - 3, middle.y), table.left, true),
    ...words(point(x + along + 3, middle.y), table.right, true),
    dimension({
      from: point(x + along, y + across),
      to: point(x, y + across),
      text: speaker.length(table.along),
      offset: mm(-7),
    }),
    dimension({
      from: point(x, y + across),
      to: point(x, y),
      text: speaker.length(table.across),
      offset: mm(-8),
    }),
  ];
}
