import { arc, line, point, type Path } from '../../../geometry/index.ts';
import { mm, radians } from '../../../units/index.ts';
import { dot, stroke, type Mark } from '../../drawing/index.ts';
import { lineTo } from './lines.ts';
import { edgeOn, frayed } from './surface.ts';

/** A turned edge cut through and seen from the side, with the skirt hanging on the left and its wrong side to the right. */
interface Turned {
  readonly x: number;
  /** Level of the outer fold. */
  readonly fold: number;
  /** Where the skirt runs on to. */
  readonly end: number;
  /** Depth turned, and of it what is turned under; at print size. */
  readonly depth: number;
  readonly under: number;
  /** How far the two stand apart: room for what runs between them. */
  readonly apart: number;
}

const UNDER_GAP = 1.9;

/** A hem (skirt above its fold) or a casing (skirt below it): one cloth from the skirt round to its raw end. */
export function turnedEdge({ x, fold, end, depth, under, apart }: Turned): Mark[] {
  const up = end < fold ? -1 : 1;
  const inner = fold + up * depth;
  const facing = x + apart;
  const bend = (centre: number, level: number, radius: number, from: number, sweep: number): Path => [
    arc(point(centre, level), mm(radius), radians(from), radians(sweep)),
  ];
  const path: Path = [
    line(point(x, end), point(x, fold)),
    ...bend(x + apart / 2, fold, apart / 2, Math.PI, up * Math.PI),
    line(point(facing, fold), point(facing, inner)),
  ];
  if (under < 0.4) return [...edgeOn(path), frayed(facing, inner + up * 0.3, 1)];
  const tucked: Path = [
    ...bend(facing - UNDER_GAP / 2, inner, UNDER_GAP / 2, 0, up * Math.PI),
    line(point(facing - UNDER_GAP, inner), point(facing - UNDER_GAP, inner - up * under)),
  ];
  return [...edgeOn([...path, ...tucked])];
}

/** A stitch through all layers at a level, its thread seen on both sides. */
export const throughAll = (from: number, to: number, y: number): Mark[] => [
  stroke(lineTo([from - 1.4, y], [to + 1.4, y]), { width: mm(0.6) }),
  dot(point(from - 1.4, y), mm(0.7)),
  dot(point(to + 1.4, y), mm(0.7)),
];
