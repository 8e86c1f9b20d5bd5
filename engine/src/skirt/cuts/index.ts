import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { circle, type CircleOptions } from './circle.ts';
import type { Cut } from './cut.ts';
import { flared, type FlaredOptions } from './flared.ts';
import { gathered, type GatheredOptions } from './gathered.ts';
import { gored, type GoredOptions } from './gored.ts';
import { tiered, type TieredOptions } from './tiered.ts';
import { wrap, type WrapOptions } from './wrap.ts';

export type { Cut, Draft, Hang, Marking, Marks, Overlap } from './cut.ts';

/** Options of any cut: a union told apart by `kind`. */
export type CutOptions =
  FlaredOptions | GatheredOptions | CircleOptions | TieredOptions | GoredOptions | WrapOptions;
export type CutKind = CutOptions['kind'];

const cuts: { readonly [Kind in CutKind]: Cut<Extract<CutOptions, { kind: Kind }>> } = {
  flared,
  gathered,
  circle,
  tiered,
  gored,
  wrap,
};

/** Schema of any cut's options. */
export const cutOptions = (fields: Fields) =>
  z.discriminatedUnion('kind', [
    flared.options(fields),
    gathered.options(fields),
    circle.options(fields),
    tiered.options(fields),
    gored.options(fields),
    wrap.options(fields),
  ]);

/** The cut that these options are for. */
export const cutOf = <Kind extends CutKind>(options: {
  readonly kind: Kind;
}): Cut<Extract<CutOptions, { kind: Kind }>> => cuts[options.kind];

/** Kind of the waist that a cut has where a document names none; null where the turned casing will do, or nothing can be said. */
export function usualWaistFor(written: unknown): string | null {
  if (typeof written !== 'object' || written === null || Array.isArray(written)) return null;
  const options = written as Readonly<Record<string, unknown>>;
  const { kind = flared.kind } = options;
  const cut = typeof kind === 'string' && Object.hasOwn(cuts, kind) ? cuts[kind as CutKind] : null;
  return cut?.usualWaist?.(options) ?? null;
}
