import type { Cutting } from '../blocks.ts';
import type { Copy, CutPiece } from '../cutPieces.ts';

/** Copies that are cut two at once through two layers laid right sides together, and those that are left over. */
interface Paired {
  readonly pairs: readonly Cutting[];
  readonly odd: readonly Cutting[];
}

/** The lower layer of two gives the mirror image of the upper one: of pieces with a left and a right, one of each. */
function pairUp(cut: CutPiece): Paired {
  const plain = cut.copies.filter(({ mirrored }) => !mirrored);
  const mirrored = cut.copies.filter((copy) => copy.mirrored);
  const alone = (copy: Copy): Cutting => ({ cut, copies: [copy] });
  if (!cut.symmetric) {
    const both = Math.min(plain.length, mirrored.length);
    return {
      pairs: plain.slice(0, both).map((copy, i) => ({ cut, copies: [copy, ...mirrored.slice(i, i + 1)] })),
      odd: [...plain.slice(both), ...mirrored.slice(both)].map(alone),
    };
  }
  const whole = cut.copies.length - (cut.copies.length % 2);
  return {
    pairs: cut.copies
      .slice(0, whole)
      .flatMap((copy, i, all) => (i % 2 === 0 ? [{ cut, copies: [copy, ...all.slice(i + 1, i + 2)] }] : [])),
    odd: cut.copies.slice(whole).map(alone),
  };
}

export const pairAll = (cuts: readonly CutPiece[]): Paired => {
  const all = cuts.map(pairUp);
  return { pairs: all.flatMap(({ pairs }) => pairs), odd: all.flatMap(({ odd }) => odd) };
};

/** Every copy by itself. */
export const oneByOne = (cuts: readonly CutPiece[]): Cutting[] =>
  cuts.flatMap((cut) => cut.copies.map((copy) => ({ cut, copies: [copy] })));
