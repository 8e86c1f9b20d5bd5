export { seamLines } from './seams.ts';
export type { EdgeFinish } from './options.ts';
export type { SeamClass, SeamName, StitchClass, StitchLine } from './line.ts';
export type { SewnPiece } from './through.ts';
export type { SeamFigureCode } from './codes.ts';
