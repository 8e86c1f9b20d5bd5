import { boundsOf, point, type Bounds, type Path, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { PanelShape } from '../../../skirt/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import { fitPath, fitPoint, type Fit } from '../../pictures/fit.ts';
import { isCharted } from '../../pictures/pieces/charted.ts';
import { pointOnLevel } from '../../pictures/pieces/chalked.ts';
import { panelKinds, type PanelKind } from '../../pictures/pieces/kinds.ts';

/** Width of the drawing; words of 4 mm are then read on a screen as wide as a small phone. */
export const WIDTH = 120;
/** Room at each side for words; at the right of tiers for rows that are told from their seam. */
const BESIDE = 20;
const BESIDE_SEAM = 37;
const TALLEST = 92;
/** Where the panel begins, below the words of its waist. */
const TOP = 14.4;
/** A shallow panel still leaves room for the words beside it. */
const LOWEST = 34;
/** Between panels side by side, and between tiers, whose names stand there. */
const APART = 4;
const BETWEEN_TIERS = 6.5;

/** A panel brought onto the drawing. */
export interface Sheet {
  readonly kind: PanelKind;
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

/** Every kind of panel, side by side or tier below tier, and the one that is taken hold of. */
export interface Sheets {
  readonly all: readonly [Sheet, ...Sheet[]];
  /** The front, or the lowest tier. */
  readonly main: Sheet;
  readonly tiers: boolean;
  /** Right end of all of them. */
  readonly right: number;
}

export function sheetsOf(plan: SkirtPlan): Sheets {
  const { skirt, ribbons } = plan;
  const tiers = skirt.rounds.length > 1;
  const kinds = panelKinds(plan).map((kind) => ({ kind, box: boundsOf(kind.panels[0].shape.cut) }));
  const right = ribbons.rows.some(({ onSeam }) => onSeam) ? BESIDE_SEAM : BESIDE;
  const room = WIDTH - BESIDE - right;
  const total = (of: (box: Bounds) => number): number => kinds.reduce((sum, { box }) => sum + of(box), 0);
  const most = (of: (box: Bounds) => number): number => Math.max(...kinds.map(({ box }) => of(box)));
  const gaps = (kinds.length - 1) * (tiers ? BETWEEN_TIERS : APART);
  const wide = (tiers ? most : total)(({ width }) => width);
  const tall = (tiers ? total : most)(({ height }) => height);
  const scale = Math.min(
    (room - (tiers ? 0 : gaps)) / Math.max(1, wide),
    (TALLEST - (tiers ? gaps : 0)) / Math.max(1, tall),
  );
  const height = tall * scale + (tiers ? gaps : 0);
  const to = TOP + Math.max(LOWEST, height);
  let x = BESIDE + (room - wide * scale - (tiers ? 0 : gaps)) / 2;
  let y = TOP + (to - TOP - height) / 2;
  const sheets = kinds.map(({ kind, box }) => {
    const left = tiers ? BESIDE + (room - box.width * scale) / 2 : x;
    const made = sheetAt(plan, kind, box, { scale, left, top: y, to });
    if (tiers) y += box.height * scale + BETWEEN_TIERS;
    else x += box.width * scale + APART;
    return made;
  }) as [Sheet, ...Sheet[]];
  return {
    all: sheets,
    main: tiers ? (sheets.at(-1) ?? sheets[0]) : sheets[0],
    tiers,
    right: Math.max(...sheets.map((each) => each.right)),
  };
}

/** The panel that is taken hold of. */
export const sheetOf = (plan: SkirtPlan): Sheet => sheetsOf(plan).main;

function sheetAt(
  plan: SkirtPlan,
  kind: PanelKind,
  box: Bounds,
  on: { readonly scale: number; readonly left: number; readonly top: number; readonly to: number },
): Sheet {
  const { shape } = kind.panels[0];
  const { scale, left, top, to } = on;
  const fit: Fit = { scale, dx: left - box.left * scale, dy: top - box.top * scale };
  const at = (of: Point): Point => fitPoint(of, fit);
  const half = isMarkedWhole(plan) ? rawHalf(plan) : null;
  return {
    kind,
    shape,
    scale,
    path: (of) => fitPath(of, fit),
    at,
    left,
    right: left + box.width * scale,
    top,
    bottom: top + box.height * scale,
    from: TOP,
    to,
    side: (hand, y) => {
      if (!half) return at(pointOnLevel(shape, y, hand === 1 ? 1 : 0));
      const { x, y: level } = half(y);
      return at(point(hand * x, level));
    },
  };
}

/** Whether one mark at the fold, or one width, tells of every panel. */
export const isMarkedWhole = (plan: SkirtPlan): boolean => !isCharted(plan);

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
  if (shape.apex) return at(pointOnLevel(shape, y, share));
  const [from, to] = [side(-1, y), side(1, y)];
  return point(from.x + (to.x - from.x) * share, from.y);
}
