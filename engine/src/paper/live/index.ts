export type { LivePicture, PlacedHandle } from './livePicture.ts';
export { wornPicture, wornSides, type WornOptions, type WornSide } from './worn/index.ts';
export { panelPicture } from './panel.ts';
export { foldStages, type FoldStage } from './folds.ts';
