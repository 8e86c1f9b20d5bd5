import { rightHalf } from '../../../cloth/index.ts';
import { boundsOf, point, type Path, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { fitPath, scaleInto, type Fit } from '../../pictures/fit.ts';
import type { Scene } from './stage.ts';

/** How far the marking has come. */
export const markings = ['none', 'waist', 'length', 'hem', 'joined'] as const;
export type Marking = (typeof markings)[number];

export const LEFT = 58;
const WIDEST = 30;
export const TOP = 7;
export const TALLEST = 51;

/** The folded cloth on the drawing: its centre, with the folds, at the left. */
export interface Packet {
  readonly right: number;
  readonly bottom: number;
  readonly half: Path;
  readonly path: (of: Path) => Path;
  readonly at: (x: number, y: number) => Point;
}

export function packetOf({ plan }: Scene): Packet {
  const { shape } = plan.skirt.panels[0];
  const half = rightHalf(shape.cut);
  const bounds = boundsOf(half);
  const scale = scaleInto(Math.max(1, bounds.width), Math.max(1, bounds.height), {
    width: mm(WIDEST),
    height: mm(TALLEST),
  });
  const height = bounds.height * scale;
  const fit: Fit = { scale, dx: LEFT, dy: TOP + (TALLEST - height) / 2 - bounds.top * scale };
  return {
    right: LEFT + bounds.width * scale,
    bottom: bounds.bottom * scale + fit.dy,
    half,
    path: (of) => fitPath(of, fit),
    at: (x, y) => point(x * scale + fit.dx, y * scale + fit.dy),
  };
}

/** Whether the marking has come as far as this mark. */
export const reached = (upTo: Marking, marking: Marking): boolean =>
  markings.indexOf(upTo) >= markings.indexOf(marking);
