import type { Figure } from '../../figure/index.ts';
import { boundsOf, rotate, translate, type Path } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { Cutting } from '../blocks.ts';
import { figure } from '../codes.ts';
import { labelsOf, type CutPiece } from '../cutPieces.ts';
import type { Rect } from '../free.ts';
import { nestDistance, placed, type Piece } from '../piece.ts';
import { fitsIn, type LayInput } from './lay.ts';
import type { LaidPiece } from './table.ts';

/** One arrangement of all pieces on a single layer. */
export interface Arrangement {
  readonly length: Figure<Mm>;
  readonly used: Mm;
  readonly sideways: boolean;
  readonly headToTail: boolean;
  readonly pieces: readonly LaidPiece[];
  /** The rectangles that they take. */
  readonly boxes: readonly Rect[];
  /** Those that are too large for the cloth. */
  readonly unfit: readonly Cutting[];
}

/** The piece with its length along the bolt, its waist towards the start; (x, y) is its upper left corner. */
export function upright(piece: Piece, x: number, y: number, turned = false): Path {
  const laid = rotate(placed(piece, 0, 0, turned), radians(-Math.PI / 2));
  return translate(laid, x, y + piece.width.value);
}

/** Alike panels laid by rule. */
function byRule(
  { piece, copies }: CutPiece,
  rule: Pick<Arrangement, 'length' | 'used' | 'sideways' | 'headToTail'>,
  turnedAt: (i: number) => boolean,
  pieceAt: (i: number) => Path,
): Arrangement {
  const pieces = copies.map((copy, i) => ({
    outline: pieceAt(i),
    ...labelsOf([copy]),
    onFold: false,
    turned: turnedAt(i),
  }));
  const size = rule.sideways
    ? { along: piece.width.value, across: piece.depth.value }
    : { along: piece.depth.value, across: piece.width.value };
  const boxes = pieces.map(({ outline }) => {
    const { left, top } = boundsOf(outline);
    return { x: left, y: top, ...size };
  });
  return { ...rule, pieces, boxes, unfit: [] };
}

/** Panels' length along the bolt: as many abreast as the width holds, then the next row. */
export function alongBolt(one: CutPiece, { fabric }: LayInput, headToTail: boolean): Arrangement[] {
  const { piece, copies } = one;
  const step = headToTail ? nestDistance(piece) : piece.width.value;
  if (!fitsIn(piece.width.value, fabric.usable.value)) return [];
  const room = fabric.usable.value - piece.width.value;
  const perRow = Math.min(copies.length, 1 + Math.floor(room / step + 1e-9));
  const count = Math.ceil(copies.length / perRow);
  const length = figure.length(mm(count * piece.depth.value), 'cloth.rowsStacked', {
    rows: figure.count(count, 'cloth.rows'),
    depth: piece.depth,
  });
  const turnedAt = (i: number): boolean => headToTail && (i % perRow) % 2 === 1;
  const used = mm(piece.width.value + (perRow - 1) * step);
  const rule = { length, used, sideways: false, headToTail: headToTail && perRow > 1 };
  return [
    byRule(one, rule, turnedAt, (i) =>
      upright(
        piece,
        Math.floor(i / perRow) * piece.depth.value,
        fabric.selvage.value + (i % perRow) * step,
        turnedAt(i),
      ),
    ),
  ];
}

/** Panels' length across the bolt: side by side along it, in as many rows as the width holds. */
export function acrossBolt(one: CutPiece, { fabric }: LayInput, headToTail: boolean): Arrangement[] {
  const { piece, copies } = one;
  const step = headToTail ? nestDistance(piece) : piece.width.value;
  const count = Math.min(copies.length, Math.floor(fabric.usable.value / piece.depth.value + 1e-9));
  if (count < 1) return [];
  const perRow = Math.ceil(copies.length / count);
  const length = figure.length(
    mm(piece.width.value + (perRow - 1) * step),
    headToTail ? 'cloth.headToTail' : 'cloth.abreast',
    {
      width: piece.width,
      more: figure.count(perRow - 1, 'cloth.more'),
      step: figure.length(mm(step), 'cloth.nest'),
    },
  );
  const turnedAt = (i: number): boolean => headToTail && (i % perRow) % 2 === 1;
  const used = mm(count * piece.depth.value);
  return [
    byRule(one, { length, used, sideways: true, headToTail: headToTail && perRow > 1 }, turnedAt, (i) =>
      placed(
        piece,
        (i % perRow) * step,
        fabric.selvage.value + Math.floor(i / perRow) * piece.depth.value,
        turnedAt(i),
      ),
    ),
  ];
}
