import type { FoundPiece, FoundTable } from '../../../cloth/index.ts';
import {
  boundsOf,
  distance,
  lengthOf,
  startOf,
  tangentAt,
  type Bounds,
  type Path,
  type Point,
} from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';

/** A piece on the cloth, numbered from the start of the length, with what is chalked of it. */
export interface NumberedPiece {
  readonly number: number;
  readonly piece: FoundPiece;
  readonly box: Bounds;
  /** Where its edge turns, in the order of its outline. */
  readonly corners: readonly Point[];
  /** Whether its corners are those of its box: straight all round. */
  readonly isBox: boolean;
}

/** The pieces of a table in the order in which they begin along the cloth; of two that begin alike the upper first. */
export function numbered({ pieces }: Pick<FoundTable, 'pieces'>): NumberedPiece[] {
  return pieces
    .map((piece) => ({ piece, box: boundsOf(piece.outline) }))
    .sort((one, other) => {
      const along = one.box.left - other.box.left;
      return Math.abs(along) > 1 ? along : one.box.top - other.box.top;
    })
    .map(({ piece, box }, i) => {
      const corners = cornersOf(piece.outline);
      return { number: i + 1, piece, box, corners, isBox: isBox(corners, box) };
    });
}

/** Turns smaller than this are no corner that anybody chalks: about 8°. */
const TURN = 0.14;
/** Nearer than this two corners are one. */
const NEAR = 3;

/** The points where an outline turns. */
export function cornersOf(outline: Path): Point[] {
  const found = outline.flatMap((segment, i) => {
    const before = outline.at(i - 1) ?? segment;
    const [into, out] = [tangentAt([before], lengthOf([before])), tangentAt([segment], mm(0))];
    const turn = Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y);
    return Math.abs(turn) > TURN ? [startOf(segment)] : [];
  });
  return found.filter((at, i) => !found.slice(0, i).some((each) => distance(each, at) < NEAR));
}

const isBox = (corners: readonly Point[], { left, right, top, bottom }: Bounds): boolean =>
  corners.length === 4 &&
  corners.every(
    ({ x, y }) =>
      Math.min(Math.abs(x - left), Math.abs(x - right)) < NEAR &&
      Math.min(Math.abs(y - top), Math.abs(y - bottom)) < NEAR,
  );
