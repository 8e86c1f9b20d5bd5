export { rightHalf } from './lays/half.ts';
export { layAll, type ClothPlan } from './lay-all.ts';
export { beforeWash, readFabric, toBuy, type Fabric } from './fabric.ts';
export { clothOptions, layKinds, type ClothOptions, type LayKind } from './options.ts';
export type { LaidPiece, Lay, Table, TableEdge } from './lays/lay.ts';
export type { ClothFigureCode, ClothNoticeCode } from './codes.ts';
