import {
  boundsOf,
  endOf,
  mirrorX,
  rotate,
  startOf,
  translate,
  type Path,
  type Point,
} from '../../geometry/index.ts';
import type { Panel } from '../../skirt/index.ts';
import { radians } from '../../units/index.ts';
import type { LaidPiece } from '../lays/table.ts';

/** Where a place of a panel's sheet lies on the table. */
export type OnTable = (at: Point) => Point;

const CLOSE = 0.1;

/** How a panel lies: by how much it is turned, and where the places of its sheet are. */
interface Lies {
  readonly degrees: number;
  readonly at: OnTable;
}

/**
 * How a whole panel lies, read off its drawn outline alone: the turn that brings its sheet's outline over it. Null for
 * half a panel on a fold, or a panel whose image was cut through another layer.
 */
export const liesAs = (piece: LaidPiece, { shape }: Panel): Lies | null => turnedOver(piece, shape.cut, 1);

/**
 * How a panel lies that was cut folded, seen from above: itself, its image through the other layer, or the whole of which half
 * lies against a fold at the lower edge. Of two that are each other's image either may be uppermost; of two alike the second is
 * the image.
 */
export function liesFolded(piece: LaidPiece, { shape }: Panel, at: number): Lies | null {
  if (piece.onFold) return unfoldedFrom(piece, shape.cut);
  const side = at === 0 ? 1 : -1;
  return turnedOver(piece, shape.cut, side) ?? turnedOver(piece, shape.cut, side === 1 ? -1 : 1);
}

/** A rectangle covers itself both ways: then it lies as it is said to. */
const turnsOf = ({ turned }: LaidPiece): readonly number[] =>
  turned ? [90, 270, 180, 0] : [270, 90, 0, 180];

/** `side` is 1 where the panel's own outline is drawn, −1 where it is turned over: cut through another layer, face to face. */
function turnedOver(piece: LaidPiece, cut: Path, side: 1 | -1): Lies | null {
  const sheet = side === 1 ? cut : mirrorX(cut);
  for (const degrees of turnsOf(piece)) {
    const stood = rotate(sheet, radians((degrees * Math.PI) / 180));
    const [one, other] = [boundsOf(stood), boundsOf(piece.outline)];
    const [dx, dy] = [other.left - one.left, other.top - one.top];
    if (covers(translate(stood, dx, dy), piece.outline)) return { degrees, at: moved(degrees, side, dx, dy) };
  }
  return null;
}

/** Its middle along the fold, every corner above that on a corner of the half that is drawn. */
function unfoldedFrom(piece: LaidPiece, cut: Path): Lies | null {
  for (const degrees of turnsOf(piece)) {
    const stood = rotate(cut, radians((degrees * Math.PI) / 180));
    const [one, other] = [boundsOf(stood), boundsOf(piece.outline)];
    const [dx, dy] = [other.left - one.left, other.bottom - (one.top + one.bottom) / 2];
    const above = translate(stood, dx, dy)
      .map(startOf)
      .filter(({ y }) => y < other.bottom - CLOSE);
    if (areCorners(above, piece.outline)) return { degrees, at: moved(degrees, 1, dx, dy) };
  }
  return null;
}

const moved =
  (degrees: number, side: 1 | -1, dx: number, dy: number): OnTable =>
  ({ x: across, y }) => {
    const [angle, x] = [(degrees * Math.PI) / 180, side * across];
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return { x: x * cos - y * sin + dx, y: x * sin + y * cos + dy };
  };

/** Whether a whole panel lies across the bolt. */
export function liesOnItsSide(piece: LaidPiece): boolean {
  const [panel] = piece.panels;
  const lies = panel && !piece.onFold ? liesAs(piece, panel) : null;
  return lies !== null && lies.degrees % 180 === 0;
}

const covers = (a: Path, b: Path): boolean => a.length === b.length && areCorners(a.map(startOf), b);

function areCorners(places: readonly Point[], outline: Path): boolean {
  const corners = outline.flatMap((each) => [startOf(each), endOf(each)]);
  return places.every(({ x, y }) =>
    corners.some((at) => Math.abs(at.x - x) < CLOSE && Math.abs(at.y - y) < CLOSE),
  );
}
