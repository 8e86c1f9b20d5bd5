import { arc, line, point, polyline, type Path, type Point } from '../../../geometry/index.ts';
import type { PartName } from '../../../skirt/index.ts';
import { mm, radians } from '../../../units/index.ts';
import { circle, inks, rectangle, stroke, type Mark } from '../../drawing/index.ts';
import { curve, lineTo, zigzag } from './lines.ts';
import type { Scene } from './picture.ts';
import { cloth, edgeOn } from './surface.ts';
import { firstPanel, toned } from './tone.ts';

/** Whether the step's own words say this. */
export const says = ({ step }: Scene, code: Scene['step']['sentences'][number]['code']): boolean =>
  step.sentences.some((each) => each.code === code);

/** Cloth with straight edges, by its corners. */
export const sheet = (...corners: readonly (readonly [number, number])[]): Path =>
  polyline(
    corners.map(([x, y]) => point(x, y)),
    { closed: true },
  );

export const block = (left: number, top: number, right: number, bottom: number): Path =>
  sheet([left, top], [right, top], [right, bottom], [left, bottom]);

/** Folds that run down from where cloth is drawn up: long, short and middling in turn. */
export function gathers(left: number, right: number, top: number, longest: number): Mark {
  const count = Math.max(2, Math.round((right - left) / 3.4));
  return stroke(
    Array.from({ length: count }, (_, i) => {
      const x = left + ((i + 0.5) * (right - left)) / count;
      const long = longest * ([1, 0.55, 0.75][i % 3] ?? 1);
      return curve([point(x, top), point(x + 0.5, top + long / 2), point(x - 0.2, top + long)]);
    }),
    { width: mm(0.25) },
  );
}

/** Elastic that lies along x. */
export const elasticLying = (x: number, y: number, length: number, width: number): Mark[] => [
  rectangle(x, y, length, width, { fill: inks.paper, width: mm(0.4) }),
  stroke(
    [0.27, 0.5, 0.73].map((t) => lineTo([x + 0.4, y + width * t], [x + length - 0.4, y + width * t])),
    { width: mm(0.15), stroke: inks.grey },
  ),
];

/** A machine-made buttonhole that runs from one point to another, cut open or not yet. */
export function buttonhole(from: Point, to: Point, cut = true): Mark[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const long = Math.hypot(dx, dy);
  const off = point((-dy / long) * 0.85, (dx / long) * 0.85);
  const side = (way: 1 | -1): Path =>
    lineTo([from.x + way * off.x, from.y + way * off.y], [to.x + way * off.x, to.y + way * off.y]);
  const bar = (at: Point): Path =>
    lineTo([at.x - off.x * 1.7, at.y - off.y * 1.7], [at.x + off.x * 1.7, at.y + off.y * 1.7]);
  return [
    stroke(lineTo([from.x, from.y], [to.x, to.y]), { stroke: inks.paper, width: mm(3.4) }),
    ...([1, -1] as const).map((way) => zigzag(side(way), 0.9, 0.5, { width: mm(0.22) })),
    stroke([bar(from), bar(to)], { width: mm(0.7) }),
    ...(cut ? [stroke(lineTo([from.x, from.y], [to.x, to.y]), { width: mm(0.3) })] : []),
  ];
}

/** A sewn-through button. */
export const button = (at: Point, radius: number): Mark[] => [
  circle(at, mm(radius), { fill: inks.paper, width: mm(0.45) }),
  circle(at, mm(radius * 0.72), { width: mm(0.2) }),
  ...[-1, 1].map((way) =>
    circle(point(at.x + way * radius * 0.26, at.y), mm(0.35), { stroke: null, fill: inks.ink }),
  ),
  stroke(lineTo([at.x - radius * 0.26, at.y], [at.x + radius * 0.26, at.y]), { width: mm(0.35) }),
];

/** A strip folded over the top of a skirt, cut through; the skirt hangs on the left, its wrong side to the right. */
interface FoldedOver {
  /** Of the skirt. */
  readonly x: number;
  /** Levels of the strip's fold, of the seam, and where the skirt runs on to. */
  readonly fold: number;
  readonly seam: number;
  readonly end: number;
  readonly allowance: number;
}

const STEP = 1.9;
const IN = 5;

const bend = (x: number, y: number, radius: number, from: number, sweep: number): Path => [
  arc(point(x, y), mm(radius), radians(from), radians(sweep)),
];

/** One cloth from the raw edge at the seam over the fold to its other edge, which lies turned under just below the seam. */
export function foldedOver(
  scene: Scene,
  strip: PartName,
  { x, fold, seam, end, allowance }: FoldedOver,
): Mark[] {
  const outer = x - 2 * STEP;
  const inner = x + IN;
  const covers = seam + 2.6;
  const path: Path = [
    line(point(x - STEP, seam - allowance), point(x - STEP, seam - STEP / 2)),
    ...bend(x - 1.5 * STEP, seam - STEP / 2, STEP / 2, 0, Math.PI),
    line(point(outer, seam - STEP / 2), point(outer, fold)),
    ...bend((outer + inner) / 2, fold, (inner - outer) / 2, Math.PI, Math.PI),
    line(point(inner, fold), point(inner, covers)),
    ...bend(inner - STEP / 2, covers, STEP / 2, 0, Math.PI),
    line(point(inner - STEP, covers), point(inner - STEP, covers - allowance)),
  ];
  return [
    ...toned(scene, firstPanel(scene), edgeOn(lineTo([x, end], [x, seam - allowance]))),
    ...toned(scene, strip, edgeOn(path)),
  ];
}

/** Where `foldedOver` is sewn in the groove of its seam, from outside to inside. */
export const groove = ({ x, seam }: FoldedOver): { from: number; to: number; y: number } => ({
  from: x - STEP,
  to: x + IN,
  y: seam + 1,
});

/** A ring seen from a little above: its outer face in front, and its inner face behind. */
export function ringSeen(x: number, y: number, half: number, tall: number): Mark[] {
  const rise = half * 0.16;
  const round = (level: number, way: 1 | -1): Point[] =>
    Array.from({ length: 25 }, (_, i) => {
      const t = -1 + i / 12;
      return point(x + t * half, level + way * rise * Math.sqrt(Math.max(0, 1 - t * t)));
    });
  const between = (upper: Point[], lower: Point[]): Path =>
    polyline([...upper, ...lower.toReversed()], { closed: true });
  return [
    ...cloth('right', between(round(y, -1), round(y, 1))),
    ...cloth('wrong', between(round(y, 1), round(y + tall, 1))),
  ];
}
