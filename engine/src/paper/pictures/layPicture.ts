import type { Lay, MoreTable, Table } from '../../cloth/index.ts';
import { point } from '../../geometry/index.ts';
import type { Skirt } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { drawing, inks, label, type Drawing, type Ink, type Mark } from '../drawing/index.ts';
import { chalkOn, mixed } from './chalkOn.ts';
import { namesOf } from './layNames.ts';
import { reachOf, tableMarks, type Reach } from './layTable.ts';

/** How large a lay is drawn: with its measures and words, or as a small picture to compare. */
export type LaySize = 'large' | 'small';

/** For the screen the cloth in its own colour, chalked with the chalk that is seen on it. */
export interface LayLook {
  /** Whose pieces they are: a lay of one of its cloths does not hold them all, and they are named among all. */
  readonly skirt: Pick<Skirt, 'panels' | 'parts'>;
  /** Left out on paper. */
  readonly cloth?: Ink;
  /** Whether panels are swung with a string: its middles are shown where a lay is drawn large. */
  readonly swung?: boolean;
}

/** Fill of the cloth and of its panels, and the ink on them; on paper a wash that every printer prints. */
function dressOf({ cloth }: Pick<LayLook, 'cloth'>): {
  readonly cloth: Ink;
  readonly piece: Ink;
  readonly line: Ink;
} {
  if (!cloth) return { cloth: inks.wash, piece: inks.paper, line: inks.ink };
  const line = chalkOn(cloth);
  return { cloth, piece: mixed(cloth, line, 0.16), line };
}

const margins = {
  large: { side: 20, top: 8, bottom: 15, caption: 6 },
  small: { side: 3, top: 3, bottom: 3, caption: 0 },
} as const;

interface Sheet {
  readonly table: Table;
  readonly reach: Reach;
  readonly caption: string;
  readonly where: MoreTable['where'] | 'first';
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
 * a single layer besides is drawn after it, and so is every other length, all to the same scale.
 */
export function layPicture(
  lay: Lay,
  speaker: Speaker,
  size: LaySize,
  room: { readonly width: Mm; readonly height: Mm },
  { swung = false, ...look }: LayLook,
): Drawing {
  const { papers, lays } = speaker.words;
  const shown = swung && size === 'large';
  const sheets: [Sheet, ...Sheet[]] = [
    { table: lay.table, reach: reachOf(lay.table, shown), caption: '', where: 'first' },
    ...lay.more.map((table) => ({
      table,
      reach: reachOf(table, shown),
      where: table.where,
      caption: papers.layMore[table.where],
    })),
  ];
  const { scale, cells, width, height } = arranged(sheets, size, room);
  const words = size === 'large' ? { speaker, nameOf: namesOf(look.skirt, speaker) } : null;
  const dress = { ...dressOf(look), words, swung };
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

/** Side by side, one below the other, or what is left beside the panels below both: whichever is drawn largest. */
function arranged(sheets: readonly [Sheet, ...Sheet[]], size: LaySize, room: Room): Arranged {
  const [first, ...others] = sheets;
  const beside = others.filter(({ where }) => where === 'beside');
  const further = others.filter(({ where }) => where !== 'beside');
  const ways = [[sheets], sheets.map((sheet) => [sheet]), [[first, ...further], beside]]
    .map((rows) => rows.filter((row) => row.length > 0))
    .map((rows) => inRows(rows, size, room));
  return ways.reduce((best, way) => (way.scale > best.scale + 1e-9 ? way : best));
}

interface Room {
  readonly width: Mm;
  readonly height: Mm;
}

/** A drawing is no smaller than this, though it runs out of its room. */
const LEAST_SCALE = 1e-4;

/** Rows of tables to the largest scale at which all have room. */
function inRows(rows: readonly (readonly Sheet[])[], size: LaySize, room: Room): Arranged {
  const { side, top, bottom, caption } = margins[size];
  const gap = size === 'large' ? 1.2 * side : 2 * side;
  const captioned = (row: readonly Sheet[]): number =>
    row.some((each) => each.caption !== '') ? caption : 0;
  const frame = sum(rows.map((row) => top + bottom + captioned(row)));
  const deep = rows.map((row) => Math.max(...row.map(({ reach }) => reach.across)));
  const widthAt = (sheet: Sheet, scale: number): number =>
    Math.max(sheet.reach.along * scale, captionWidth(sheet, size));
  const rowAt = (row: readonly Sheet[], scale: number): number =>
    2 * side + (row.length - 1) * gap + sum(row.map((sheet) => widthAt(sheet, scale)));
  const scale = Math.max(LEAST_SCALE, (room.height - frame) / sum(deep));
  const narrowed = rows.reduce((most, row) => Math.min(most, scaleOf(row)), scale);
  const cells: Cell[] = [];
  let y = 0;
  for (const [i, row] of rows.entries()) {
    y += top + captioned(row);
    let x: number = side;
    for (const sheet of row) {
      cells.push({ sheet, x, y });
      x += widthAt(sheet, narrowed) + gap;
    }
    y += (deep[i] ?? 0) * narrowed + bottom;
  }
  return {
    scale: narrowed,
    cells,
    width: Math.max(...rows.map((row) => rowAt(row, narrowed))),
    height: y,
  };

  /** Largest scale at which a row is no wider than the room: a table narrower than its caption takes the caption's width. */
  function scaleOf(row: readonly Sheet[]): number {
    let wide = [...row];
    for (;;) {
      const narrow = row.filter((sheet) => !wide.includes(sheet));
      const left =
        room.width -
        2 * side -
        (row.length - 1) * gap -
        sum(narrow.map((sheet) => captionWidth(sheet, size)));
      const found = left / sum(wide.map(({ reach }) => reach.along));
      const still = wide.filter((sheet) => captionWidth(sheet, size) <= sheet.reach.along * found);
      if (left <= 0 || still.length === 0) return LEAST_SCALE;
      if (still.length === wide.length) return found;
      wide = still;
    }
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);
