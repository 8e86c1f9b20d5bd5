import { polyline, type Path } from '../../../geometry/index.ts';
import { area, group, type Ink, type Mark } from '../../drawing/index.ts';
import { lightness } from './colours.ts';
import type { Spot } from './smooth.ts';
import { within } from './stance.ts';
import type { Surface } from './surface.ts';

/**
 * Gathers that fall from the casing: slender blades, more and longer ones the more cloth the elastic draws in;
 * and the little puckers of the casing itself.
 */
export function gathers(surface: Surface, ink: Ink, casing: number, ratio: number): Mark {
  const drawn = within(0, ratio - 1, 2);
  const [left, right] = surface.edges(casing * surface.length);
  const half = (left + right) / 2;
  // As many as the elastic is long: a broad waist has more of them, not broader ones.
  const count = Math.round(within(5, (4 + 12 * drawn) * (0.4 + half / 21), 32));
  const light = lightness(ink);
  const reach = within(0.04, (0.11 + 0.1 * drawn) * (surface.fall.folds / 7), 0.36);
  const sized = (i: number): number => 0.5 + 0.8 * Math.abs(Math.sin(i * 1.9 + 0.4));
  const slender = Math.min(0.34, (0.3 * half) / count) / Math.max(1, half);
  const places = Array.from({ length: count }, (_, i) => {
    const even = ((i + 0.5) / count) * 2 - 1;
    return within(-0.97, even + (0.6 / count) * Math.sin(i * 2.4), 0.97);
  });
  const from = casing * 0.9;
  const blades = (aside: number, broad: number, long: number, other: number): Path[] =>
    places.map((across, i) => {
      const to = Math.min(0.9, casing + reach * long * sized(i + other));
      return sliver(surface, across + aside / count, from, to, slender * broad);
    });
  const puckers = Array.from({ length: count * 2 }, (_, i) => {
    const across = within(-0.98, ((i + 0.5) / (count * 2)) * 2 - 1, 0.98);
    const [top, foot] = i % 2 === 0 ? [0.02, 0.72] : [0.3, 0.98];
    return sliver(surface, across, casing * top, casing * foot, slender * 0.6, tick);
  });
  const dark = 0.11 + 0.1 * (1 - light);
  return group('gathers', [
    area(blades(0.2, 2, 1.15, 0), { stroke: null, fill: '#000000', opacity: dark * 0.6 }),
    area([...blades(0, 0.9, 0.85, 0), ...puckers], { stroke: null, fill: '#000000', opacity: dark }),
    area(blades(0.95, 0.8, 0.8, 3), { stroke: null, fill: '#ffffff', opacity: 0.2 - 0.08 * light }),
  ]);
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
