import { boundsOf, point, type Path, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { PanelShape } from '../../../skirt/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import { fitPath, fitPoint, scaleInto, type Fit } from '../../pictures/fit.ts';

/** Width of the drawing; words of 4 mm are then read on a screen as wide as a small phone. */
export const WIDTH = 120;
/** Room at each side for words. */
const BESIDE = 20;
const TALLEST = 92;
/** Where the panel begins, below the words of its waist. */
const TOP = 14.4;
/** A shallow panel still leaves room for the words beside it. */
const LOWEST = 34;

/** A panel brought onto the drawing. */
export interface Sheet {
  readonly shape: PanelShape;
  readonly scale: number;
  readonly path: (of: Path) => Path;
  readonly at: (of: Point) => Point;
  /** The box that the panel fills, its straightening margin included. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Room for what stands beside it. */
  readonly from: number;
  readonly to: number;
  /** The raw side at a level of the panel. */
  readonly side: (hand: -1 | 1, y: number) => Point;
}

export function sheetOf(plan: SkirtPlan): Sheet {
  const { shape } = plan.skirt.panels[0];
  const bounds = boundsOf(shape.cut);
  const scale = scaleInto(Math.max(1, bounds.width), Math.max(1, bounds.height), {
    width: mm(WIDTH - 2 * BESIDE),
    height: mm(TALLEST),
  });
  const height = bounds.height * scale;
  const room = Math.max(LOWEST, height);
  const top = TOP + (room - height) / 2;
  const fit: Fit = {
    scale,
    dx: WIDTH / 2 - (bounds.left + bounds.width / 2) * scale,
    dy: top - bounds.top * scale,
  };
  const at = (of: Point): Point => fitPoint(of, fit);
  const half = rawHalf(plan);
  return {
    shape,
    scale,
    path: (of) => fitPath(of, fit),
    at,
    left: bounds.left * scale + fit.dx,
    right: bounds.right * scale + fit.dx,
    top,
    bottom: top + height,
    from: TOP,
    to: TOP + room,
    side: (hand, y) => {
      const { x, y: level } = half(y);
      return at(point(hand * x, level));
    },
  };
}

/** Halves of the panel at the folds of waist and hem, from its centre to its raw side; along the arcs of a ring. */
export function halvesOf({ skirt }: SkirtPlan): { readonly waist: Mm; readonly hem: Mm } {
  const { marks, marking, panels } = skirt;
  if (marking === 'at the fold') return { waist: marks.waistQuarter.value, hem: marks.hemQuarter.value };
  // The marks of straight widths quarter the whole round; each panel has its own half.
  const half = mm(boundsOf(panels[0].shape.cut).width / 2);
  return { waist: half, hem: half };
}

/** Right raw side of a panel at a level: along its radius on a ring, mirrored over the folds on a straight panel. */
export function rawHalf(plan: SkirtPlan): (y: number) => Point {
  const { apex, length } = plan.skirt.panels[0].shape;
  if (apex)
    return (y) => {
      const radius = Math.max(0, apex.waistRadius + y);
      return point(radius * Math.sin(apex.halfSweep), radius * Math.cos(apex.halfSweep) - apex.waistRadius);
    };
  const { waist, hem } = halvesOf(plan);
  const slope = (hem - waist) / length;
  return (y) => point(waist + slope * Math.max(0, y < 0 ? -y : y > length ? 2 * length - y : y), y);
}

/** A point of a level of the panel, `share` of the way from its left side to its right. */
export function levelPoint({ shape, side, at }: Sheet, y: number, share: number): Point {
  const { apex } = shape;
  if (!apex) {
    const [from, to] = [side(-1, y), side(1, y)];
    return point(from.x + (to.x - from.x) * share, from.y);
  }
  const angle = apex.halfSweep * (2 * share - 1);
  const radius = Math.max(0, apex.waistRadius + y);
  return at(point(radius * Math.sin(angle), radius * Math.cos(angle) - apex.waistRadius));
}
