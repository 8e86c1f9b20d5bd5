import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { drawstring, type DrawstringOptions } from './drawstring.ts';
import { flatFront, type FlatFrontOptions } from './flatFront.ts';
import { plainBand, type PlainBandOptions } from './plainBand.ts';
import { separateCasing, type SeparateCasingOptions } from './separateCasing.ts';
import { stretchBand, type StretchBandOptions } from './stretchBand.ts';
import { turnedCasing, type TurnedCasingOptions } from './turnedCasing.ts';
import type { Waist } from './waist.ts';

export type { Closure, Cord, TakenUp, Waist, WaistBuild, WaistElastic, WaistPlan } from './waist.ts';

/** Options of any waist: a union told apart by `kind`. */
export type WaistOptions =
  | TurnedCasingOptions
  | SeparateCasingOptions
  | FlatFrontOptions
  | DrawstringOptions
  | PlainBandOptions
  | StretchBandOptions;
export type WaistKind = WaistOptions['kind'];

const waists: { readonly [Kind in WaistKind]: Waist<Extract<WaistOptions, { kind: Kind }>> } = {
  'turned casing': turnedCasing,
  'separate casing': separateCasing,
  'flat front': flatFront,
  drawstring,
  'plain waistband': plainBand,
  'stretch band': stretchBand,
};

/** Schema of a waist's options; without a kind it is the turned casing. */
export const waistOptions = (fields: Fields) =>
  z.discriminatedUnion('kind', [
    turnedCasing.options(fields),
    separateCasing.options(fields),
    flatFront.options(fields),
    drawstring.options(fields),
    plainBand.options(fields),
    stretchBand.options(fields),
  ]);

/** The waist that these options are for. */
export const waistOf = <Kind extends WaistKind>(options: {
  readonly kind: Kind;
}): Waist<Extract<WaistOptions, { kind: Kind }>> => waists[options.kind];
