import { crosswiseFold } from './crosswiseFold.ts';
import { doubleFold } from './doubleFold.ts';
import type { Lay, LayInput } from './lay.ts';
import { lengthwiseFold } from './lengthwiseFold.ts';
import { open } from './open.ts';

/** Pieces in every way there is to lay them by hand. */
export const laysOf = (input: LayInput): [Lay, ...Lay[]] => [
  doubleFold(input),
  lengthwiseFold(input),
  crosswiseFold(input),
  open(input),
];
