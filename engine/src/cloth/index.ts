export { rightHalf } from './lays/half.ts';
export { layAll, layLining, type ClothPlan } from './lay-all.ts';
export { readFabric, type Fabric } from './fabric.ts';
export { clothOptions, type ClothOptions, type LayKind } from './options.ts';
export type { Lay } from './lays/lay.ts';
export type { LaidPiece, Table, TableEdge } from './lays/table.ts';
export type { MoreTable } from './lays/loose.ts';
export type { PartLabel } from './cutPieces.ts';
export type { ClothFigureCode, ClothNoticeCode } from './codes.ts';
