import type { Notice } from '../figure/index.ts';
import type { DraftContext } from './context.ts';
import { cutOf, type CutOptions, type Draft } from './cuts/index.ts';
import { goesOn } from './goesOn.ts';
import { canWalk } from './walks.ts';
import { waistOf, type WaistOptions, type WaistPlan } from './waists/index.ts';

/** A drafted skirt: its panels, its waist, and what was found while drafting. */
export interface Skirt extends Draft {
  readonly waist: WaistPlan;
}

/** Drafts a skirt. Never throws: what can't be met is among its notices. */
export function draftSkirt(context: DraftContext, cut: CutOptions, waist: WaistOptions): Skirt {
  const dress = waistOf(waist);
  const draft = cutOf(cut).draft(context, cut, dress.topAllowance(waist));
  const plan = dress.plan(context, waist, draft.opening);
  const notices: Notice[] = [
    ...draft.notices,
    ...goesOn(context.body, draft.opening),
    ...canWalk(context, draft),
    ...plan.notices,
  ];
  return { ...draft, waist: plan, notices };
}
