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
import { risenRaw, type GoreEdges } from './goreRisen.ts';
import { LEVEL, isLevel, type Rise } from './rise.ts';

/** A notch on the raw edge: along the top by its share of it, on a side by its height above the finished hem. */
export type NotchWish = { readonly use: NotchUse; readonly lines: 1 | 2 } & (
  { readonly on: 'waist'; readonly share: number } | { readonly on: 'left' | 'right'; readonly fromHem: Mm }
);

export interface GoreShape extends Allowances, GoreHalves {
  /** Half width of a level top to which its raw edge is chalked, where that lies a hair beyond what is sewn. */
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
  // A level top has cloth square to it; a risen one, which may be steep, as much along its sides.
  const level = isLevel(rise);
  const drawn = level && s.chalkedTop ? edgesOf({ ...s, halfTop: s.chalkedTop }, rise, frame) : finished;
  const raw = (hemDepth: number): readonly Path[] => {
    const beyond = { ...s, hem: { ...s.hem, depth: mm(hemDepth) } };
    return level ? squareRaw(drawn, beyond) : risenRaw(drawn, beyond, frame.radius);
  };
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
function edgesOf(gore: GoreHalves, rise: Rise, frame: GoreFrame): GoreEdges {
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

const squareRaw = (edges: GoreEdges, { top, right, hem, left }: Allowances): Path[] =>
  offsetOutline([
    { path: edges.waist, distance: top.depth },
    { path: edges.right, distance: right.depth },
    { path: edges.hem, distance: hem.depth },
    { path: edges.left, distance: left.depth },
  ]);

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
