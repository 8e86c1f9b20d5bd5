import { boundsOf, endOf, rotate, startOf, translate, type Path, type Point } from '../../geometry/index.ts';
import type { Panel } from '../../skirt/index.ts';
import { radians } from '../../units/index.ts';
import type { LaidPiece } from '../lays/table.ts';

/** Where a place of a panel's sheet lies on the table. */
export type OnTable = (at: Point) => Point;

const CLOSE = 0.1;

/**
 * How a whole panel lies, read off its drawn outline alone: the turn that brings its sheet's outline over it. Null for
 * half a panel on a fold, or a panel whose image was cut through another layer.
 */
export function liesAs(
  { outline, turned }: LaidPiece,
  { shape }: Panel,
): { readonly degrees: number; readonly at: OnTable } | null {
  // A rectangle covers itself both ways: then it lies as it is said to.
  const turns = turned ? [90, 270, 180, 0] : [270, 90, 0, 180];
  for (const degrees of turns) {
    const angle = radians((degrees * Math.PI) / 180);
    const stood = rotate(shape.cut, angle);
    const [one, other] = [boundsOf(stood), boundsOf(outline)];
    const [dx, dy] = [other.left - one.left, other.top - one.top];
    if (!covers(translate(stood, dx, dy), outline)) continue;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return { degrees, at: ({ x, y }) => ({ x: x * cos - y * sin + dx, y: x * sin + y * cos + dy }) };
  }
  return null;
}

/** Whether a whole panel lies across the bolt. */
export function liesOnItsSide(piece: LaidPiece): boolean {
  const [panel] = piece.panels;
  const lies = panel && !piece.onFold ? liesAs(piece, panel) : null;
  return lies !== null && lies.degrees % 180 === 0;
}

function covers(a: Path, b: Path): boolean {
  if (a.length !== b.length) return false;
  const corners = b.flatMap((each) => [startOf(each), endOf(each)]);
  return a
    .map(startOf)
    .every(({ x, y }) => corners.some((at) => Math.abs(at.x - x) < CLOSE && Math.abs(at.y - y) < CLOSE));
}
