import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { DraftContext, DraftGiven } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { WaistPlan } from '../waists/index.ts';
import type { Extra, Extras } from './extra.ts';

export type { Extra, Extras, GrowthTucks, Lining, Pockets, Slits } from './extra.ts';

/** Schema of the extras: each is there when it is named. */
export const extrasOptions = (_fields: Fields) => z.strictObject({});

export type ExtrasOptions = z.infer<ReturnType<typeof extrasOptions>>;

/** Length of the panels that is taken up in growth tucks; null without. */
export const takenInTucks = (_given: DraftGiven, _chosen: ExtrasOptions): Figure<Mm> | null => null;

/** Every extra that was asked for. */
export const planExtras = (
  _context: DraftContext,
  _chosen: ExtrasOptions,
  _draft: Draft,
  _waist: WaistPlan,
): Extras => ({ pockets: null, slits: null, lining: null, tucks: null });

export const extrasOf = ({ pockets, slits, lining, tucks }: Extras): Extra[] =>
  [pockets, slits, lining, tucks].filter((each) => each !== null);
