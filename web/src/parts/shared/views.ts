import type { Speaker } from '@ribbonwright/engine';

/** The ways to look at a skirt. */
export const views = ['front', 'back', 'side', 'flat', 'pieces', 'folds'] as const;
export type View = (typeof views)[number];

export const viewNames = ({ words: { table } }: Speaker): { value: View; name: string }[] => [
  { value: 'front', name: table.viewFront },
  { value: 'back', name: table.viewBack },
  { value: 'side', name: table.viewSide },
  { value: 'flat', name: table.viewFlat },
  { value: 'pieces', name: table.viewPieces },
  { value: 'folds', name: table.viewFolds },
];
