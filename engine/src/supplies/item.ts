import type { Colour } from '../fields/index.ts';
import type { Figure } from '../figure/index.ts';
import type { Money, Mm } from '../units/index.ts';
import type { Notion } from './options.ts';

/** What can go wrong at the counter, each with words of its own. */
export type Advice =
  | 'boltWidth'
  | 'cutCrooked'
  | 'noMore'
  | 'washable'
  | 'dyeLot'
  | 'realWidth'
  | 'satinNeedle'
  | 'threadColour'
  | 'elasticSoft'
  | 'liningWashes'
  | 'knitStretches'
  | 'interfacingTry'
  | 'cordEnds'
  | 'zipShortened'
  | 'buttonsFlat'
  | 'chalkWashesOut'
  | 'pinsFine'
  | 'glueWashable'
  | 'sprayTemporary'
  | 'sealantDries';

/** One line of the shopping list. */
export interface Item {
  readonly what:
    | 'cloth'
    | 'lining'
    | 'knit'
    | 'interfacing'
    | 'ribbon'
    | 'elastic'
    | 'cord'
    | 'thread'
    | 'overlock thread'
    | Notion;
  /** What the maker calls it; left out where it has no name of its own. */
  readonly name?: string;
  /** Null where it is of no colour, or of the cloth's. */
  readonly colour: Colour | null;
  /** Of what is sold by length. */
  readonly width: Figure<Mm> | null;
  /** What the skirt takes; null where a piece is a piece. */
  readonly need: Figure<Mm> | null;
  /** What the shop sells: a length in its own step, or a number of pieces. */
  readonly buy: Figure;
  readonly price: Money | null;
  readonly advice: readonly Advice[];
}
