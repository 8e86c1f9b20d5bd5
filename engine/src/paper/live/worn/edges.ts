import type { SkirtPlan } from '../../../plan/index.ts';
import { hungRounds, type Fall } from './fall.ts';
import { HALF_BREADTH, HALF_DEPTH, within, type Stance, type WornSide } from './stance.ts';

/** How far the skirt reaches to the left and to the right, at a level below its top; all in drawing millimetres. */
export type Edges = (below: number) => readonly [left: number, right: number];

/** How far forward of the middle a body's front is, of its depth: a seat is behind; and one that is expecting, before. */
const FORWARD = { waist: 1, hip: 0.86 };
const EXPECTING = { waist: 1.3, hip: 1 };
/** How far a growing belly stands out below the waist, of the waist's half depth. */
const BELLY = 0.16;

/** Under a seam that is gathered a tier stands out at once, then falls straighter. */
const STEP = 0.5;

interface Tier {
  readonly from: number;
  readonly to: number;
  /** Half of the skirt's breadth at its lower edge. */
  readonly half: number;
}

interface Forward {
  readonly waist: number;
  readonly hip: number;
  readonly belly: number;
}

/** The skirt's two edges: over the hips, then straight to the hem as it hangs, tier by tier. */
export function edgesOf(plan: SkirtPlan, stance: Stance, fall: Fall, side: WornSide, length: number): Edges {
  const { scale, waistGirth, hipGirth } = stance;
  const { skirt, body } = plan;
  const hips = stance.hip - stance.waist;
  const gathers = within(0, skirt.waist.gatherRatio.value - 1, 2);
  const half = side === 'side' ? HALF_DEPTH : HALF_BREADTH;
  const starts = Math.min(0.5 * length, skirt.waist.above.value * scale);
  const waist = half * waistGirth * (1 + 0.03 * gathers);
  const hip = half * hipGirth * 1.03;
  /** A hem hangs rounder than hips are: its oval is less flat the further it stands from the body. */
  const hung = (round: number, below: number): number => {
    const roundness = within(0, (round * scale) / Math.max(waistGirth, hipGirth) - 1, 1) * 0.5;
    const asHung = (half + (1 / (2 * Math.PI) - half) * roundness) * round * scale;
    return Math.min(asHung, Math.max(waist, hip) + 0.95 * below);
  };
  const hem = hung(fall.round, length);
  const bow = within(0.55, 0.9 - 0.16 * gathers, 0.9);
  const tiers = skirt.rounds.length > 1 ? tiersOf(plan, scale, length, hung) : [];
  const straight = (w: number, y: number): number =>
    w + (hem - w) * within(0, (y - starts) / (length - starts), 1) ** bow;
  const stepped = (w: number, y: number): number => {
    const tier = tiers.findIndex(({ to }) => y <= to + 1e-9);
    const found = tiers[tier];
    if (!found) return hem;
    const before = tiers[tier - 1]?.half ?? w;
    const from = Math.max(found.from, starts);
    const share = within(0, (y - from) / Math.max(1e-6, found.to - from), 1);
    return before + (found.half - before) * share ** (tier === 0 ? bow : STEP);
  };
  const spread = tiers.length > 0 ? stepped : straight;
  const each = (forward: Forward): ((y: number) => number) => {
    const [w, h] = [waist * forward.waist, hip * forward.hip];
    return (y) => {
      const v = within(0, y / length, 1);
      const cone = spread(w, y);
      const share = within(0, y / hips, 1);
      const body =
        w + (h - w) * Math.sin((share * Math.PI) / 2) + forward.belly * w * Math.sin(share * Math.PI);
      // Cloth lies on the hips where they stand out beyond its own line, and leaves them without a corner.
      const over = y < hips ? body : h + (hem - h) * within(0, (y - hips) / Math.max(1, length - hips), 1);
      const soft = (tiers.length > 0 ? 0.05 : 0.14) * w * Math.min(1, 3 * v);
      return hem < h && y > hips ? over : (cone + over + Math.sqrt((cone - over) ** 2 + soft ** 2)) / 2;
    };
  };
  if (side === 'side') {
    const { waist: atWaist, hip: atHip } = body.expecting ? EXPECTING : FORWARD;
    const front = each({ waist: atWaist, hip: atHip, belly: body.expecting ? BELLY : 0 });
    const back = each({ waist: 2 - atWaist, hip: 2 - atHip, belly: 0 });
    return (y) => [front(y), back(y)];
  }
  const both = each({ waist: 1, hip: 1, belly: body.expecting ? 0.3 * BELLY : 0 });
  const { left, right } = body.hipSides;
  if (left.value === right.value) {
    return (y) => {
      const reach = both(y);
      return [reach, reach];
    };
  }
  // A fuller half stands out further; the hem hangs from both.
  const fuller = (own: number): number => (2 * own) / (left.value + right.value);
  const ofHalf = (own: number) => each({ waist: 1, hip: fuller(own), belly: 0 });
  const [hers, other] = [ofHalf(left.value), ofHalf(right.value)];
  return side === 'front' ? (y) => [other(y), hers(y)] : (y) => [hers(y), other(y)];
}

function tiersOf(
  plan: SkirtPlan,
  scale: number,
  length: number,
  hung: (round: number, below: number) => number,
): Tier[] {
  const rounds = hungRounds(plan);
  let from = 0;
  return plan.skirt.rounds.map(({ fromHem }, i) => {
    const to = Math.max(from, length - fromHem * scale);
    const tier = { from, to, half: hung(rounds[i] ?? 0, to) };
    from = to;
    return tier;
  });
}
