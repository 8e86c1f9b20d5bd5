import type { Panel, PartName, Skirt } from '../skirt/index.ts';
import { sharesOf, type ContrastOptions } from './contrast.ts';
import type { ClothPlan, ContrastPlan } from './lay-all.ts';
import type { ClothOptions } from './options.ts';

/** One cloth of a skirt and what is cut from it; the lining and stretch knit are told by their parts. */
export interface SkirtCloth {
  /** The skirt's own, or which of the others, counted from 0. */
  readonly which: 'own' | number;
  readonly options: ClothOptions;
  readonly panels: readonly Panel[];
  readonly parts: readonly PartName[];
}

/** The skirt's own cloth, then the others that something is cut from, in the order of the document. */
export type SkirtCloths = readonly [SkirtCloth, ...SkirtCloth[]];

export function clothsOf(skirt: Skirt, own: ClothOptions, contrast: readonly ContrastOptions[]): SkirtCloths {
  const shares = sharesOf(skirt, contrast);
  const cloth = (
    which: SkirtCloth['which'],
    options: ClothOptions,
    { panels, parts }: (typeof shares)['own'],
  ): SkirtCloth => ({
    which,
    options,
    panels,
    parts: [...new Set(parts.map(({ name }) => name))],
  });
  const others = contrast.flatMap(({ cloth: options }, at) => {
    const share = shares.others[at];
    const isCut = share && share.panels.length + share.parts.length > 0;
    return isCut ? [cloth(at, options, share)] : [];
  });
  return [cloth('own', own, shares.own), ...others];
}

/** A piece to cut: a panel, or by its name one that is none. */
export type ClothPiece = Panel | PartName;

/** The cloth that a piece is cut from; the skirt's own for a piece that is of lining or knit. */
export const clothOf = (cloths: SkirtCloths, piece: ClothPiece): SkirtCloth =>
  cloths.find(({ panels, parts }) =>
    typeof piece === 'string' ? parts.includes(piece) : panels.includes(piece),
  ) ?? cloths[0];

/** The cloths of some pieces, each once, in the order in which they are met. */
export const clothsAmong = (cloths: SkirtCloths, pieces: readonly ClothPiece[]): readonly SkirtCloth[] => [
  ...new Set(pieces.map((piece) => clothOf(cloths, piece))),
];

/** How one of a skirt's cloths is laid. */
export const laidOf = (
  { cloth, contrast }: { readonly cloth: ClothPlan; readonly contrast: readonly ContrastPlan[] },
  { which }: Pick<SkirtCloth, 'which'>,
): ClothPlan => contrast.find(({ at }) => at === which)?.cloth ?? cloth;

/**
 * What is cut from a cloth, by names for the words: tiers by their number (`tier 2`), other panels of one name with their
 * numbers only where the cloth has not all of them (`panel gore 3`), parts (`part waistband`).
 */
export function pieceNames({ panels: all, rounds }: Skirt, { panels, parts }: SkirtCloth): string[] {
  const named = panels.map((panel) => {
    if (panel.name === 'tier')
      return `tier ${String(rounds.findIndex((each) => each.panels.includes(panel)) + 1)}`;
    const isWhole = all.every((each) => each.name !== panel.name || panels.includes(each));
    return `panel ${panel.name}${isWhole ? '' : ` ${String(panel.number)}`}`;
  });
  return [...new Set([...named, ...parts.map((part) => `part ${part}`)])];
}
