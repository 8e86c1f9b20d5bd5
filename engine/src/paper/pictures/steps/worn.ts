import { point, polyline, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../drawing/index.ts';
import { patchesOf } from '../../live/worn/patches.ts';
import { waistLook } from '../../live/worn/waistLook.ts';
import { washOf } from '../clothInks.ts';
import { curve, stitches } from './lines.ts';
import { within, type Scene } from './picture.ts';
import { ribbon } from './ribbons.ts';
import { keepTones } from './tone.ts';

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

/** A skirt seen from the front. */
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
  const { above, depth, build } = skirt.waist;
  // A piece that is sewn on is the uppermost of the length; a turned casing is of the panels.
  const sewnOn = build !== 'turned';
  const casing = (sewnOn ? above.value : depth) * scale;
  return {
    marks: [
      keepTones([area(outline, { stroke: null, fill: inks.wash }), ...otherCloths()]),
      ...(isGathered(scene) ? gathers(on, sewnOn ? casing : casing * 0.25, casing, length) : []),
      ...folds(on, length),
      ...rows,
      stroke(outline, { width: mm(0.45) }),
      ...(sewnOn
        ? [stroke(polyline(round(casing)), { width: mm(0.35) })]
        : stitches(polyline(round(casing)))),
    ],
    halfTop,
    halfHem,
    bottom: top + length,
  };

  /** Each piece with its cloth's tone, where there are several. */
  function otherCloths(): Mark[] {
    const { plan } = scene;
    if (plan.cloths.length === 1) return [];
    return patchesOf(plan, 'front', waistLook(plan)).flatMap(({ piece, from, to, seen }) =>
      seen.map(([left, right]) => {
        const [a, b] = [left, right].map((across) => Math.sin((across * Math.PI) / 2)) as [number, number];
        const edge = (y: number): Point[] => ACROSS.map((t) => on(a + ((t + 1) / 2) * (b - a), y * length));
        return area(polyline([...edge(from), ...edge(to).toReversed()], { closed: true }), {
          stroke: null,
          fill: washOf(plan, piece),
        });
      }),
    );
  }
}

/** Whether cloth is drawn up in front: by elastic or cord all round, or onto a band; behind alone it is not seen. */
function isGathered({ plan }: Scene): boolean {
  const { elastic, cord, takenUp } = plan.skirt.waist;
  return elastic?.where === 'round' || cord !== null || takenUp?.by === 'gathers';
}

/** Gathers from `from` to below the casing, long and short in turn. */
function gathers(on: (t: number, y: number) => Point, from: number, casing: number, length: number): Mark[] {
  const lines = Array.from({ length: 9 }, (_, i) => {
    const t = ((i + 0.5) / 9) * 2 - 1;
    const long = [0.22, 0.12, 0.17][i % 3] ?? 0.12;
    return curve([on(t, from), on(t, casing), on(t, casing + length * long)]);
  });
  return [stroke(lines, { width: mm(0.22) })];
}

/** Soft folds that run out at the hem. */
function folds(on: (t: number, y: number) => Point, length: number): Mark[] {
  const soft = [-0.62, -0.2, 0.3, 0.7].map((t) => curve([on(t, length * 0.55), on(t, length * 0.98)]));
  return [stroke(soft, { width: mm(0.18), stroke: inks.grey })];
}
