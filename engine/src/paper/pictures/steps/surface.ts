import { boundsOf, chordWithin, line, point, polyline, type Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, stroke, type Mark, type Style } from '../../drawing/index.ts';
import { lineTo, wavy } from './lines.ts';

/**
 * One convention over all drawings: the right side of the cloth is washed with a light tone, its wrong side is
 * bare with thin falling lines (ribbons are filled with rising ones).
 */
export type Face = 'right' | 'wrong';

const FALLING = 3.2;

/** The wrong side's thin lines within an outline. */
function fallingLines(outline: Path): Path[] {
  const { left, top, right, bottom } = boundsOf(outline);
  const found: Path[] = [];
  const first = Math.ceil((top - right) / FALLING);
  for (let i = first; i * FALLING < bottom - left; i++) {
    const c = i * FALLING;
    found.push(
      ...chordWithin(outline, [line(point(left - 1, left - 1 + c), point(right + 1, right + 1 + c))]),
    );
  }
  return found;
}

/** Cloth within a closed outline. */
export function cloth(face: Face, outline: Path, look: Partial<Style> = {}): Mark[] {
  const edge = area(outline, { width: mm(0.4), ...look, fill: null });
  if (face === 'right') return [area(outline, { stroke: null, fill: inks.wash }), edge];
  const falling = fallingLines(outline);
  return [
    area(outline, { stroke: null, fill: inks.paper }),
    ...(falling.length > 0 ? [stroke(falling, { stroke: inks.rule, width: mm(0.18) })] : []),
    edge,
  ];
}

type Side = 'left' | 'top' | 'right' | 'bottom';

/** A cut-out of cloth: its `torn` sides run on beyond the drawing. */
interface Patch {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly torn: readonly Side[];
}

export function patch(face: Face, of: Patch): Mark[] {
  const corners = [
    [of.left, of.top],
    [of.right, of.top],
    [of.right, of.bottom],
    [of.left, of.bottom],
  ] as const;
  const names: readonly Side[] = ['top', 'right', 'bottom', 'left'];
  const sides = names.map((name, i) => {
    const straight = lineTo(corners[i] ?? [0, 0], corners[(i + 1) % 4] ?? [0, 0]);
    const isTorn = of.torn.includes(name);
    return { isTorn, path: isTorn ? wavy(straight, 0.6, 7) : straight };
  });
  const outline = sides.flatMap(({ path }) => path);
  return [
    ...cloth(face, outline, { stroke: null }),
    ...sides.map(({ isTorn, path }) =>
      stroke(path, isTorn ? { stroke: inks.rule, width: mm(0.25) } : { width: mm(0.4) }),
    ),
  ];
}

/** Cloth seen from its edge: a thin band along a path. */
export function edgeOn(path: Path, fill: string = inks.wash): Mark[] {
  return [stroke(path, { width: mm(1.5) }), stroke(path, { stroke: fill, width: mm(0.9) })];
}

/** Threads that hang from a raw end of cloth seen from its edge; `way` is −1 to the left, 1 to the right. */
export function frayed(x: number, y: number, way: number): Mark {
  return stroke(
    [-0.5, 0, 0.5].map((dy) => polyline([point(x, y + dy), point(x + way * 2.2, y + dy * 2.4)])),
    { width: mm(0.2) },
  );
}
