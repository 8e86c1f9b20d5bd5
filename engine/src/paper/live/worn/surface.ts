import { point, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { edgesOf, type Edges } from './edges.ts';
import { fallOf, type Fall } from './fall.ts';
import { lapOf } from './lap.ts';
import { levelFrom, risesOf } from './rises.ts';
import { rise, within, type Stance, type WornSide } from './stance.ts';
import { turnAt } from './view.ts';

/**
 * The cloth as it is seen. `across` runs from −1, the left of the picture, to 1; `down` from 0, the top of the waist, to
 * 1, the hem. Straight down the middle everything is to scale; towards the sides the levels rise a little, as a round
 * skirt's do for somebody who stands before it. Where a waist is not level, its top is not; the hem always is.
 */
export interface Surface {
  readonly top: number;
  readonly length: number;
  readonly fall: Fall;
  readonly at: (across: number, down: number) => Point;
  /** Turn of the wave of folds at a place: 0 on a ridge, π in a valley. */
  readonly turn: (across: number) => number;
  /** Where on the cloth the wave has that turn. */
  readonly turned: (turn: number) => number;
  /** How open the folds are at a level, 0 to 1. */
  readonly open: (down: number) => number;
  /** Level above which no fold is shaded. */
  readonly foldsFrom: number;
  /** Left and right edge of the skirt at a level below its top. */
  readonly edges: Edges;
}

/** A hundredth of a millimetre is finer than any screen, and half as long to write. */
export const fine = (value: number): number => Math.round(value * 100) / 100;

/** How much of its half breadth the middle of a round is seen lower than its sides: waist and hem. */
const LIFT = { waist: 0.05, hem: 0.15 };
/** Where folds begin to open, and where they are wholly open. */
const OPENS = { from: 0.12, to: 1.05 };

const IN_MIDDLE = Math.sin(0.8);

export function surfaceOf(plan: SkirtPlan, stance: Stance, side: WornSide): Surface {
  const { skirt } = plan;
  const { scale } = stance;
  const fall = fallOf(plan);
  const length = Math.max(1, skirt.finishedLength.value * scale);
  const edges = edgesOf(plan, stance, fall, side, length);
  const lap = lapOf(stance, edges, side, length);
  const { folds, depth } = fall;
  // Folds are not ruled with a ruler: some are broader. The middle of the picture is always a ridge.
  const uneven = side === 'back' ? -1 : 1;
  const own = (u: number): number => uneven * 0.42 * (Math.sin(3.4 * uneven * u + 0.8) - IN_MIDDLE);
  const turn = (u: number): number => Math.PI * (folds * u + own(u));
  const turned = (wanted: number): number => {
    let u = wanted / (Math.PI * folds);
    for (let i = 0; i < 4; i++) u -= (turn(u) - wanted) / (Math.PI * folds);
    return u;
  };
  const foldsFrom = lap?.knee ?? 0;
  const opens = Math.max(OPENS.from, 0.9 * foldsFrom);
  const open = (v: number): number => rise(opens, OPENS.to, v);
  const swing = (0.3 + 0.55 * depth) / (Math.PI * folds);
  const drop = (half: number): number => ((2 * half) / folds) * (0.035 + 0.12 * depth);
  const most = Math.min(skirt.hang.sideExcess.value * scale, 0.12 * length);
  const rises = risesOf(plan);
  const level = levelFrom(plan);
  // What belongs to a level is worked out once: points come level by level, and levels come again.
  const known = new Map<number, Ring>();
  let last = ringAt(0);
  function ringAt(v: number): Ring {
    const [left, right] = edges(v * length);
    const half = (left + right) / 2;
    const opened = open(v);
    return {
      v,
      half,
      middle: (right - left) / 2,
      y: stance.waist + (lap ? lap.down(v * length) : v * length),
      lift: (LIFT.waist + (LIFT.hem - LIFT.waist) * v) * half,
      swing: swing * opened,
      drop: 0.5 * drop(half) * opened,
      side: most * v,
      made: rises && v < level ? scale * (1 - v / level) ** 2 : 0,
    };
  }
  function ring(v: number): Ring {
    const found = known.get(v) ?? ringAt(v);
    known.set(v, found);
    return found;
  }
  const at = (u: number, v: number): Point => {
    if (last.v !== v) last = ring(v);
    const wave = turn(u);
    const bent = within(-1, u + last.swing * (1 - u * u * u * u * u * u) * Math.sin(wave), 1);
    const angle = (bent * Math.PI) / 2;
    const facing = Math.cos(angle);
    const rising = last.lift * (1 - facing) + last.drop * (0.35 + 0.65 * facing) * (1 - Math.cos(wave));
    // In profile the seam is in the middle.
    const toSeam = side === 'side' ? 1 - Math.abs(u) : u;
    const made = rises && last.made !== 0 ? last.made * rises(turnAt(side, u)) : 0;
    const sinks = last.side * toSeam * toSeam - made;
    if (lap?.across) {
      const { x, y } = lap.across((1 + Math.sin(angle)) / 2, v);
      return point(fine(x), fine(y - last.drop * facing * (1 - Math.cos(wave)) + sinks));
    }
    return point(fine(last.middle + last.half * Math.sin(angle)), fine(last.y - rising + sinks));
  };
  return { top: stance.waist, length, fall, at, turn, turned, open, foldsFrom, edges };
}

/** One level of the skirt, in drawing millimetres. */
interface Ring {
  readonly v: number;
  readonly half: number;
  readonly middle: number;
  readonly y: number;
  readonly lift: number;
  readonly swing: number;
  readonly drop: number;
  readonly side: number;
  /** For each millimetre that the waist rises. */
  readonly made: number;
}
