import { arc, endOf, line, point, startOf, type Path, type Segment } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { PanelEdge, PanelShape } from '../panel.ts';

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
  const sector = (
    inner: number,
    outer: number,
    angleAt: (radius: number) => number = () => halfSweep,
  ): Path => {
    const top = across(r, inner, angleAt(inner));
    const hem = back(r, outer, angleAt(outer));
    return [top, line(endOf(top), startOf(hem)), hem, line(endOf(hem), startOf(top))];
  };
  const insideCasing = Math.max(0.01, r - s.topAllowance);
  const raw = hemRadius + s.hemAllowance;
  // The seam line runs beside the radius, sideSeam inside it: sin(angle) = seam / radius.
  const seamed = sector(r, hemRadius, (radius) => halfSweep - Math.asin(Math.min(1, s.sideSeam / radius)));
  return {
    edges: ringEdges(seamed, s),
    trimmed: sector(insideCasing, raw),
    cut: sector(insideCasing, raw + s.margin),
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

function ringEdges(outline: Path, s: RingShape): PanelEdge[] {
  const names = ['waist', 'right', 'hem', 'left'] as const;
  const allowances = [s.topAllowance, s.sideSeam, s.hemAllowance, s.sideSeam] as const;
  return names.map((name, i) => ({
    name,
    finished: outline.slice(i, i + 1),
    allowance: allowances[i] ?? s.sideSeam,
    turned: name === 'waist' || name === 'hem',
  }));
}
