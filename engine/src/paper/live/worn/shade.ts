import { polyline, type Path, type Point } from '../../../geometry/index.ts';
import { area, group, type Ink, type Mark } from '../../drawing/index.ts';
import { lightness } from './colours.ts';
import type { Surface } from './surface.ts';

const BLACK = '#000000';
const WHITE = '#ffffff';

/** One layer of shade: a blade down each fold, between two turns of its wave, that closes towards the top. */
interface Layer {
  readonly ink: Ink;
  readonly opacity: number;
  /** Turns from the ridge: 0 the ridge, 1 the valley to its right, −1 the valley to its left. */
  readonly from: number;
  readonly to: number;
  /** Level where the blade begins. */
  readonly top: number;
}

/** Light comes from the left and above: a fold's left flank has it, its right flank and the valley do not. */
const layers: readonly Layer[] = [
  { ink: BLACK, opacity: 0.07, from: 0.28, to: 1.3, top: 0.12 },
  { ink: BLACK, opacity: 0.08, from: 0.46, to: 1.2, top: 0.2 },
  { ink: BLACK, opacity: 0.09, from: 0.62, to: 1.12, top: 0.3 },
  { ink: BLACK, opacity: 0.11, from: 0.78, to: 1.06, top: 0.42 },
  { ink: WHITE, opacity: 0.065, from: -0.78, to: 0.2, top: 0.1 },
  { ink: WHITE, opacity: 0.07, from: -0.58, to: 0.04, top: 0.24 },
  { ink: WHITE, opacity: 0.07, from: -0.4, to: -0.1, top: 0.42 },
];

const STEPS = 4;

/**
 * Folds as areas of black and white that are seen through, so that they shade the cloth, a photograph of it and
 * the ribbons alike. On dark cloth light tells more than shade, on light cloth the other way round.
 */
export function shade(surface: Surface, ink: Ink, foot: number, seams: readonly number[]): Mark {
  const light = lightness(ink);
  const strength = 0.55 + 0.45 * surface.fall.depth;
  const { folds } = surface.fall;
  const ridges = Array.from({ length: folds + 3 }, (_, i) => 2 * (i - Math.floor((folds + 3) / 2)));
  const marks = layers.map((layer) => {
    const blades = ridges.map((ridge) => blade(surface, layer, ridge)).filter((path) => path.length > 0);
    const told = layer.ink === WHITE ? 1.3 - 0.7 * light : 0.75 + 0.6 * (1 - Math.abs(light - 0.45));
    return area(blades, { stroke: null, fill: layer.ink, opacity: layer.opacity * strength * told });
  });
  return group('shade', [...roundness(surface, light), ...marks, turnedIn(surface, [foot, ...seams])]);
}

function blade(surface: Surface, layer: Layer, ridge: number): Path {
  const middle = (layer.from + layer.to) / 2;
  const half = (layer.to - layer.from) / 2;
  if (Math.abs(surface.turned(Math.PI * (ridge + middle))) > 1.04) return [];
  // Folds are of several lengths.
  const begins = Math.max(layer.top, surface.foldsFrom);
  const top = Math.min(Math.max(0.8, begins), begins + 0.16 * Math.abs(Math.sin(ridge * 2.1 + 0.7)));
  const edge = (side: 1 | -1): Point[] =>
    Array.from({ length: STEPS + 1 }, (_, i) => {
      const t = i / STEPS;
      const across = surface.turned(Math.PI * (ridge + middle + side * half * Math.sqrt(t)));
      return surface.at(Math.min(1, Math.max(-1, across)), top + (1 - top) * t);
    });
  const [left, right] = [edge(-1), edge(1)];
  if (Math.abs((left.at(-1)?.x ?? 0) - (right.at(-1)?.x ?? 0)) < 0.05) return [];
  const foot = [0.33, 0.67].map((t) => {
    const turn = ridge + layer.from + (layer.to - layer.from) * t;
    return surface.at(Math.min(1, Math.max(-1, surface.turned(Math.PI * turn))), 1);
  });
  return polyline([...left, ...foot, ...right.toReversed()], { closed: true });
}

/** The skirt as one round thing: its far sides turn away from the light. */
function roundness(surface: Surface, light: number): Mark[] {
  const strip = (from: number, to: number): Path => {
    const edge = (across: number): Point[] => Array.from({ length: 10 }, (_, i) => surface.at(across, i / 9));
    return polyline([...edge(from), ...edge(to).toReversed()], { closed: true });
  };
  const more = 0.8 + 0.5 * (1 - light);
  return [
    [0.42, 1, 0.05],
    [0.62, 1, 0.06],
    [0.8, 1, 0.07],
    [-1, -0.84, 0.06],
  ].map(([from = 0, to = 0, opacity = 0]) =>
    area(strip(from, to), { stroke: null, fill: BLACK, opacity: opacity * more }),
  );
}

/** Just under the waist, and under each seam that a tier hangs from, the cloth turns in. */
function turnedIn(surface: Surface, levels: readonly number[]): Mark {
  const line = (down: number): Point[] => Array.from({ length: 21 }, (_, i) => surface.at(-1 + i / 10, down));
  const strips = levels.map((down, i) => {
    const foot = i === 0 ? down * 1.5 + 0.008 : down + 0.02;
    return polyline([...line(down), ...line(Math.min(1, foot)).toReversed()], { closed: true });
  });
  return area(strips, { stroke: null, fill: BLACK, opacity: 0.06 });
}
