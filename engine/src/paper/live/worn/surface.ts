import { point, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { fallOf, type Fall } from './fall.ts';
import { HALF_BREADTH, HALF_DEPTH, rise, within, type Stance, type WornSide } from './stance.ts';

/**
 * The cloth as it is seen. `across` runs from −1, the left of the picture, to 1; `down` from 0, the top fold, to 1,
 * the hem. Straight down the middle everything is to scale; towards the sides the levels rise a little, as a round
 * skirt's do for somebody who stands before it.
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
  /** Left and right edge of the skirt at a level below its top. */
  readonly edges: (below: number) => readonly [number, number];
}

/** A hundredth of a millimetre is finer than any screen, and half as long to write. */
export const fine = (value: number): number => Math.round(value * 100) / 100;

/** How much of its half breadth the middle of a round is seen lower than its sides: waist and hem. */
const LIFT = { waist: 0.05, hem: 0.15 };
/** Where folds begin to open, and where they are wholly open. */
const OPENS = { from: 0.12, to: 1.05 };

export function surfaceOf(plan: SkirtPlan, stance: Stance, side: WornSide): Surface {
  const { skirt } = plan;
  const { scale } = stance;
  const fall = fallOf(plan);
  const length = Math.max(1, skirt.finishedLength.value * scale);
  const profile = profileOf(plan, stance, fall, side, length);
  const { folds, depth } = fall;
  // Folds are not ruled with a ruler: some are broader. The middle of the picture is always a ridge.
  const uneven = side === 'back' ? -1 : 1;
  const own = (u: number): number => uneven * 0.42 * (Math.sin(3.4 * uneven * u + 0.8) - Math.sin(0.8));
  const turn = (u: number): number => Math.PI * (folds * u + own(u));
  const turned = (wanted: number): number => {
    let u = wanted / (Math.PI * folds);
    for (let i = 0; i < 4; i++) u -= (turn(u) - wanted) / (Math.PI * folds);
    return u;
  };
  const open = (v: number): number => rise(OPENS.from, OPENS.to, v);
  const swing = (0.3 + 0.55 * depth) / (Math.PI * folds);
  const drop = (half: number): number => ((2 * half) / folds) * (0.035 + 0.12 * depth);
  const most = Math.min(skirt.hang.sideExcess.value * scale, 0.12 * length);
  // Points come level by level: what belongs to the level is worked out once.
  let last = ringAt(0);
  function ringAt(v: number): Ring {
    const [left, right] = profile(v * length);
    const half = (left + right) / 2;
    const opened = open(v);
    return {
      v,
      half,
      middle: (right - left) / 2,
      y: stance.waist + v * length,
      lift: (LIFT.waist + (LIFT.hem - LIFT.waist) * v) * half,
      swing: swing * opened,
      drop: 0.5 * drop(half) * opened,
      side: most * v,
    };
  }
  const at = (u: number, v: number): Point => {
    if (last.v !== v) last = ringAt(v);
    const wave = turn(u);
    const bent = within(-1, u + last.swing * (1 - u ** 6) * Math.sin(wave), 1);
    const angle = (bent * Math.PI) / 2;
    const facing = Math.cos(angle);
    const rising = last.lift * (1 - facing) + last.drop * (0.35 + 0.65 * facing) * (1 - Math.cos(wave));
    // In profile the seam is in the middle.
    const toSeam = side === 'side' ? 1 - Math.abs(u) : u;
    return point(
      fine(last.middle + last.half * Math.sin(angle)),
      fine(last.y - rising + last.side * toSeam * toSeam),
    );
  };
  return { top: stance.waist, length, fall, at, turn, turned, open, edges: profile };
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
}

type Profile = (below: number) => readonly [number, number];

/** How far forward of the middle a body's front is, of its depth, and its back: a seat is behind. */
const FORWARD = { waist: 1, hip: 0.86 };

/** The skirt's two edges: over the hips, then straight to the hem as it hangs. */
function profileOf(plan: SkirtPlan, stance: Stance, fall: Fall, side: WornSide, length: number): Profile {
  const { scale, waistGirth, hipGirth } = stance;
  const hips = stance.hip - stance.waist;
  const gathers = within(0, plan.skirt.waist.gatherRatio.value - 1, 2);
  const half = side === 'side' ? HALF_DEPTH : HALF_BREADTH;
  const waist = half * waistGirth * (1 + 0.03 * gathers);
  const hip = half * hipGirth * 1.03;
  // A hem hangs rounder than hips are: its oval is less flat the further it stands from the body.
  const roundness = within(0, (fall.round * scale) / Math.max(waistGirth, hipGirth) - 1, 1) * 0.5;
  const hemHalf = (half + (1 / (2 * Math.PI) - half) * roundness) * fall.round * scale;
  const hem = Math.min(hemHalf, Math.max(waist, hip) + 0.95 * length);
  const bow = within(0.55, 0.9 - 0.16 * gathers, 0.9);
  const each = (forward: { readonly waist: number; readonly hip: number }): ((y: number) => number) => {
    const [w, h] = [waist * forward.waist, hip * forward.hip];
    return (y) => {
      const v = within(0, y / length, 1);
      const cone = w + (hem - w) * v ** bow;
      const body = w + (h - w) * Math.sin((within(0, y / hips, 1) * Math.PI) / 2);
      // Cloth lies on the hips where they stand out beyond its own line, and leaves them without a corner.
      const over = y < hips ? body : h + (hem - h) * within(0, (y - hips) / Math.max(1, length - hips), 1);
      const soft = 0.14 * w * Math.min(1, 3 * v);
      return hem < h && y > hips ? over : (cone + over + Math.sqrt((cone - over) ** 2 + soft ** 2)) / 2;
    };
  };
  if (side !== 'side') {
    const both = each({ waist: 1, hip: 1 });
    return (y) => {
      const reach = both(y);
      return [reach, reach];
    };
  }
  const front = each(FORWARD);
  const back = each({ waist: 2 - FORWARD.waist, hip: 2 - FORWARD.hip });
  return (y) => [front(y), back(y)];
}
