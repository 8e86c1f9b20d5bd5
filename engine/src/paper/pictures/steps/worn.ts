import { point, polyline, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../drawing/index.ts';
import { curve, stitches } from './lines.ts';
import { within, type Scene } from './picture.ts';
import { ribbon } from './ribbons.ts';

/** Where a worn skirt stands: its lengths are to one scale. */
interface Worn {
  /** Millimetres of paper for each of cloth. */
  readonly scale: number;
  /** Middle of the top edge. */
  readonly x: number;
  readonly top: number;
  /** Most room on each side of the middle. */
  readonly widest: number;
}

/** A skirt seen from the front, gathered on its elastic. */
interface WornSkirt {
  readonly marks: readonly Mark[];
  readonly halfTop: number;
  readonly halfHem: number;
  readonly bottom: number;
}

/**
 * Breadth of a round seen from the front, of its girth: a circle's is 1/π = 0.32, a body's and a hem's oval is
 * broader. Common practice, no source.
 */
const BREADTH = 0.36;
/** How much lower the middle of the hem is seen than its sides, of the skirt's length. */
const SAG = 0.05;
const ACROSS = Array.from({ length: 25 }, (_, i) => -1 + i / 12);

export function wornSkirt(scene: Scene, { scale, x, top, widest }: Worn): WornSkirt {
  const { skirt, body, ribbons } = scene.plan;
  const length = skirt.finishedLength.value * scale;
  const halfTop = Math.min(widest, (body.waist.value * BREADTH * scale) / 2);
  const most = Math.min(widest, Math.max(halfTop * 1.1, length * 0.72));
  const halfHem = within(Math.min(most, halfTop * 1.1), (skirt.hemRound.value * BREADTH * scale) / 2, most);
  const half = (y: number): number =>
    halfTop + (halfHem - halfTop) * Math.pow(within(0, y / length, 1), 0.75);
  const on = (t: number, y: number): Point => point(x + t * half(y), top + y + SAG * y * (1 - t * t));
  const round = (y: number): Point[] => ACROSS.map((t) => on(t, y));
  const side = (t: number): Point[] => ACROSS.map((each) => on(t, ((each + 1) / 2) * length));
  const outline = polyline([...side(1), ...round(length).toReversed(), ...side(-1).toReversed()], {
    closed: true,
  });
  const rows = ribbons.rows.map((row, i) => {
    const lower = Math.max(0, length - row.fromHem.value * scale);
    const upper = Math.max(0, lower - row.width.value * scale);
    return ribbon(scene, i, polyline([...round(upper), ...round(lower).toReversed()], { closed: true }));
  });
  const casing = skirt.waist.depth * scale;
  return {
    marks: [
      area(outline, { stroke: null, fill: inks.wash }),
      ...folds(on, casing, length),
      ...rows,
      stroke(outline, { width: mm(0.45) }),
      ...stitches(polyline(round(casing))),
    ],
    halfTop,
    halfHem,
    bottom: top + length,
  };
}

/** Gathers below the casing, long and short in turn, and soft folds that run out at the hem. */
function folds(on: (t: number, y: number) => Point, casing: number, length: number): Mark[] {
  const gathers = Array.from({ length: 9 }, (_, i) => {
    const t = ((i + 0.5) / 9) * 2 - 1;
    const long = [0.22, 0.12, 0.17][i % 3] ?? 0.12;
    return curve([on(t, casing * 0.25), on(t, casing), on(t, casing + length * long)]);
  });
  const soft = [-0.62, -0.2, 0.3, 0.7].map((t) => curve([on(t, length * 0.55), on(t, length * 0.98)]));
  return [stroke(gathers, { width: mm(0.22) }), stroke(soft, { width: mm(0.18), stroke: inks.grey })];
}
