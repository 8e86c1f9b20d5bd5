import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { type Mm } from '../../units/index.ts';
import { caution } from '../codes.ts';
import type { DraftContext, DraftGiven } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { WaistPlan } from '../waists/index.ts';
import type { Extra, Extras, Planned, Pockets, Slits } from './extra.ts';
import { liningOptions, planLining } from './lining.ts';
import { liningClothOf, liningClothOptions } from './liningCloth.ts';
import { planPockets, pocketOptions } from './pockets.ts';
import { planSlits, slitOptions } from './slits.ts';
import { tuckOptions } from './tuckOptions.ts';
import { letsDownOf } from './letsDown.ts';
import { planTucks, takenUp } from './tucks.ts';

export type {
  Extra,
  ExtraName,
  Extras,
  GrowthTucks,
  Lining,
  LiningCloth,
  Pockets,
  SeamSide,
  Slits,
  Takes,
} from './extra.ts';
export { extrasHandles } from './handles.ts';
export { withPocketNotches } from './pocketNotches.ts';

/** Schema of the extras: each is there when it is named. */
export const extrasOptions = (fields: Fields) =>
  z.strictObject({
    pockets: pocketOptions(fields).optional(),
    slits: slitOptions(fields).optional(),
    lining: liningOptions(fields).optional(),
    tucks: tuckOptions(fields).optional(),
    /** Of the lining, and of pocket bags where they are cut from it. */
    liningCloth: liningClothOptions(fields).prefault({}),
  });

export type ExtrasOptions = z.infer<ReturnType<typeof extrasOptions>>;

/** Length of the panels that is taken up in growth tucks; null without. */
export const takenInTucks = (given: DraftGiven, { tucks }: ExtrasOptions): Figure<Mm> | null =>
  tucks ? takenUp(given, tucks) : null;

/** What a deep hem adds to the cut's own; null without. */
export const keptInHem = (given: DraftGiven, { tucks }: ExtrasOptions): Figure<Mm> | null =>
  tucks?.how === 'deep hem' ? letsDownOf(given, tucks).letsDown : null;

const NONE = { extra: null, notices: [] } as const;

/** Every extra that was asked for. */
export function planExtras(
  context: DraftContext,
  chosen: ExtrasOptions,
  draft: Draft,
  waist: WaistPlan,
): Extras {
  const cloth = liningClothOf(chosen.liningCloth);
  const asked = <O, E extends Extra>(options: O | undefined, plan: (options: O) => Planned<E>): Planned<E> =>
    options === undefined ? NONE : plan(options);
  const pockets = asked(chosen.pockets, (each) => planPockets(context, each, draft, waist));
  const tucks = asked(chosen.tucks, (each) => planTucks(context, each, draft, waist, pockets.extra));
  const slits = asked(chosen.slits, (each) => planSlits(context, each, draft, waist, tucks.extra));
  const lining = asked(chosen.lining, (each) => planLining(context, each, draft, waist, cloth));
  const fromLining = lining.extra !== null || pockets.extra?.cloth === 'lining';
  return {
    pockets: pockets.extra,
    slits: slits.extra,
    lining: lining.extra,
    tucks: tucks.extra,
    liningCloth: fromLining ? cloth : null,
    notices: [
      ...[pockets, tucks, slits, lining].flatMap(({ notices }) => notices),
      ...meeting(pockets.extra, slits.extra),
    ],
  };
}

/** A slit that runs up into a pocket's opening leaves no seam between them. */
function meeting(pockets: Pockets | null, slits: Slits | null): Notice[] {
  if (!pockets || !slits || !pockets.sides.some((side) => slits.sides.includes(side))) return [];
  const bag = pockets.takes.to - pockets.bagDepth.value;
  return slits.takes.to > bag ? [caution('skirt.pocketMeetsSlit', { height: slits.height })] : [];
}

export const extrasOf = ({ pockets, slits, lining, tucks }: Extras): Extra[] =>
  [pockets, slits, lining, tucks].filter((each) => each !== null);
