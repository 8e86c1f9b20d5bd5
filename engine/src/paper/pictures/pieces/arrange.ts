import { boundsOf, type Bounds } from '../../../geometry/index.ts';
import type { Mm } from '../../../units/index.ts';
import type { Fit } from '../fit.ts';
import { note } from '../steps/wording.ts';
import type { ChartPiece } from './chartPiece.ts';

/** Where one piece and its words lie. */
export interface Cell {
  readonly piece: ChartPiece;
  readonly fit: Fit;
  readonly x: number;
  readonly width: number;
  /** Middle of its title, and of each of its notes. */
  readonly titleY: number;
  readonly notesY: readonly number[];
}

export interface Arranged {
  readonly scale: number;
  readonly cells: readonly Cell[];
  readonly height: number;
}

const GAP = 4;
const BETWEEN = 3.2;
/** A small piece still has room for its words. */
const LEAST_WIDTH = 27;
/** No chart is drawn larger than this: a doll's skirt would fill a wall. */
const LARGEST = 0.3;
const SMALLEST = 0.004;
/** Mean width of a letter or a figure, for each unit of size. */
const LETTER = 0.54;
const HALVINGS = 26;

/** All pieces in rows, to the largest scale at which they go into the room. */
export function arranged(
  pieces: readonly ChartPiece[],
  room: { readonly width: Mm; readonly height: Mm },
  size: number,
): Arranged {
  let [low, high] = [SMALLEST, LARGEST];
  let best = inRows(pieces, low, room.width, size);
  for (let i = 0; i < HALVINGS; i++) {
    const scale = (low + high) / 2;
    const tried = inRows(pieces, scale, room.width, size);
    if (tried.height <= room.height && tried.widest <= room.width) [low, best] = [scale, tried];
    else high = scale;
  }
  return best;
}

interface Sized {
  readonly piece: ChartPiece;
  readonly box: Bounds;
  readonly left: number;
  readonly width: number;
  readonly title: number;
  readonly above: number;
  readonly tall: number;
  readonly below: number;
  readonly notes: readonly number[];
  readonly height: number;
}

function sized(piece: ChartPiece, scale: number, most: number, size: number): Sized {
  const box = boxOf(piece);
  // Words of a narrow piece reach beyond it.
  const beyond = (side: -1 | 1): number =>
    Math.max(
      0,
      ...[...piece.above, ...piece.below].map(({ from, to, text }) => {
        const middle = (from + to) / 2;
        const room = (side < 0 ? middle - box.left : box.right - middle) * scale;
        return (LETTER * size * text.length) / 2 - room;
      }),
    );
  const left = Math.max(piece.down === '' ? 0.4 : size * 1.5, beyond(-1));
  const width = Math.min(most, Math.max(LEAST_WIDTH, left + box.width * scale + Math.max(0.6, beyond(1))));
  const tallOf = (text: string, em: number): number =>
    note({ x: 0, y: 0 }, text, { room: width, size: em as Mm }).length * em * 1.15;
  const title = tallOf(piece.title, size * 1.05);
  const tall = box.height * scale;
  // The length that stands upright beside a low piece reaches beyond it above and below.
  const over = Math.max(0, (LETTER * size * piece.down.length - tall) / 2 + 0.6);
  const above = Math.max(over, piece.above.length > 0 ? size * 1.25 + 1.6 : 1.2);
  const below = Math.max(over, piece.below.length > 0 ? size * 1.25 + 2 : 1.6);
  const notes = piece.notes.map((text) => tallOf(text, size * 0.94));
  const height = title + above + tall + below + notes.reduce((sum, each) => sum + each, 0);
  return { piece, box, left, width, title, above, tall, below, notes, height };
}

/** What is drawn of a piece: of a part of a circle its corner too. */
function boxOf({ shape, swung }: ChartPiece): Bounds {
  const bounds = boundsOf(shape.cut);
  if (!swung) return bounds;
  const top = Math.min(bounds.top, swung.corner.y) as Mm;
  return { ...bounds, top, height: (bounds.bottom - top) as Mm };
}

function inRows(
  pieces: readonly ChartPiece[],
  scale: number,
  room: number,
  size: number,
): Arranged & { readonly widest: number } {
  const all = pieces.map((piece) => sized(piece, scale, room, size));
  const rows: Sized[][] = [];
  let used = Infinity;
  for (const each of all) {
    if (used + GAP + each.width > room) {
      rows.push([]);
      used = -GAP;
    }
    rows.at(-1)?.push(each);
    used += GAP + each.width;
  }
  const cells: Cell[] = [];
  let y = 0;
  rows.forEach((row, i) => {
    if (i > 0) y += BETWEEN;
    const free = room - row.reduce((sum, { width }) => sum + width, 0) - (row.length - 1) * GAP;
    const more = Math.min(8, free / row.length);
    let x = 0;
    // Titles of one line and of two: the pieces below them begin at one level.
    const level = Math.max(...row.map(({ title, above }) => title + above));
    for (const each of row) {
      cells.push(cellAt(each, scale, x, y, level));
      x += each.width + GAP + more;
    }
    y += level + Math.max(...row.map(({ height, title, above }) => height - title - above));
  });
  const widest = Math.max(0, ...all.map(({ box, left }) => left + box.width * scale + 0.6));
  return { scale, cells, height: y, widest };
}

function cellAt(of: Sized, scale: number, x: number, y: number, level: number): Cell {
  const { piece, box, left, width, title, tall, below, notes } = of;
  const top = y + level;
  let at = top + tall + below;
  const notesY = notes.map((height) => {
    const middle = at + height / 2;
    at += height;
    return middle;
  });
  return {
    piece,
    fit: { scale, dx: x + left - box.left * scale, dy: top - box.top * scale },
    x,
    width,
    titleY: y + title / 2,
    notesY,
  };
}
