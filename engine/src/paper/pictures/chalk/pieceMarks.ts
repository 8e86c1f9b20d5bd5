import type { FoundPiece } from '../../../cloth/index.ts';
import { flatten, polyline, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { fitPath, fitPoint, type Fit } from '../fit.ts';
import type { NumberedPiece } from './numbered.ts';
import type { Stretch } from './stretches.ts';
import { betweenUprights, uncut } from './within.ts';

/** Whose a piece is, and what it is called. */
export const titleOf = (wearer: string, name: string): string =>
  wearer === '' ? name : `${wearer} · ${name}`;

/** How much of a piece's length lies on a stretch. */
export const shareHere = ({ box }: NumberedPiece, { from, to }: Stretch): number =>
  (Math.min(to, box.right) - Math.max(from, box.left)) / Math.max(1, box.width);

/** Of a piece of which there is less than this on a stretch only the number is told: the rest of it is named. */
const MOSTLY = 0.4;
/** What is narrower than this on paper has no room for a number either. */
const SLIVER = 5;

/** Ways to say whose a piece is and what it is called, the fullest first; none where the rest of it is told elsewhere. */
export function namesOf(
  { number, piece }: NumberedPiece,
  nameOf: (piece: FoundPiece) => string,
  { share, room }: { readonly share: number; readonly room: number },
): string[][] {
  const [no, name] = [String(number), nameOf(piece)];
  if (share < MOSTLY) return room < SLIVER ? [] : [[no]];
  if (piece.wearer === '') return [[`${no} · ${name}`], [no, name], [no]];
  return [
    [`${no} · ${piece.wearer}`, name],
    [`${no} · ${piece.wearer} · ${name}`],
    [`${no} · ${piece.wearer}`],
    [no],
  ];
}

/** A piece as far as it lies on a stretch: its area, its chalk lines, its corners on paper. */
export function shapeOf({ piece, box }: NumberedPiece, from: number, to: number, fit: Fit) {
  const whole = box.left >= from - 1 && box.right <= to + 1;
  const flat = flatten(piece.outline, mm(0.5)).slice(0, -1);
  const corners = (whole ? flat : betweenUprights(flat, from, to)).map((at) => fitPoint(at, fit));
  if (whole) {
    const outline = fitPath(piece.outline, fit);
    return { fill: outline, lines: [outline], corners };
  }
  const [start, end] = [from * fit.scale + fit.dx, to * fit.scale + fit.dx];
  return { fill: polyline(corners, { closed: true }), lines: uncut(corners, start, end), corners };
}

/** Two corners of one piece that lie as far across are told once, unless they lie far apart on paper. */
const FAR = 45;
export function cornersHere({ corners }: NumberedPiece, from: number, to: number, scale: number): Point[] {
  return corners
    .filter(({ x }) => x >= from - 1 && x <= to + 1)
    .filter(
      (at, i, all) =>
        !all.slice(0, i).some((each) => Math.abs(each.y - at.y) < 1 && Math.abs(each.x - at.x) * scale < FAR),
    );
}
