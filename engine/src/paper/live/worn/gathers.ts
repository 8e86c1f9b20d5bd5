import { polyline, type Path } from '../../../geometry/index.ts';
import { area, group, type Ink, type Mark } from '../../drawing/index.ts';
import { lightness } from './colours.ts';
import type { Spot } from './smooth.ts';
import { within, type WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { stretchesSeen, type Stretch } from './view.ts';
import type { WaistLook } from './waistLook.ts';

/** Gathers that fall from a line of stitching. */
interface Falls {
  readonly stretch: Stretch;
  /** Level of the stitching, and no further down than they reach. */
  readonly from: number;
  readonly most: number;
  /** Cloth for each unit that it is drawn up to. */
  readonly ratio: number;
}

/**
 * Gathers that fall from the waist: slender blades, more and longer ones the more cloth is drawn in; and the little
 * puckers of what the elastic runs through.
 */
export function gathers(surface: Surface, ink: Ink, look: WaistLook, side: WornSide): Mark {
  const { foot, band, stitched } = look;
  const falls = look.gathered.flatMap((arc) =>
    stretchesSeen(side, arc).map((stretch) => ({ stretch, from: 0.9 * foot, most: 0.9, ratio: arc.ratio })),
  );
  const pulled = look.puckered.flatMap((arc) => stretchesSeen(side, arc));
  const drawn = within(0, Math.max(1, ...look.gathered.map(({ ratio }) => ratio)) - 1, 2);
  const puckers = pulled.flatMap((stretch) => puckersIn(surface, stretch, stitched ?? band, drawn));
  // A band hides where gathers begin; a casing's begin within its stitching.
  const begun = band > 0 ? falls.map((each) => ({ ...each, from: foot })) : falls;
  return group('gathers', blades(surface, ink, begun, puckers));
}

/** Gathers below each seam of a tier. */
export const tierGathers = (
  surface: Surface,
  ink: Ink,
  tiers: readonly { readonly from: number; readonly to: number; readonly ratio: number }[],
): Mark =>
  group(
    'gathers',
    blades(
      surface,
      ink,
      tiers.map(({ from, to, ratio }) => ({
        stretch: [-1, 1],
        from,
        most: from + 0.85 * (to - from),
        ratio,
      })),
      [],
    ),
  );

/** Breadth of a gather at its broadest, as a share across, and how many lie in a stretch. */
function sized(surface: Surface, { from, ratio }: Pick<Falls, 'from' | 'ratio'>, [a, b]: Stretch) {
  const drawn = within(0, ratio - 1, 2);
  const [left, right] = surface.edges(from * surface.length);
  const half = (left + right) / 2;
  // As many as the elastic is long: a broad waist has more of them, not broader ones.
  const all = within(5, (4 + 12 * drawn) * (0.4 + half / 21), 32);
  const count = Math.max(1, Math.round((all * (b - a)) / 2));
  const slender = Math.min(0.34, (0.3 * half) / all) / Math.max(1, half);
  return { drawn, count, slender };
}

function blades(surface: Surface, ink: Ink, falls: readonly Falls[], puckers: readonly Path[]): Mark[] {
  const light = lightness(ink);
  const each = (aside: number, broad: number, long: number, other: number): Path[] =>
    falls.flatMap((fall) => {
      const { stretch, from, most, ratio } = fall;
      const [a, b] = stretch;
      const { drawn, count, slender } = sized(surface, fall, stretch);
      if (ratio <= 1) return [];
      const reach = within(0.04, (0.11 + 0.1 * drawn) * (surface.fall.folds / 7), 0.36);
      const length = (i: number): number => 0.5 + 0.8 * Math.abs(Math.sin((i + other) * 1.9 + 0.4));
      const step = (b - a) / count;
      return Array.from({ length: count }, (_, i) => {
        const across = a + step * (i + 0.5 + 0.3 * Math.sin(i * 2.4));
        const place = within(Math.max(-0.97, a), across, Math.min(0.97, b)) + (aside * step) / 2;
        const to = Math.min(most, from / 0.9 + reach * long * length(i));
        return sliver(surface, place, from, to, slender * broad);
      });
    });
  const dark = 0.11 + 0.1 * (1 - light);
  return [
    area(each(0.2, 2, 1.15, 0), { stroke: null, fill: '#000000', opacity: dark * 0.6 }),
    area([...each(0, 0.9, 0.85, 0), ...puckers], { stroke: null, fill: '#000000', opacity: dark }),
    area(each(0.95, 0.8, 0.8, 3), { stroke: null, fill: '#ffffff', opacity: 0.2 - 0.08 * light }),
  ].filter(({ paths }) => paths.length > 0 && paths.every((path) => path.length > 0));
}

/** What elastic or cord runs through is full of little folds. */
function puckersIn(surface: Surface, stretch: Stretch, deep: number, drawn: number): Path[] {
  const { count, slender } = sized(surface, { from: deep, ratio: 1 + drawn }, stretch);
  const [a, b] = stretch;
  return Array.from({ length: count * 2 }, (_, i) => {
    const across = within(-0.98, a + ((i + 0.5) / (count * 2)) * (b - a), 0.98);
    const [top, foot] = i % 2 === 0 ? [0.02, 0.72] : [0.3, 0.98];
    return sliver(surface, across, deep * top, deep * foot, slender * 0.6, tick);
  });
}

/** Outlines of a gather and of a pucker: how far down, and how far aside of its middle. */
const blade: readonly Spot[] = [
  [0, -0.5],
  [0.12, -1],
  [0.5, -0.6],
  [1, 0],
  [0.5, 0.6],
  [0.12, 1],
  [0, 0.5],
];
const tick: readonly Spot[] = [
  [0, 0],
  [0.4, -1],
  [1, 0],
  [0.4, 1],
];

/** A blade that hangs from the stitching: broadest near its top, then ever slenderer. */
function sliver(
  surface: Surface,
  across: number,
  from: number,
  to: number,
  half: number,
  shape = blade,
): Path {
  const at = (share: number, aside: number) =>
    surface.at(within(-1, across + aside * half, 1), from + (to - from) * share);
  return polyline(
    shape.map(([share, aside]) => at(share, aside)),
    { closed: true },
  );
}
