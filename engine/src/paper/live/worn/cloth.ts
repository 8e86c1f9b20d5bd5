import { polyline, type Path, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, group, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { edgeOf, lineOn } from './colours.ts';
import type { WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { stretchesSeen } from './view.ts';
import type { WaistLook } from './waistLook.ts';

const STEPS = 28;

/** Points along a level, from one place across to another: as close together as its folds ask. */
export function level(surface: Surface, down: number, from = -1, to = 1, finely = 1): Point[] {
  const { folds } = surface.fall;
  const each = surface.open(down) > 0.3 ? 5 : 4;
  // An even number, so that the middle is among them.
  const count = 2 * Math.max(2, Math.ceil((((to - from) / 2) * folds * each * finely) / 2));
  return Array.from({ length: count + 1 }, (_, i) => surface.at(from + ((to - from) * i) / count, down));
}

/** Points down the cloth at one place across. */
export const downwards = (surface: Surface, across: number, from: number, to: number, steps = 18): Point[] =>
  Array.from({ length: steps + 1 }, (_, i) => surface.at(across, from + ((to - from) * i) / steps));

/** The whole skirt's edge, clockwise from the left of its top; `corners` are levels where it may step. */
export function outline(
  surface: Surface,
  look: WaistLook,
  side: WornSide,
  corners: readonly number[] = [],
): Path {
  const even = Array.from({ length: STEPS - 1 }, (_, i) => (i + 1) / STEPS);
  const beside = corners.flatMap((down) => [down, down + 0.004, down + 0.016]);
  const levels = corners.length > 0 ? [...even, ...beside].sort((a, b) => a - b) : even;
  const edge = (across: number): Point[] => levels.map((down) => surface.at(across, down));
  const hem = fineLevel(surface, 1);
  return polyline(
    [...topEdge(surface, look, side), ...edge(1), ...hem.toReversed(), ...edge(-1).toReversed()],
    {
      closed: true,
    },
  );
}

const fineLevel = (surface: Surface, down: number): Point[] => {
  const count = surface.fall.folds * 9;
  return Array.from({ length: count + 1 }, (_, i) => surface.at(-1 + (2 * i) / count, down));
};

/** The top of the waist: where elastic or cord pulls it in, ruffled. */
function topEdge(surface: Surface, { puckered }: WaistLook, side: WornSide): Point[] {
  const count = 48;
  const drawnUp = puckered.flatMap((arc) => stretchesSeen(side, arc));
  return Array.from({ length: count + 1 }, (_, i) => {
    const across = -1 + (2 * i) / count;
    const { x, y } = surface.at(across, 0);
    const ruffled = drawnUp.some(([from, to]) => across >= from - 1e-9 && across <= to + 1e-9);
    return { x, y: y - (i % 2 === 0 || !ruffled ? 0 : 0.22) };
  });
}

export const clothArea = (edge: Path, ink: Ink): Mark =>
  group('cloth', [area(edge, { stroke: null, fill: ink })]);

export interface Sewn {
  /** Lower edge of a band, and a casing's stitching, as shares of the length. */
  readonly look: WaistLook;
  /** The hem's stitching, from the hem up. */
  readonly hem: number;
  /** Seams down the panels, each from and to a level; and seams round them. */
  readonly seams: readonly { readonly across: number; readonly from: number; readonly to: number }[];
  readonly rounds: readonly number[];
}

/** What is sewn and seen on the cloth: its edge, the waist's and the hem's stitches, the seams. */
export function sewnLines(surface: Surface, edge: Path, ink: Ink, { look, hem, seams, rounds }: Sewn): Mark {
  const line = lineOn(ink);
  const solid = { stroke: line, width: mm(0.25), opacity: 0.8 };
  const seamLines = [
    ...seams.map(({ across, from, to }) =>
      polyline(downwards(surface, across, from, to, to - from > 0.5 ? 18 : 9)),
    ),
    ...[...(look.band > 0 ? [look.band] : []), ...rounds].map((down) => polyline(level(surface, down))),
  ];
  const stitched = [...(look.stitched === null ? [] : [look.stitched]), 1 - hem];
  return group('lines', [
    ...(seamLines.length > 0 ? [stroke(seamLines, solid)] : []),
    stroke(
      stitched.map((down) => polyline(level(surface, down, -0.97, 0.97))),
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
