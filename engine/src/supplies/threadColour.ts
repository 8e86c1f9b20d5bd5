import { clothsAmong, type SkirtCloths } from '../cloth/index.ts';
import { labOf, type Colour } from '../fields/index.ts';
import type { SewnPiece } from '../seams/index.ts';
import type { ThreadOptions } from './thread.ts';

/** The colour of the thread that sews some pieces together. What is sewn through none of them has the skirt's own. */
export function threadColour(
  cloths: SkirtCloths,
  pieces: readonly SewnPiece[],
  by: ThreadOptions['colour'],
): Colour {
  const own = cloths[0].options.colour;
  if (by === 'own' || cloths.length === 1) return own;
  const [first = own, ...others] = clothsAmong(cloths, pieces).map(({ options }) => options.colour);
  return by === 'outer' ? first : others.reduce(darker, first);
}

const darker = (one: Colour, other: Colour): Colour =>
  labOf(other.hex).lightness < labOf(one.hex).lightness ? other : one;
