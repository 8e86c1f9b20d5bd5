import { polyline, type Path, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, group, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { edgeOf, lineOn } from './colours.ts';
import type { Surface } from './surface.ts';

const STEPS = 28;

/** Points along a level, from one place across to another: as close together as its folds ask. */
export function level(surface: Surface, down: number, from = -1, to = 1, finely = 1): Point[] {
  const { folds } = surface.fall;
  const each = surface.open(down) > 0.3 ? 5 : 4;
  // An even number, so that the middle is among them.
  const count = 2 * Math.max(2, Math.ceil((((to - from) / 2) * folds * each * finely) / 2));
  return Array.from({ length: count + 1 }, (_, i) => surface.at(from + ((to - from) * i) / count, down));
}

/** The whole skirt's edge, clockwise from the left of its top. */
export function outline(surface: Surface): Path {
  const side = (across: number): Point[] =>
    Array.from({ length: STEPS - 1 }, (_, i) => surface.at(across, (i + 1) / STEPS));
  const hem = fineLevel(surface, 1);
  return polyline([...ruffled(surface), ...side(1), ...hem.toReversed(), ...side(-1).toReversed()], {
    closed: true,
  });
}

const fineLevel = (surface: Surface, down: number): Point[] => {
  const count = surface.fall.folds * 9;
  return Array.from({ length: count + 1 }, (_, i) => surface.at(-1 + (2 * i) / count, down));
};

/** The top fold, pulled in by its elastic. */
function ruffled(surface: Surface): Point[] {
  const count = 48;
  return Array.from({ length: count + 1 }, (_, i) => {
    const { x, y } = surface.at(-1 + (2 * i) / count, 0);
    return { x, y: y - (i % 2 === 0 ? 0 : 0.22) };
  });
}

export const clothArea = (edge: Path, ink: Ink): Mark =>
  group('cloth', [area(edge, { stroke: null, fill: ink })]);

/** What is sewn and seen on the cloth: its edge, the casing's stitches, the hem's stitches, the seams. */
export function sewnLines(
  surface: Surface,
  edge: Path,
  ink: Ink,
  casing: number,
  hem: number,
  seams: readonly number[],
): Mark {
  const line = lineOn(ink);
  const seamLines = seams.map((across) =>
    polyline(Array.from({ length: 19 }, (_, i) => surface.at(across, casing + ((1 - casing) * i) / 18))),
  );
  return group('lines', [
    ...(seamLines.length > 0 ? [stroke(seamLines, { stroke: line, width: mm(0.25), opacity: 0.8 })] : []),
    stroke(
      [casing, 1 - hem].map((down) => polyline(level(surface, down, -0.97, 0.97))),
      {
        stroke: line,
        width: mm(0.16),
        dash: 'hidden',
        opacity: 0.7,
      },
    ),
    area(edge, { stroke: edgeOf(ink), width: mm(0.32) }),
  ]);
}
