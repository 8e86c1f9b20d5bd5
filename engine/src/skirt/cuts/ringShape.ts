import { arc, endOf, line, point, startOf, type Segment } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { PanelShape } from '../panel.ts';
import { finishedEdges } from './edges.ts';

export interface RingShape {
  /** Quarter marks, as arc lengths from the centre to the raw side. */
  readonly halfTop: Mm;
  readonly halfHem: Mm;
  readonly length: Mm;
  readonly topAllowance: Mm;
  readonly hemAllowance: Mm;
  readonly margin: Mm;
  readonly sideSeam: Mm;
}

/** Radius of the waist arc: every line from waist to hem is `length` long, so r = top·L / (hem − top). */
export const waistRadius = (halfTop: Mm, halfHem: Mm, length: Mm): Mm =>
  mm((halfTop * length) / (halfHem - halfTop));

/**
 * A panel whose waist and hem are arcs about one apex, so that the skirt hangs level. Its sides are radii,
 * square to both arcs.
 */
export function ringShape(s: RingShape): PanelShape {
  const r = waistRadius(s.halfTop, s.halfHem, s.length);
  const hemRadius = mm(r + s.length);
  const halfSweep = s.halfTop / r;
  const sector = (inner: number, outer: number) => {
    const waist = across(r, inner, halfSweep);
    const hem = back(r, outer, halfSweep);
    const right = line(endOf(waist), startOf(hem));
    const left = line(endOf(hem), startOf(waist));
    return { waist: [waist], right: [right], hem: [hem], left: [left], outline: [waist, right, hem, left] };
  };
  // A casing deeper than the waist's own radius would turn the panel inside out.
  const insideCasing = Math.max(0.01, r - s.topAllowance);
  const raw = hemRadius + s.hemAllowance;
  return {
    edges: finishedEdges(sector(r, hemRadius), s),
    trimmed: sector(insideCasing, raw).outline,
    cut: sector(insideCasing, raw + s.margin).outline,
    apex: { waistRadius: r, hemRadius, halfSweep },
    length: s.length,
    hemAllowance: s.hemAllowance,
    topAllowance: s.topAllowance,
  };
}

const apexOf = (r: number) => point(0, -r);
const across = (r: number, radius: number, half: number): Segment =>
  arc(apexOf(r), mm(radius), radians(Math.PI / 2 + half), radians(-2 * half));
const back = (r: number, radius: number, half: number): Segment =>
  arc(apexOf(r), mm(radius), radians(Math.PI / 2 - half), radians(2 * half));
