import fc from 'fast-check';
import { mm, radians } from '../../units/index.ts';
import { distance, midpoint, point, type Point } from '../point.ts';
import { reversed, type Path } from '../path.ts';
import { angleOf, arc, line, wrapped, type Segment } from '../segment.ts';
import { mirrorX, rotate, translate } from '../transform.ts';

/** A panel as its edges in order (waist, side, hem, other side), each a connected path. */
export type Panel = readonly Path[];

/** Lower than this, a bow is drawn straight: its circle would be kilometres wide. */
const STRAIGHT = 0.05;

/** The arc from one point to another that stands `rise` to the right of travel over the middle of its chord. */
export function bow(from: Point, to: Point, rise: number): Segment {
  if (Math.abs(rise) < STRAIGHT) return line(from, to);
  const half = distance(from, to) / 2;
  const radius = (half * half + rise * rise) / (2 * Math.abs(rise));
  const middle = midpoint(from, to);
  const back = (Math.sign(rise) * (radius - Math.abs(rise))) / (2 * half);
  const centre = point(middle.x + (to.y - from.y) * back, middle.y - (to.x - from.x) * back);
  const start = angleOf(centre, from);
  const turn = wrapped(angleOf(centre, to) - start);
  // The short way round is the wrong one for a bow higher than half its circle.
  const sweep = Math.sign(turn) === -Math.sign(rise) ? turn : turn - Math.sign(turn) * 2 * Math.PI;
  return arc(centre, mm(radius), radians(start), radians(sweep));
}

export const trapezoid = (top: number, bottom: number, length: number): Panel => [
  [line(point(-top / 2, 0), point(top / 2, 0))],
  [line(point(top / 2, 0), point(bottom / 2, length))],
  [line(point(bottom / 2, length), point(-bottom / 2, length))],
  [line(point(-bottom / 2, length), point(-top / 2, 0))],
];

/** Hangs straight down from its centre at the origin. */
export function ringPanel(inner: number, outer: number, sweep: number): Panel {
  const centre = point(0, 0);
  const right = Math.PI / 2 - sweep / 2;
  const left = Math.PI / 2 + sweep / 2;
  const at = (radius: number, angle: number): Point =>
    point(radius * Math.cos(angle), radius * Math.sin(angle));
  return [
    [arc(centre, mm(inner), radians(left), radians(-sweep))],
    [line(at(inner, right), at(outer, right))],
    [arc(centre, mm(outer), radians(right), radians(sweep))],
    [line(at(outer, left), at(inner, left))],
  ];
}

/** A gore: a hollow waist, a hip curve that runs smoothly into a straight side, a hem that hangs in an arc. */
export function gore(
  waist: number,
  hip: number,
  hem: number,
  depth: number,
  length: number,
  dip: number,
): Panel {
  const top = point(waist / 2, 0);
  const wide = point(hip / 2, depth);
  const low = point(hem / 2, length);
  const straight = distance(wide, low);
  const nx = -(low.y - wide.y) / straight;
  const ny = (low.x - wide.x) / straight;
  const off = (top.x - wide.x) * nx + (top.y - wide.y) * ny;
  let curve: Segment = line(top, wide);
  if (Math.abs(off) > STRAIGHT) {
    const reach = distance(top, wide) ** 2 / (2 * off);
    const centre = point(wide.x + nx * reach, wide.y + ny * reach);
    const start = angleOf(centre, top);
    curve = arc(centre, mm(Math.abs(reach)), radians(start), radians(wrapped(angleOf(centre, wide) - start)));
  }
  const side: Path = [curve, line(wide, low)];
  return [
    [bow(point(-waist / 2, 0), top, dip)],
    side,
    [bow(low, point(-hem / 2, length), -dip)],
    reversed(mirrorX(side)),
  ];
}

const STEPS = 1e9;
/** Evenly spread; the library's own doubles crowd round zero. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);

export const trapezoids: fc.Arbitrary<Panel> = fc
  .tuple(between(80, 900), between(0, 600), between(120, 1200))
  .map(([top, flare, length]) => trapezoid(top, top + flare, length));

export const ringPanels: fc.Arbitrary<Panel> = fc
  .tuple(between(60, 2500), between(120, 1200), between(0.05, 3.1))
  .map(([inner, length, sweep]) => ringPanel(inner, inner + length, sweep));

export const gores: fc.Arbitrary<Panel> = fc
  .tuple(
    between(120, 250),
    between(10, 80),
    between(0, 300),
    between(100, 220),
    between(400, 1100),
    between(0, 10),
  )
  .map(([waist, more, flare, depth, length, dip]) =>
    gore(waist, waist + more, waist + more + flare, depth, length, dip),
  );

/** Somewhere on the sheet, turned, perhaps mirrored, running either way round. */
const laid = (panels: fc.Arbitrary<Panel>): fc.Arbitrary<Panel> =>
  fc
    .tuple(panels, between(-3, 3), between(-2000, 2000), between(-2000, 2000), fc.boolean(), fc.boolean())
    .map(([panel, angle, dx, dy, mirrored, backwards]) => {
      const placed = panel.map((edge) => {
        const turned = translate(rotate(edge, radians(angle)), dx, dy);
        return mirrored ? mirrorX(turned) : turned;
      });
      return backwards ? placed.toReversed().map(reversed) : placed;
    });

export const anyPanel: fc.Arbitrary<Panel> = fc.oneof(laid(trapezoids), laid(ringPanels), laid(gores));
export const anyStraightPanel: fc.Arbitrary<Panel> = laid(trapezoids);

export const anyPoint: fc.Arbitrary<Point> = fc
  .tuple(between(-500, 500), between(-500, 500))
  .map(([x, y]) => point(x, y));

export const anyLine: fc.Arbitrary<Segment> = fc
  .tuple(anyPoint, anyPoint)
  .map(([from, to]) => line(from, to));
export const anyArc: fc.Arbitrary<Segment> = fc
  .tuple(anyPoint, between(5, 900), between(-7, 7), between(0.01, 6.2), fc.boolean())
  .map(([centre, radius, start, sweep, back]) =>
    arc(centre, mm(radius), radians(start), radians(back ? -sweep : sweep)),
  );
export const anySegment: fc.Arbitrary<Segment> = fc.oneof(anyLine, anyArc);
export { between as numbers };
