import { arc, endOf, line, point, polyline, startOf, type Path, type Segment } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { PanelShape } from '../panel.ts';
import { finishedEdges, type Allowances } from './edges.ts';
import { LEVEL, PLACES, isLevel, riseAt, type Rise } from './rise.ts';

export interface RingShape extends Allowances {
  /** Radius of the top line and half of the sweep, raw side to raw side. */
  readonly radius: Mm;
  readonly halfSweep: number;
  readonly length: Mm;
  readonly margin: Mm;
  readonly rise?: Rise;
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
  const rise = s.rise ?? LEVEL;
  const { radius: r, halfSweep } = s;
  const hemRadius = mm(r + s.length);
  // A casing deeper than the waist's own radius would turn the panel inside out.
  const within = (radius: number): Mm => mm(Math.max(0.01, radius));
  const topOf = (above: number): Path => {
    if (isLevel(rise)) return [across(r, within(r - above), halfSweep)];
    return polyline(PLACES.map((t) => at(r, within(r - above - riseAt(rise, t)), t * halfSweep)));
  };
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
    edges: finishedEdges(sector(topOf(0), hemRadius), s),
    trimmed: sector(topOf(s.top.depth), raw).outline,
    cut: sector(topOf(s.top.depth), raw + s.margin).outline,
    notches: [],
    symmetric: rise.left === rise.right && s.left.depth === s.right.depth && s.left.turned === s.right.turned,
    apex: { waistRadius: r, hemRadius, halfSweep },
    length: s.length,
    hemAllowance: s.hem.depth,
    topAllowance: s.top.depth,
  };
}

const apexOf = (r: number) => point(0, -r);
/** A point of the ring: `turn` from its centre line, towards the right. */
const at = (r: number, radius: number, turn: number) =>
  point(radius * Math.sin(turn), -r + radius * Math.cos(turn));
const across = (r: number, radius: number, half: number): Segment =>
  arc(apexOf(r), mm(radius), radians(Math.PI / 2 + half), radians(-2 * half));
const back = (r: number, radius: number, half: number): Segment =>
  arc(apexOf(r), mm(radius), radians(Math.PI / 2 - half), radians(2 * half));
