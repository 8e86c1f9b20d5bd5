import { growsShort } from '../body/index.ts';
import type { Notice } from '../figure/index.ts';
import { lengthOf } from '../geometry/index.ts';
import { mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { DraftContext, DraftGiven } from './context.ts';
import { contextOf } from './contextOf.ts';
import { cutOf, type CutOptions, type Draft } from './cuts/index.ts';
import { goesOn } from './goesOn.ts';
import { extrasOf, planExtras, withPocketNotches, type Extras, type ExtrasOptions } from './extras/index.ts';
import type { EdgeName, Round } from './panel.ts';
import { canWalk } from './walks.ts';
import { waistOf, type WaistOptions, type WaistPlan } from './waists/index.ts';

/** A drafted skirt: its panels, its waist, its extras, and what was found while drafting. */
export interface Skirt extends Draft {
  readonly waist: WaistPlan;
  readonly extras: Extras;
}

/** What is chosen of a skirt. */
export interface SkirtOptions {
  readonly cut: CutOptions;
  readonly waist: WaistOptions;
  readonly extras: ExtrasOptions;
}

/** Drafts a skirt. Never throws: what can't be met is among its notices. Parts and works are those of all it is made of. */
export function draftSkirt(given: DraftGiven, chosen: SkirtOptions): Skirt {
  const context = contextOf(given, chosen.extras);
  const dress = waistOf(chosen.waist);
  const top = dress.top(context, chosen.waist);
  const draft = asSewn(cutOf(chosen.cut).draft(context, chosen.cut, top));
  const waist = dress.plan(context, chosen.waist, draft);
  const extras = planExtras(context, chosen.extras, draft, waist);
  const more = extrasOf(extras);
  const notices: Notice[] = [
    ...draft.notices,
    ...(top.opens || draft.overlap ? [] : goesOn(context.body, draft.opening)),
    ...canWalk(context, draft, extras.slits),
    ...waist.notices,
    ...more.flatMap((each) => each.notices),
    ...extras.notices,
    ...grows(context, extras),
  ];
  return {
    ...draft,
    ...withPocketNotches(draft, extras.pockets),
    waist,
    extras,
    parts: [...draft.parts, ...waist.parts, ...more.flatMap(({ parts }) => parts)],
    works: [...draft.works, ...waist.works, ...more.flatMap(({ works }) => works)],
    notices,
  };
}

/** A child whose skirt will be short before its time, tucks and deep hem counted in. */
const grows = ({ body: { growth } }: DraftContext, { tucks }: Extras): readonly Notice[] =>
  growth ? growsShort(growth, tucks?.letsDown ?? null) : [];

/** Hand arithmetic takes the seam level; on a steep side the stitching takes more. Below this nobody sees it. */
const UNSEEN = 0.5;

/** The rounds at top and hem are those of hand arithmetic, and those of the stitching where the two differ. */
function asSewn(draft: Draft): Draft {
  const sewn = (name: EdgeName, { panels }: Round): number =>
    panels.reduce(
      (sum, { shape }) => sum + lengthOf(shape.edges.find((edge) => edge.name === name)?.finished ?? []),
      0,
    );
  const { rounds } = draft;
  const top = sewn('waist', rounds[0]);
  const hem = sewn('hem', rounds.at(-1) ?? rounds[0]);
  // Seams deeper than the panel is wide leave nothing to measure; that it does not go on is told anyhow.
  if (top <= 0 || hem <= 0) return draft;
  return {
    ...draft,
    opening: draft.opening.value - top > UNSEEN ? figure.length(mm(top), 'skirt.openingSewn') : draft.opening,
    hemRound:
      draft.hemRound.value - hem > UNSEEN ? figure.length(mm(hem), 'skirt.hemRoundSewn') : draft.hemRound,
  };
}
