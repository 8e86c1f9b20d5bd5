import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Cut } from './cut.ts';
import { flared, type FlaredOptions } from './flared.ts';
import { gathered, type GatheredOptions } from './gathered.ts';

export type { Cut, Draft, Hang, Marking, Marks, Overlap } from './cut.ts';

/** Options of any cut: a union told apart by `kind`. */
export type CutOptions = FlaredOptions | GatheredOptions;
export type CutKind = CutOptions['kind'];

const cuts: { readonly [Kind in CutKind]: Cut<Extract<CutOptions, { kind: Kind }>> } = { flared, gathered };

/** Schema of any cut's options. */
export const cutOptions = (fields: Fields) =>
  z.discriminatedUnion('kind', [flared.options(fields), gathered.options(fields)]);

/** The cut that these options are for. */
export const cutOf = <Kind extends CutKind>(options: {
  readonly kind: Kind;
}): Cut<Extract<CutOptions, { kind: Kind }>> => cuts[options.kind];
