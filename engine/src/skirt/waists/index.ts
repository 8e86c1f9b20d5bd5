import type { Fields } from '../../fields/index.ts';
import { turnedCasing, type TurnedCasingOptions } from './turnedCasing.ts';
import type { Waist } from './waist.ts';

export type { Waist, WaistPlan } from './waist.ts';

/** Options of any waist: a union told apart by `kind`. */
export type WaistOptions = TurnedCasingOptions;

const waists: { readonly [Kind in WaistOptions['kind']]: Waist<Extract<WaistOptions, { kind: Kind }>> } = {
  'turned casing': turnedCasing,
};

/** Schema of a waist's options; without a kind it is the turned casing. */
export const waistOptions = (fields: Fields) => turnedCasing.options(fields);

export const waistOf = (options: WaistOptions): Waist<WaistOptions> => waists[options.kind];
