import { point, polyline, type Path, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { edgeOf, lightness, lineOn, mixed } from './colours.ts';
import { oval, smooth, type Spot } from './smooth.ts';
import { fine, type Surface } from './surface.ts';

/** What goes across for so many drawing millimetres at the middle of a level. */
export function acrossFor(surface: Surface, down: number, along: number): number {
  const [left, right] = surface.edges(down * surface.length);
  return along / Math.max(0.5, ((left + right) / 2) * (Math.PI / 2));
}

/** The place across that lies so many drawing millimetres beside another as it is seen: towards the edges cloth turns away. */
export function beside(surface: Surface, down: number, across: number, along: number): number {
  const [left, right] = surface.edges(down * surface.length);
  const sine = Math.sin((across * Math.PI) / 2) + along / Math.max(0.5, (left + right) / 2);
  return (Math.asin(Math.max(-1, Math.min(1, sine))) * 2) / Math.PI;
}

/** A cord, a tie, a button: of a colour that shows on the cloth. */
const trimOn = (ink: Ink): Ink =>
  lightness(ink) < 0.5 ? mixed(ink, '#ffffff', 0.5) : mixed(ink, '#2a221c', 0.4);

export const button = ({ x, y }: Point, radius: number, ink: Ink): Mark[] => [
  area(oval(x, y, radius, radius), { fill: trimOn(ink), stroke: edgeOf(ink), width: mm(0.16) }),
  area([oval(x - radius * 0.28, y, 0.12, 0.12), oval(x + radius * 0.28, y, 0.12, 0.12)], {
    stroke: null,
    fill: edgeOf(ink),
  }),
];

interface Bow {
  /** Of one loop, and of each end that hangs. */
  readonly loop: number;
  readonly end: number;
  readonly width: number;
  /** 1 seen from before, less from the side. */
  readonly broad: number;
}

/** A bow: two loops, a knot, two ends that hang. */
export function bow({ x, y }: Point, { loop, end, width, broad }: Bow, ink: Ink): Mark[] {
  const half = Math.max(0.28, width / 2);
  const at = (across: number, down: number): Spot => [x + across * broad, y + down];
  const loops = ([1, -1] as const).map((way) =>
    smooth([
      at(0, 0),
      at(way * 0.5 * loop, -0.34 * loop),
      at(way * 0.98 * loop, -0.12 * loop),
      at(way * loop, 0.2 * loop),
      at(way * 0.6 * loop, 0.3 * loop),
    ]),
  );
  const ends = ([1, -1] as const).map((way): Path => {
    const long = end * (way === 1 ? 1 : 0.9);
    const spots: Spot[] = [
      at(way * 0.1, 0.2),
      at(way * Math.min(0.22 * long, 0.8 * loop), 0.45 * long),
      at(way * Math.min(0.26 * long, 0.75 * loop), long),
    ];
    const edge = (aside: number): Point[] =>
      spots.map(([sx, sy]) => point(fine(sx + aside * Math.max(0.5, broad)), fine(sy)));
    return polyline([...edge(-half), ...edge(half).toReversed()], { closed: true });
  });
  const fill = trimOn(ink);
  const edge = edgeOf(ink);
  // A narrow cord's loop is a line; a broad tie's is an area.
  const filled = half > 0.7;
  return [
    ...(end > 0.5 ? [area(ends, { fill, stroke: edge, width: mm(0.14) })] : []),
    ...(filled
      ? [area(loops, { fill, stroke: edge, width: mm(0.16) })]
      : [
          area(loops, { stroke: edge, width: mm(2 * half + 0.24) }),
          area(loops, { stroke: fill, width: mm(2 * half) }),
        ]),
    area(oval(x, y, Math.max(0.6, 1.15 * half) * Math.max(0.6, broad), Math.max(0.6, 1.1 * half)), {
      fill,
      stroke: edge,
      width: mm(0.16),
    }),
  ];
}

/** A seam or an edge that is seen as a line; its stitching is dashed. */
export const edgeLine = (paths: Path | readonly Path[], ink: Ink): Mark =>
  stroke(paths, { stroke: edgeOf(ink), width: mm(0.3) });

export const stitching = (paths: Path | readonly Path[], ink: Ink): Mark =>
  stroke(paths, { stroke: lineOn(ink), width: mm(0.16), dash: 'hidden', opacity: 0.8 });

export const shadow = (path: Path, opacity: number): Mark =>
  area(path, { stroke: null, fill: '#000000', opacity });
