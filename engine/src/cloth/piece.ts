import type { Figure } from '../figure/index.ts';
import { boundsOf, halfTurn, point, translate, type Path } from '../geometry/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import { nestBeside } from './beside.ts';

/** One shape as the cloth sees it: an outline with a width and a depth. */
export interface Piece {
  readonly outline: Path;
  readonly width: Figure<Mm>;
  /** Down the piece's own sheet, margin included. */
  readonly depth: Figure<Mm>;
  readonly left: number;
  readonly top: number;
}

export function pieceOf({ cut }: { readonly cut: Path }): Piece {
  const bounds = boundsOf(cut);
  return {
    outline: cut,
    width: figure.length(mm(bounds.width), 'cloth.panelWidth'),
    depth: figure.length(mm(bounds.height), 'cloth.panelDepth'),
    left: bounds.left,
    top: bounds.top,
  };
}

/** The piece with the upper left corner of its box at (x, y); turned by half a turn where asked. */
export function placed(piece: Piece, x: number, y: number, turned = false): Path {
  if (!turned) return translate(piece.outline, mm(x - piece.left), mm(y - piece.top));
  const middle = point(piece.left + piece.width.value / 2, piece.top + piece.depth.value / 2);
  return translate(halfTurn(piece.outline, middle), mm(x - piece.left), mm(y - piece.top));
}

/** Least distance between the boxes' left sides at which the piece, turned, lies beside itself without overlap. */
export const nestDistance = (piece: Piece): Mm =>
  mm(nestBeside(placed(piece, 0, 0), placed(piece, 0, 0, true)));
