import { contains, point, polyline, type Path, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { inks, label, type Mark } from '../../drawing/index.ts';
import { clear, LINE, widthOf, type Box, type Taken } from './labels.ts';

const CORNER_SIZE = 2.5;

/** How far from its corner the words may be moved so that no line runs through them. */
const ALONG = [0, 1, 2, 3, 4, 5, 6];
const ACROSS = [0, 1, 2, 3];
const NEAREST_FIRST = ALONG.flatMap((along) => ACROSS.map((across) => ({ along, across }))).toSorted(
  (one, other) => one.along + one.across - other.along - other.across,
);

/**
 * A distance across at a corner, beside it towards the middle of its piece, as near as no line of the piece runs through
 * it; null where there is no room.
 */
export function cornerLabel(
  at: Point,
  piece: { readonly middle: Point; readonly outline: readonly Point[] },
  text: string,
  taken: Taken,
): Mark | null {
  const wide = widthOf(text, CORNER_SIZE);
  const right = piece.middle.x >= at.x;
  const down = piece.middle.y >= at.y;
  const boxAt = (along: number, across: number): Box => {
    const x = at.x + (right ? 0.9 + along : -0.9 - along - wide);
    const y = at.y + (down ? 1 : -1) * (CORNER_SIZE / 2 + 0.5 + across);
    const half = (CORNER_SIZE * LINE) / 2;
    return { left: x, right: x + wide, top: y - half, bottom: y + half };
  };
  const free = NEAREST_FIRST.map(({ along, across }) => boxAt(along, across)).filter((each) =>
    clear(each, taken),
  );
  const outline = polyline(piece.outline, { closed: true });
  const box = free.find((each) => isWithin(each, outline)) ?? free[0];
  if (!box) return null;
  taken.push(box);
  return label(point(right ? box.left : box.right, (box.top + box.bottom) / 2), text, {
    size: mm(CORNER_SIZE),
    baseline: 'middle',
    align: right ? 'start' : 'end',
    halo: inks.paper,
  });
}

/** Text is small beside its piece: where all four corners of it lie within, no line runs through it. */
const isWithin = ({ left, right, top, bottom }: Box, outline: Path): boolean =>
  [left, right].every((x) => [top, bottom].every((y) => contains(outline, point(x, y))));
