export { rightHalf } from './lays/half.ts';
export { layAll, type ClothPlan } from './lay-all.ts';
export { readFabric, type Fabric } from './fabric.ts';
export { clothOptions, type ClothOptions, type LayKind } from './options.ts';
export type { LaidPiece, Lay, Table, TableEdge } from './lays/lay.ts';
export type { ClothFigureCode, ClothNoticeCode } from './codes.ts';
