import type { Notice } from '../figure/index.ts';
import { lengthOf } from '../geometry/index.ts';
import { mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { DraftContext } from './context.ts';
import { cutOf, type CutOptions, type Draft } from './cuts/index.ts';
import { goesOn } from './goesOn.ts';
import type { EdgeName } from './panel.ts';
import { canWalk } from './walks.ts';
import { waistOf, type WaistOptions, type WaistPlan } from './waists/index.ts';

/** A drafted skirt: its panels, its waist, and what was found while drafting. */
export interface Skirt extends Draft {
  readonly waist: WaistPlan;
}

/** Drafts a skirt. Never throws: what can't be met is among its notices. */
export function draftSkirt(context: DraftContext, cut: CutOptions, waist: WaistOptions): Skirt {
  const dress = waistOf(waist);
  const draft = asSewn(cutOf(cut).draft(context, cut, dress.topAllowance(waist)));
  const plan = dress.plan(context, waist, draft.opening);
  const notices: Notice[] = [
    ...draft.notices,
    ...goesOn(context.body, draft.opening),
    ...canWalk(context, draft),
    ...plan.notices,
  ];
  return { ...draft, waist: plan, notices };
}

/** Hand arithmetic takes the seam level; on a steep side the stitching takes more. Below this nobody sees it. */
const UNSEEN = 0.5;

/** The rounds at top and hem are those of hand arithmetic, and those of the stitching where the two differ. */
function asSewn(draft: Draft): Draft {
  const sewn = (name: EdgeName): number =>
    draft.panels.reduce(
      (sum, { shape }) => sum + lengthOf(shape.edges.find((edge) => edge.name === name)?.finished ?? []),
      0,
    );
  const top = sewn('waist');
  const hem = sewn('hem');
  // Seams deeper than the panel is wide leave nothing to measure; that it does not go on is told anyhow.
  if (top <= 0 || hem <= 0) return draft;
  return {
    ...draft,
    opening: draft.opening.value - top > UNSEEN ? figure.length(mm(top), 'skirt.openingSewn') : draft.opening,
    hemRound:
      draft.hemRound.value - hem > UNSEEN ? figure.length(mm(hem), 'skirt.hemRoundSewn') : draft.hemRound,
  };
}
