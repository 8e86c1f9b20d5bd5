import type { HandleName, SkirtPlan, Speaker, WornSide } from '@ribbonwright/engine';
import type { Component } from 'svelte';

/** The ways to look at a skirt: worn, from a side of it, or as it is made. */
export type View = WornSide | MadeView;
export type MadeView = 'flat' | 'pieces' | 'folds';

/** Draws the skirt as it is made. */
export type MadePicture = Component<{
  plan: SkirtPlan;
  /** Which of the handles may be taken hold of. */
  only: (name: HandleName) => boolean;
}>;

/** Fetched when it is looked at: what is seen first is the worn skirt. */
const pictures: Readonly<Record<MadeView, () => Promise<{ default: MadePicture }>>> = {
  flat: () => import('./FlatPicture.svelte'),
  pieces: () => import('./PiecesPicture.svelte'),
  folds: () => import('./FoldStages.svelte'),
};

export async function pictureOf(view: MadeView): Promise<MadePicture> {
  return (await pictures[view]()).default;
}

export const isMade = (view: View): view is MadeView => view in pictures;

export const viewNames = ({ words: { table } }: Speaker): { value: View; name: string }[] => [
  { value: 'front', name: table.viewFront },
  { value: 'back', name: table.viewBack },
  { value: 'side', name: table.viewSide },
  { value: 'flat', name: table.viewFlat },
  { value: 'pieces', name: table.viewPieces },
  { value: 'folds', name: table.viewFolds },
];
