import { clothOf, type ClothPiece } from '../../../cloth/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Panel } from '../../../skirt/index.ts';
import type { WornSide } from './stance.ts';
import { hangingRounds } from './tiers.ts';
import { joined, stretchesSeen, type Stretch } from './view.ts';
import { BACK, FRONT, WHOLE, type WaistLook } from './waistLook.ts';

/** A part of the picture that is of one cloth. */
export interface Patch {
  readonly from: number;
  readonly to: number;
  readonly seen: readonly Stretch[];
  readonly piece: ClothPiece;
}

/** From the top down; where a wrap lies over itself, what is over comes last. */
export function patchesOf(plan: SkirtPlan, side: WornSide, look: WaistLook): Patch[] {
  const { skirt, cloths } = plan;
  const levels = levelsOf(plan, look);
  const ofRounds = skirt.rounds.flatMap(({ panels }, i): Patch[] => {
    const { from, to } = levels[i] ?? { from: 0, to: 1 };
    const inOrder = [...panels].sort((a, b) => a.around.to - b.around.to);
    return alike(plan, inOrder).map((some) => ({
      from,
      to,
      piece: some[0],
      seen: joined(some.flatMap(({ around }) => stretchesSeen(side, around))),
    }));
  });
  const has = (name: ClothPiece): boolean => cloths.some(({ parts }) => parts.some((part) => part === name));
  const band = (['casing strip', 'waistband', 'waistband back'] as const).filter(has).map((piece): Patch => ({
    from: 0,
    to: look.band,
    piece,
    seen: stretchesSeen(side, !has('waistband back') ? WHOLE : piece === 'waistband back' ? BACK : FRONT),
  }));
  return [...ofRounds, ...(look.band > 0 ? band : [])];
}

/** Panels next to one another that are of one cloth. */
function alike({ cloths }: SkirtPlan, panels: readonly Panel[]): [Panel, ...Panel[]][] {
  const runs: [Panel, ...Panel[]][] = [];
  for (const panel of panels) {
    const last = runs.at(-1);
    if (last && clothOf(cloths, last[0]) === clothOf(cloths, panel)) last.push(panel);
    else runs.push([panel]);
  }
  return runs;
}

/** Where each round begins and ends; the first begins below the waist's own piece. */
export function levelsOf(
  plan: SkirtPlan,
  { band }: WaistLook,
): { readonly from: number; readonly to: number }[] {
  const hanging = hangingRounds(plan);
  return [{ from: band, to: hanging[0]?.from ?? 1 }, ...hanging];
}
