import type { Panel, PartName, Skirt } from '../skirt/index.ts';
import { sharesOf, type ContrastOptions } from './contrast.ts';
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

/** The cloth that a panel is cut from. */
export const clothOfPanel = (cloths: SkirtCloths, panel: Panel): SkirtCloth =>
  cloths.find(({ panels }) => panels.includes(panel)) ?? cloths[0];

/** The cloth that a part is cut from, where it is one of the skirt's cloths. */
export const clothOfPart = (cloths: SkirtCloths, part: PartName): SkirtCloth =>
  cloths.find(({ parts }) => parts.includes(part)) ?? cloths[0];

/** The cloths of some pieces, each once, in the order in which they are met. */
export const clothsAmong = (
  cloths: SkirtCloths,
  pieces: readonly (Panel | PartName)[],
): readonly SkirtCloth[] => [
  ...new Set(
    pieces.map((piece) =>
      typeof piece === 'string' ? clothOfPart(cloths, piece) : clothOfPanel(cloths, piece),
    ),
  ),
];
