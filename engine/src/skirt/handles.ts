import { mm } from '../units/index.ts';
import type { DraftContext, DraftGiven } from './context.ts';
import { contextOf } from './contextOf.ts';
import { cutOf } from './cuts/index.ts';
import { hemLimits } from './cuts/limits.ts';
import { extrasHandles } from './extras/index.ts';
import type { OptionHandle } from './handle.ts';
import type { Skirt, SkirtOptions } from './skirt.ts';
import { waistOf } from './waists/index.ts';

/** What can be taken hold of of a skirt, and where in the document the options stand that a move writes. */
export interface SkirtHandle {
  readonly path: readonly string[];
  readonly handle: OptionHandle;
}

/** Everything that the cut, the waist and the extras of a drafted skirt offer to be taken hold of. */
export function skirtHandles(given: DraftGiven, chosen: SkirtOptions, skirt: Skirt): readonly SkirtHandle[] {
  const context = contextOf(given, chosen.extras);
  const { cut } = chosen;
  const dress = waistOf(chosen.waist);
  const top = dress.top(context, chosen.waist);
  const { waist, extras } = skirt;
  const ofCut = [...hemHandles(context, skirt), ...(cutOf(cut).handles?.(context, cut, top, skirt) ?? [])];
  return [
    ...dress.handles(context, chosen.waist, skirt, waist).map((handle) => ({ path: ['waist'], handle })),
    ...ofCut.map((handle) => ({ path: ['cut'], handle })),
    ...extrasHandles({ context, draft: skirt, waist, extras }, chosen.extras).map(([name, handle]) => ({
      path: ['extras', name],
      handle,
    })),
  ];
}

/** The depth of the hem, what is to be let down in it. */
function hemHandles(context: DraftContext, { hemAllowance, finishedLength }: Skirt): readonly OptionHandle[] {
  const deeper = context.inHem?.value ?? 0;
  const value = hemAllowance.value;
  const least = hemLimits.least + deeper;
  // A narrow hem of a cut's own is less than its field takes.
  if (value < least - HAIR) return [];
  return [
    {
      name: 'hem',
      value,
      least,
      most: Math.min(hemLimits.most + deeper, finishedLength.value),
      step: context.mark,
      writes: (wish) => ({ lengths: { hem: mm(wish - deeper) } }),
    },
  ];
}

/** What binary fractions lose is no depth. */
const HAIR = 1e-6;
