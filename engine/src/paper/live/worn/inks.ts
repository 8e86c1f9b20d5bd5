import { polyline, type Path } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { area, group, type Ink, type Mark } from '../../drawing/index.ts';
import { inkOf } from '../../pictures/clothInks.ts';
import { downwards, level } from './cloth.ts';
import { mixed } from './colours.ts';
import type { WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { levelsOf, patchesOf } from './patches.ts';
import type { Stretch } from './view.ts';
import type { WaistLook } from './waistLook.ts';

/** The colours of a skirt as it is seen from one side. Levels are as in a surface: 0 the top of the waist, 1 the hem. */
export interface WornInks {
  /** In the middle of the picture at a level. */
  readonly at: (down: number) => Ink;
  /** Of the waist's own piece, or of what is below where it has none. */
  readonly band: Ink;
  /** Of what a wrap is tied with. */
  readonly tie: Ink;
  /** Each round of panels, from the top, in the middle of the picture. */
  readonly rounds: readonly Ink[];
  /** All of them together, by how much of the length each has. */
  readonly mean: Ink;
}

export function inksOf(plan: SkirtPlan, side: WornSide, look: WaistLook): WornInks {
  const patches = patchesOf(plan, side, look);
  const own = plan.cloths[0].options.colour.hex;
  const at = (down: number): Ink => {
    const found = patches.findLast(
      ({ from, to, seen }) => down >= from && down <= to && seen.some(([a, b]) => a <= 0 && b >= 0),
    );
    return found ? inkOf(plan, found.piece) : own;
  };
  const levels = levelsOf(plan, look);
  const rounds = levels.map(({ from, to }) => at((from + to) / 2));
  return {
    at,
    band: look.band > 0 ? at(look.band / 2) : at(look.foot),
    tie: inkOf(plan, 'tie'),
    rounds,
    mean: meanOf(rounds, levels),
  };
}

/** What is not of the skirt's own cloth, over the area that is filled with that. */
export function otherCloths(plan: SkirtPlan, surface: Surface, side: WornSide, look: WaistLook): Mark[] {
  const areas = patchesOf(plan, side, look).flatMap(({ piece, from, to, seen }): Mark[] =>
    seen.map((stretch) =>
      area(patchPath(surface, stretch, from, to), { stroke: null, fill: inkOf(plan, piece) }),
    ),
  );
  return plan.cloths.length > 1 ? [group('other cloths', areas)] : [];
}

function meanOf(
  rounds: readonly Ink[],
  levels: readonly { readonly from: number; readonly to: number }[],
): Ink {
  const [first = '#000000', ...others] = rounds;
  let sum = Math.max(1e-6, (levels[0]?.to ?? 1) - (levels[0]?.from ?? 0));
  return others.reduce((mean, ink, i) => {
    const { from, to } = levels[i + 1] ?? { from: 0, to: 0 };
    sum += to - from;
    return mixed(mean, ink, (to - from) / sum);
  }, first);
}

/** A tier steps outwards just below its seam. */
const STEP = [0.004, 0.016] as const;

function patchPath(surface: Surface, [a, b]: Stretch, from: number, to: number): Path {
  const side = (across: number) => [
    ...STEP.map((down) => surface.at(across, Math.min(to, from + down))),
    ...downwards(surface, across, Math.min(to, from + 2 * STEP[1]), to),
  ];
  const top = level(surface, from, a, b);
  const foot = to === 1 ? level(surface, to, a, b, 2) : level(surface, to, a, b);
  return polyline([...top, ...side(b), ...foot.toReversed(), ...side(a).toReversed()], { closed: true });
}
