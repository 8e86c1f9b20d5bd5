import {
  lengthOf,
  offsetOutline,
  point,
  pointAt,
  polyline,
  tangentAt,
  type Path,
  type Point,
} from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { EdgeName, Notch, NotchUse, PanelEdge, PanelShape } from '../panel.ts';
import type { Allowances, Beyond } from './edges.ts';
import { goreFrame, goreTop, type GoreFrame, type GoreHalves } from './goreFrame.ts';
import { LEVEL, type Rise } from './rise.ts';

/** A notch on the raw edge: along the top by its share of it, on a side by its height above the finished hem. */
export type NotchWish = { readonly use: NotchUse; readonly lines: 1 | 2 } & (
  { readonly on: 'waist'; readonly share: number } | { readonly on: 'left' | 'right'; readonly fromHem: Mm }
);

export interface GoreShape extends Allowances, GoreHalves {
  /** Half width of the top to which the raw edge is chalked, where that lies a hair beyond what is sewn. */
  readonly chalkedTop?: Mm;
  readonly margin: Mm;
  readonly rise?: Rise;
  readonly notches?: readonly NotchWish[];
}

/**
 * A panel drawn from its seams: unlike panels side by side have seams of one length, whatever their widths and allowances.
 * Raw edges run beside the finished ones.
 */
export function goreShape(s: GoreShape): PanelShape {
  const rise = s.rise ?? LEVEL;
  const frame = goreFrame(s);
  const finished = edgesOf(s, rise, frame);
  const chalked = edgesOf({ ...s, halfTop: s.chalkedTop ?? s.halfTop }, rise, frame);
  const raw = (hemDepth: number): Path[] =>
    offsetOutline([
      { path: chalked.waist, distance: s.top.depth },
      { path: chalked.right, distance: s.right.depth },
      { path: chalked.hem, distance: mm(hemDepth) },
      { path: chalked.left, distance: s.left.depth },
    ]);
  const edge = (name: EdgeName, beyond: Beyond): PanelEdge => ({
    name,
    finished: finished[name],
    allowance: beyond.depth,
    turned: beyond.turned,
  });
  const trimmed = raw(s.hem.depth);
  return {
    edges: [edge('waist', s.top), edge('right', s.right), edge('hem', s.hem), edge('left', s.left)],
    trimmed: trimmed.flat(),
    cut: raw(s.hem.depth + s.margin).flat(),
    notches: (s.notches ?? []).map((wish) => notchOf(wish, s, frame, trimmed[0] ?? [])),
    symmetric: rise.left === rise.right && s.left.depth === s.right.depth && s.left.turned === s.right.turned,
    apex: apexOf(s, frame),
    length: s.length,
    hemAllowance: s.hem.depth,
    topAllowance: s.top.depth,
  };
}

/** Clockwise, each from where the one before ends. */
function edgesOf(gore: GoreHalves, rise: Rise, frame: GoreFrame): Readonly<Record<EdgeName, Path>> {
  const waist = goreTop(gore, rise);
  const [from, to] = [pointAt(waist, mm(0)), pointAt(waist, lengthOf(waist))];
  const down = (side: 1 | -1, corner: Point): Point[] => [
    corner,
    ...(gore.hip ? [frame.at(gore.hip.level, side)] : []),
    frame.at(gore.length, side),
  ];
  return {
    waist,
    right: polyline(down(1, to)),
    hem: frame.across(gore.length),
    left: polyline(down(-1, from).reverse()),
  };
}

/** Raw sides run beside radii: their sweep is that which they have half-way down. */
function apexOf({ length, left, right }: GoreShape, { radius, turn }: GoreFrame): PanelShape['apex'] {
  if (radius === null) return null;
  const beyond = (left.depth + right.depth) / 2;
  return {
    waistRadius: radius,
    hemRadius: mm(radius + length),
    halfSweep: turn + beyond / (radius + length / 2),
  };
}

function notchOf(wish: NotchWish, s: GoreShape, frame: GoreFrame, rawTop: Path): Notch {
  const { use, lines } = wish;
  if (wish.on === 'waist') {
    const along = mm(wish.share * lengthOf(rawTop));
    const { x, y } = tangentAt(rawTop, along);
    return { at: pointAt(rawTop, along), inward: point(-y, x), use, lines };
  }
  const side = wish.on === 'right' ? 1 : -1;
  const inward = point(-side * Math.cos(frame.turn), Math.sin(frame.turn));
  const onSeam = frame.at(s.length - wish.fromHem, side);
  const { depth } = s[wish.on];
  return { at: point(onSeam.x - depth * inward.x, onSeam.y - depth * inward.y), inward, use, lines };
}
