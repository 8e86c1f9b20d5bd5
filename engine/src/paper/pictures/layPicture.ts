import type { Lay, TableEdge } from '../../cloth/index.ts';
import { boundsOf, point } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import {
  area,
  dimension,
  drawing,
  inks,
  label,
  rectangle,
  straight,
  type Drawing,
  type Ink,
  type Mark,
} from '../drawing/index.ts';
import { chalkOn, mixed } from './chalkOn.ts';
import { chalkLine, clothStyle } from './cloth.ts';
import { fitPath, scaleInto, type Fit } from './fit.ts';

/** How large a lay is drawn: with its measures and words, or as a small picture to compare. */
export type LaySize = 'large' | 'small';

/** For the screen: the cloth in its own colour, chalked with the chalk that is seen on it. */
export interface LayLook {
  readonly cloth: Ink;
}

/** Fill of the cloth and of its panels, and the ink on them; on paper a wash that every printer prints. */
function dressOf(look: LayLook | undefined): {
  readonly cloth: Ink;
  readonly piece: Ink;
  readonly line: Ink;
} {
  if (!look) return { cloth: inks.wash, piece: inks.paper, line: inks.ink };
  const line = chalkOn(look.cloth);
  return { cloth: look.cloth, piece: mixed(look.cloth, line, 0.16), line };
}

const margins = { large: { side: 20, top: 8, bottom: 15 }, small: { side: 3, top: 3, bottom: 3 } } as const;

/** The cloth on the table, to scale, with the panels chalked on it. The bolt runs from left to right. */
export function layPicture(
  lay: Lay,
  speaker: Speaker,
  size: LaySize,
  room: { readonly width: Mm; readonly height: Mm },
  look?: LayLook,
): Drawing {
  const { table } = lay;
  const dress = dressOf(look);
  const { side, top, bottom } = margins[size];
  // Panels too large for the cloth hang over it: they are drawn too, within the picture.
  const reach = table.pieces.map(({ outline }) => boundsOf(outline));
  const least = Math.min(0, ...reach.map((each) => each.top));
  const deepest = Math.max(table.across, ...reach.map((each) => each.bottom)) - least;
  const longest = Math.max(table.along, ...reach.map((each) => each.right));
  const scale = scaleInto(longest, deepest, {
    width: mm(room.width - 2 * side),
    height: mm(room.height - top - bottom),
  });
  const along = table.along * scale;
  const across = table.across * scale;
  const above = top - least * scale;
  const fit: Fit = { scale, dx: side, dy: above };
  const pieces = lay.table.pieces.flatMap((piece): Mark[] => {
    const outline = fitPath(piece.outline, fit);
    const bounds = boundsOf(outline);
    const names = piece.panels
      .map(({ name, number }) => speaker.words.panels[name] + (name === 'width' ? ` ${String(number)}` : ''))
      .join(' + ');
    const words =
      size === 'large'
        ? [
            label(middleOf(bounds), names, {
              size: mm(3.4),
              align: 'middle',
              baseline: 'middle',
              halo: dress.piece,
              ink: dress.line,
            }),
          ]
        : [];
    return [
      area(outline, {
        ...chalkLine,
        fill: dress.piece,
        stroke: dress.line,
        width: mm(size === 'large' ? 0.45 : 0.3),
      }),
      ...words,
    ];
  });
  const { papers, lays } = speaker.words;
  return drawing({
    width: mm(longest * scale + 2 * side),
    height: mm(deepest * scale + top + bottom),
    title: lays[lay.kind],
    description: speaker.text(papers.altLay, {
      lay: lay.kind,
      layers: table.layers,
      cloth: speaker.value(lay.clothAfter),
    }),
    marks: [
      rectangle(side, above, along, across, { ...clothStyle, fill: dress.cloth }),
      ...edgeLines(lay, side, above, along, across),
      ...pieces,
      ...(size === 'large' ? measures(lay, speaker, side, above, along, across) : []),
    ],
  });
}

const middleOf = ({
  left,
  top,
  width,
  height,
}: {
  left: number;
  top: number;
  width: number;
  height: number;
}) => point(left + width / 2, top + height / 2);

const isFold = (edge: TableEdge): boolean => edge === 'fold' || edge === 'two folds';

/** Folds are drawn thick, raw ends and selvages thin: the eye finds the fold first. */
function edgeLines({ table }: Lay, x: number, y: number, along: number, across: number): Mark[] {
  const sides = [
    [table.left, point(x, y), point(x, y + across)],
    [table.right, point(x + along, y), point(x + along, y + across)],
    [table.top, point(x, y), point(x + along, y)],
    [table.bottom, point(x, y + across), point(x + along, y + across)],
  ] as const;
  return sides.filter(([edge]) => isFold(edge)).map(([, from, to]) => straight(from, to, { width: mm(1) }));
}

function measures(
  { table }: Lay,
  speaker: Speaker,
  x: number,
  y: number,
  along: number,
  across: number,
): Mark[] {
  const { tableEdges } = speaker.words;
  const upright = radians(-Math.PI / 2);
  const words = (at: ReturnType<typeof point>, edge: TableEdge, turned: boolean): Mark =>
    label(at, tableEdges[edge], {
      size: mm(3),
      align: 'middle',
      baseline: 'middle',
      bold: isFold(edge),
      ink: isFold(edge) ? inks.ink : inks.grey,
      ...(turned ? { angle: upright } : {}),
    });
  const middle = { x: x + along / 2, y: y + across / 2 };
  return [
    words(point(middle.x, y - 3), table.top, false),
    words(point(middle.x, y + across + 3.4), table.bottom, false),
    words(point(x - 3, middle.y), table.left, true),
    words(point(x + along + 3, middle.y), table.right, true),
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
