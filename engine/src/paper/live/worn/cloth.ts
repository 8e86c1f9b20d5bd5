import { polyline, type Path, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, group, stroke, type Ink, type Mark, type Style } from '../../drawing/index.ts';
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
export function sewnLines(
  surface: Surface,
  edge: Path,
  inks: { readonly at: (down: number) => Ink; readonly mean: Ink },
  { look, hem, seams, rounds }: Sewn,
): Mark {
  const solid = (down: number) => ({ stroke: lineOn(inks.at(down)), width: mm(0.25), opacity: 0.8 });
  const levels = [...(look.band > 0 ? [look.band] : []), ...rounds];
  const stitched = [...(look.stitched === null ? [] : [look.stitched]), 1 - hem];
  return group('lines', [
    ...byStroke([
      ...seams.map(({ across, from, to }) => ({
        path: polyline(downwards(surface, across, from, to, to - from > 0.5 ? 18 : 9)),
        style: solid((from + to) / 2),
      })),
      // A seam round lies in the edge of what is above it.
      ...levels.map((down) => ({ path: polyline(level(surface, down)), style: solid(down - 1e-3) })),
      ...stitched.map((down) => ({
        path: polyline(level(surface, down, -0.97, 0.97)),
        style: {
          stroke: lineOn(inks.at(down)),
          width: mm(0.16),
          dash: 'hidden' as const,
          opacity: 0.7,
        },
      })),
    ]),
    area(edge, { stroke: edgeOf(inks.mean), width: mm(0.32) }),
  ]);
}

interface Lined {
  readonly path: Path;
  readonly style: Partial<Style>;
}

/** One mark for all lines of one look. */
function byStroke(lines: readonly Lined[]): Mark[] {
  const alike = new Map<string, { readonly paths: Path[]; readonly style: Lined['style'] }>();
  for (const { path, style } of lines) {
    const key = `${String(style.stroke)} ${String(style.dash)}`;
    const found = alike.get(key) ?? { paths: [], style };
    found.paths.push(path);
    alike.set(key, found);
  }
  return [...alike.values()].map(({ paths, style }) => stroke(paths, style));
}
