import { mm } from '../../units/index.ts';
import { group, type Mark, type RoleName } from '../drawing/index.ts';

/** What a piece is part of. Pieces of one owner that stand together on a page make one group there. */
export interface Owner {
  readonly role: RoleName;
  readonly alt: string;
}

/** The least that goes onto a page whole: a line of words, a row, a figure. */
export interface Piece {
  readonly height: number;
  /** Air above it; none at the top of a page. */
  readonly gap: number;
  /** Marks from the piece's own top left corner. */
  readonly marks: readonly Mark[];
  /** From the outermost in. */
  readonly owners: readonly Owner[];
  readonly keepWithNext: boolean;
  /** Printed first where the piece begins a page: a table's headings. */
  readonly repeat: Piece | null;
  /** The next piece begins a page. */
  readonly endsPage: boolean;
}

export const owner = (role: RoleName, alt = ''): Owner => ({ role, alt });

export const piece = (height: number, marks: readonly Mark[], changes: Partial<Piece> = {}): Piece => ({
  height,
  marks,
  gap: 0,
  owners: [],
  keepWithNext: false,
  repeat: null,
  endsPage: false,
  ...changes,
});

export interface Placed {
  readonly piece: Piece;
  readonly y: number;
  /** Less than 1 only where a piece is taller than any page. */
  readonly scale: number;
}

/** Pieces one under another from the top, and the height they take. */
export function stack(pieces: readonly Piece[]): {
  readonly placed: readonly Placed[];
  readonly height: number;
} {
  let y = 0;
  const placed = pieces.map((each, i): Placed => {
    y += i === 0 ? 0 : each.gap;
    const at = { piece: each, y, scale: 1 };
    y += each.height;
    return at;
  });
  return { placed, height: y };
}

/** The marks of placed pieces, those of one owner in one group. */
export function assemble(placed: readonly Placed[], depth = 0): readonly Mark[] {
  const marks: Mark[] = [];
  let at = 0;
  while (at < placed.length) {
    const first = placed[at];
    if (!first) break;
    const of = first.piece.owners[depth];
    if (!of) {
      if (first.piece.marks.length > 0)
        marks.push(group('', first.piece.marks, { placement: { dy: mm(first.y), scale: first.scale } }));
      at += 1;
      continue;
    }
    let end = at + 1;
    while (placed[end]?.piece.owners[depth] === of) end += 1;
    marks.push(group('', assemble(placed.slice(at, end), depth + 1), { role: of.role, alt: of.alt }));
    at = end;
  }
  return marks;
}
