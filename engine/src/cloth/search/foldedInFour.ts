import type { Cutting } from '../blocks.ts';
import { isPanelPiece, type CutPiece } from '../cutPieces.ts';
import { pairAll } from '../lays/pairs.ts';
import type { Wanted } from '../job/found.ts';
import type { Lying, OnFold } from './lying.ts';

/** Panels that may lie with their middle on a fold across the bolt, their length across it. */
const mayFold = (cut: CutPiece): boolean => isPanelPiece(cut) && cut.symmetric && cut.swing === 0;

/**
 * Through four layers: of two panels that are alike half of one, its middle at the edge with two folds; four of
 * any other piece at once, two of them mirrored, or each by itself. What makes neither is cut in a single layer besides.
 */
export function onDoubleFold(
  { wearer, mains, parts }: Wanted,
  inFour: boolean,
): {
  readonly lying: readonly Lying[];
  readonly loose: readonly Lying[];
} {
  const all = [...mains, ...parts];
  const { pairs, odd } = pairAll(all);
  const folded = pairs.filter(({ cut }) => mayFold(cut));
  const others = pairs.filter(({ cut }) => !mayFold(cut));
  const { fours, left } = inFour ? foursOf(others) : { fours: [], left: others.flatMap(oneByOne) };
  const as =
    (onFold: OnFold) =>
    (cutting: Cutting): Lying => ({
      wearer,
      cutting,
      stance: onFold === 'start' || cutting.cut.grain === 'across' ? 'across' : 'along',
      onFold,
    });
  return {
    lying: [...folded.map(as('start')), ...fours.map(as('no'))],
    loose: [...odd, ...left].map(as('no')),
  };
}

/** Two pairs of a shape are cut at once; the pieces of a pair that is left over one by one. */
function foursOf(pairs: readonly Cutting[]): {
  readonly fours: readonly Cutting[];
  readonly left: readonly Cutting[];
} {
  const fours: Cutting[] = [];
  const waiting = new Map<CutPiece, Cutting>();
  for (const pair of pairs) {
    const other = waiting.get(pair.cut);
    if (other) {
      fours.push({ cut: pair.cut, copies: [...other.copies, ...pair.copies] });
      waiting.delete(pair.cut);
    } else waiting.set(pair.cut, pair);
  }
  return { fours, left: [...waiting.values()].flatMap(oneByOne) };
}

const oneByOne = ({ cut, copies }: Cutting): Cutting[] => copies.map((copy) => ({ cut, copies: [copy] }));
