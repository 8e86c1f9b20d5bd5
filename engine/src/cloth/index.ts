export { rightHalf } from './lays/half.ts';
export {
  layAll,
  layContrast,
  layLining,
  liningOptions,
  notAsWished,
  type ClothPlan,
  type ContrastPlan,
} from './lay-all.ts';
export {
  clothOf,
  clothsOf,
  laidOf,
  pieceNames,
  clothsAmong,
  type ClothPiece,
  type SkirtCloth,
  type SkirtCloths,
} from './whose.ts';
export { called } from './called.ts';
export { clothsDiffer } from './differ.ts';
export { hardlySeen } from './seen.ts';
export {
  contrastChoices,
  contrastOf,
  contrastOptions,
  sharesOf,
  type ContrastName,
  type ContrastOptions,
} from './contrast.ts';
export { boughtFor, patternKind, readFabric, type Fabric } from './fabric.ts';
export { clothOptions, layKinds, NARROWEST, type ClothOptions, type LayKind } from './options.ts';
export type { ClothEffort } from './search/effort.ts';
export type {
  ClothJob,
  ClothLength,
  Flaw,
  FoundCloth,
  FoundPiece,
  FoundTable,
  PanelSeam,
  Wanted,
} from './job/found.ts';
export type { Rest } from './job/rest.ts';
export type { Lay } from './lays/lay.ts';
export type { LaidPiece, Table, TableEdge } from './lays/table.ts';
export type { MoreTable } from './lays/loose.ts';
export type { PartLabel } from './cutPieces.ts';
export type { ClothFigureCode, ClothNoticeCode } from './codes.ts';
export { piecesOf, type WhichCloth } from './piecesOf.ts';
export { clothJobOf, piecesIn, wantedOf } from './job/wanted.ts';
export { layByHand } from './hand/layByHand.ts';
export { laysOn } from './hand/laysOn.ts';
export { searchCloth } from './search/search.ts';
export { flawsBeyond } from './flaws.ts';
export { isPrintOnItsSide } from './job/print.ts';
export { leastOffBolt, type OffBolt } from './hand/offBolt.ts';
export { within } from './search/shares.ts';
export { layFound } from './search/layFound.ts';
export { linesOn, stripedFold } from './search/linesOn.ts';
export { seamMeets, type SeamMeet } from './search/meets.ts';
