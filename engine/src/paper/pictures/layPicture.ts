import type { Lay, Table } from '../../cloth/index.ts';
import { point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { drawing, inks, label, type Drawing, type Ink, type Mark } from '../drawing/index.ts';
import { chalkOn, mixed } from './chalkOn.ts';
import { scaleInto } from './fit.ts';
import { namesIn } from './layNames.ts';
import { reachOf, tableMarks, type Reach } from './layTable.ts';

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

const margins = {
  large: { side: 20, top: 8, bottom: 15, caption: 6 },
  small: { side: 3, top: 3, bottom: 3, caption: 0 },
} as const;

interface Sheet {
  readonly table: Table;
  readonly reach: Reach;
  readonly caption: string;
}

/** Where a table lies on the paper, and the room it takes there. */
interface Cell {
  readonly sheet: Sheet;
  readonly x: number;
  readonly y: number;
}

interface Arranged {
  readonly scale: number;
  readonly cells: readonly Cell[];
  readonly width: number;
  readonly height: number;
}

/**
 * The cloth on the table, to scale, with its pieces chalked on it. The bolt runs from left to right. Cloth that is laid in
 * a single layer besides is drawn after it, to the same scale.
 */
export function layPicture(
  lay: Lay,
  speaker: Speaker,
  size: LaySize,
  room: { readonly width: Mm; readonly height: Mm },
  look?: LayLook,
): Drawing {
  const { papers, lays } = speaker.words;
  const sheets: [Sheet, ...Sheet[]] = [
    { table: lay.table, reach: reachOf(lay.table), caption: '' },
    ...lay.more.map((table) => ({
      table,
      reach: reachOf(table),
      caption: table.where === 'beside' ? papers.layBeside : papers.layBeyond,
    })),
  ];
  const ways = [sideBySide(sheets, size, room), oneBelowTheOther(sheets, size, room)];
  const { scale, cells, width, height } = ways.reduce((best, way) => (way.scale > best.scale ? way : best));
  const words = size === 'large' ? { speaker, nameOf: namesIn(lay, speaker) } : null;
  const dress = { ...dressOf(look), words };
  return drawing({
    width: mm(width),
    height: mm(height),
    title: lays[lay.kind],
    description: speaker.text(papers.altLay, {
      lay: lay.kind,
      layers: lay.table.layers,
      cloth: speaker.value(lay.clothAfter),
    }),
    marks: cells.flatMap(({ sheet, x, y }): Mark[] => [
      ...tableMarks(sheet.table, { scale, dx: x, dy: y + sheet.reach.above * scale }, dress),
      ...(words && sheet.caption !== ''
        ? [
            label(point(x, y - 8.5), sheet.caption, {
              size: mm(CAPTION_SIZE),
              baseline: 'middle',
              bold: true,
            }),
          ]
        : []),
    ]),
  });
}

const CAPTION_SIZE = 3;
/** Width of a bold letter for each unit of size, at most: a caption never runs out of its drawing. */
const LETTER = 0.58;

/** Least width of paper for a table: that of the caption above it. */
const captionWidth = ({ caption }: Sheet, size: LaySize): number =>
  size === 'large' ? LETTER * CAPTION_SIZE * caption.length : 0;

function sideBySide(sheets: readonly Sheet[], size: LaySize, room: { width: Mm; height: Mm }): Arranged {
  const { side, bottom, caption } = margins[size];
  const top = margins[size].top + (sheets.length > 1 ? caption : 0);
  const across = Math.max(...sheets.map(({ reach }) => reach.across));
  const gap = size === 'large' ? 1.2 * side : 2 * side;
  const width = room.width - 2 * side - (sheets.length - 1) * gap;
  const height = mm(room.height - top - bottom);
  const widest = (scale: number) => (sheet: Sheet) =>
    Math.max(sheet.reach.along * scale, captionWidth(sheet, size));
  let scale = scaleInto(sum(sheets.map(({ reach }) => reach.along)), across, { width: mm(width), height });
  // A table narrower than its caption takes the caption's room from the others.
  for (let i = 0; i < sheets.length; i++) {
    const narrow = sheets.filter((sheet) => widest(scale)(sheet) > sheet.reach.along * scale);
    const wide = sheets.filter((sheet) => !narrow.includes(sheet));
    if (narrow.length === 0 || wide.length === 0) break;
    const left = Math.max(width / 8, width - sum(narrow.map((sheet) => captionWidth(sheet, size))));
    scale = Math.min(scale, left / sum(wide.map(({ reach }) => reach.along)));
  }
  let x: number = side;
  const cells = sheets.map((sheet) => {
    const cell = { sheet, x, y: top };
    x += widest(scale)(sheet) + gap;
    return cell;
  });
  return { scale, cells, width: x - gap + side, height: across * scale + top + bottom };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

function oneBelowTheOther(
  sheets: readonly Sheet[],
  size: LaySize,
  room: { width: Mm; height: Mm },
): Arranged {
  const { side, top, bottom, caption } = margins[size];
  const along = Math.max(...sheets.map(({ reach }) => reach.along));
  const across = sum(sheets.map(({ reach }) => reach.across));
  const between = top + bottom + caption;
  const scale = scaleInto(along, across, {
    width: mm(room.width - 2 * side),
    height: mm(Math.max(1, room.height - top - bottom - (sheets.length - 1) * between)),
  });
  let y: number = top;
  const cells = sheets.map((sheet) => {
    const cell = { sheet, x: side, y };
    y += sheet.reach.across * scale + between;
    return cell;
  });
  const wide = Math.max(along * scale, ...sheets.map((sheet) => captionWidth(sheet, size)));
  return { scale, cells, width: wide + 2 * side, height: y - between + bottom };
}
