import {
  arc,
  endOf,
  line,
  point,
  polyline,
  startOf,
  type Path,
  type Point,
  type Segment,
} from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { PanelEdge, PanelShape } from '../panel.ts';
import { finishedEdges, type Allowances } from './edges.ts';
import { LEVEL, PLACES, isLevel, keptRise, mirrored, riseAt, risenEdges, type Rise } from './rise.ts';

export interface RingShape extends Allowances {
  /** Radius of the top line and half of the sweep, raw side to raw side. */
  readonly radius: Mm;
  readonly halfSweep: number;
  readonly length: Mm;
  readonly margin: Mm;
  readonly rise?: Rise;
  /** The top that is cut, where it is higher than the panel's own: trimmed to it afterwards. */
  readonly cutRise?: Rise;
}

/** Radius of the waist arc: every line from waist to hem is `length` long, so r = top·L / (hem − top). */
export const waistRadius = (halfTop: Mm, halfHem: Mm, length: Mm): Mm =>
  mm((halfTop * length) / (halfHem - halfTop));

/** The ring of a panel whose marks are arc lengths from its centre to its raw side. */
export function ringOf(halfTop: Mm, halfHem: Mm, length: Mm): Pick<RingShape, 'radius' | 'halfSweep'> {
  const radius = waistRadius(halfTop, halfHem, length);
  return { radius, halfSweep: halfTop / radius };
}

/**
 * A panel whose waist and hem are arcs about one apex, so that the skirt hangs level. Its sides are radii,
 * square to both arcs, and run on as radii beyond them.
 */
export function ringShape(s: RingShape): PanelShape {
  const rise = keptRise(s.rise ?? LEVEL, s.length, MOST_RISE * s.radius);
  const { radius: r, halfSweep } = s;
  const hemRadius = mm(r + s.length);
  const cutRise = s.cutRise ? keptRise(s.cutRise, s.length, MOST_RISE * s.radius) : rise;
  const ends = sewnTop(s, rise);
  const topOf = (above: number, rise: Rise): Path =>
    isLevel(rise) ? [across(r, within(r - above), halfSweep)] : polyline(risenTop(s, ends, rise, above));
  const sector = (waist: Path, outer: number) => {
    const hem = back(r, outer, halfSweep);
    const [first] = waist;
    const last = waist.at(-1);
    const right = last ? [line(endOf(last), startOf(hem))] : [];
    const left = first ? [line(endOf(hem), startOf(first))] : [];
    return { waist, right, hem: [hem], left, outline: [...waist, ...right, hem, ...left] };
  };
  const raw = hemRadius + s.hem.depth;
  return {
    edges: isLevel(rise) ? finishedEdges(sector(topOf(0, rise), hemRadius), s) : edgesOf(s, rise),
    trimmed: sector(topOf(s.top.depth, rise), raw).outline,
    cut: sector(topOf(s.top.depth, cutRise), raw + s.margin).outline,
    notches: [],
    symmetric: mirrored(cutRise) && s.left.depth === s.right.depth && s.left.turned === s.right.turned,
    apex: { waistRadius: r, hemRadius, halfSweep },
    length: s.length,
    hemAllowance: s.hem.depth,
    topAllowance: s.top.depth,
  };
}

/** Share of its own radius that a top may rise towards the apex: past it nothing of the ring would be left. */
const MOST_RISE = 0.5;

/** A casing deeper than the waist's own radius would turn the panel inside out. */
const within = (radius: number): Mm => mm(Math.max(0.01, radius));

/** Turn that a seam of this depth takes at a radius. */
const turnOf = (depth: Mm, radius: number): number => Math.asin(Math.min(1, depth / Math.max(depth, radius)));

/** From stitching to stitching of the two sides at the top, as turns from the centre line. */
interface SewnTop {
  readonly from: number;
  readonly to: number;
}

const sewnTop = ({ radius, halfSweep, left, right }: RingShape, rise: Rise): SewnTop => ({
  from: turnOf(left.depth, radius - rise.left) - halfSweep,
  to: halfSweep - turnOf(right.depth, radius - rise.right),
});

/** Left to right along a line `above` the risen top line, on radii. */
function risenTop(s: RingShape, { from, to }: SewnTop, rise: Rise, above: number): Point[] {
  const at = (turn: number, up: Mm): Point => onRing(s.radius, within(s.radius - above - up), turn);
  return [
    at(-s.halfSweep, rise.left),
    ...PLACES.map((t) => at(from + ((t + 1) / 2) * (to - from), riseAt(rise, t))),
    at(s.halfSweep, rise.right),
  ];
}

function edgesOf(s: RingShape, rise: Rise): PanelEdge[] {
  const hemRadius = mm(s.radius + s.length);
  const { from, to } = sewnTop(s, rise);
  const [hemFrom, hemTo] = [
    turnOf(s.left.depth, hemRadius) - s.halfSweep,
    s.halfSweep - turnOf(s.right.depth, hemRadius),
  ];
  const at = (turn: number, up: number): Point => onRing(s.radius, s.radius - up, turn);
  const corners = {
    left: { top: at(from, rise.left), hem: at(hemFrom, -s.length) },
    right: { top: at(to, rise.right), hem: at(hemTo, -s.length) },
  };
  const hem = arc(apexOf(s.radius), hemRadius, radians(Math.PI / 2 - hemTo), radians(hemTo - hemFrom));
  return risenEdges(corners, risenTop(s, { from, to }, rise, 0).slice(1, -1), [hem], s);
}

const apexOf = (r: number) => point(0, -r);
/** A point of the ring: `turn` from its centre line, towards the right. */
const onRing = (r: number, radius: number, turn: number): Point =>
  point(radius * Math.sin(turn), -r + radius * Math.cos(turn));
const across = (r: number, radius: number, half: number): Segment =>
  arc(apexOf(r), mm(radius), radians(Math.PI / 2 + half), radians(-2 * half));
const back = (r: number, radius: number, half: number): Segment =>
  arc(apexOf(r), mm(radius), radians(Math.PI / 2 - half), radians(2 * half));
