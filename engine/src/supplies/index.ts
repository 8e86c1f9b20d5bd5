export { listSupplies, type Supplies } from './supplies.ts';
export { notions, suppliesOptions, type Notion, type SuppliesOptions } from './options.ts';
export { threadFor, type ThreadPart, type ThreadTotal } from './thread.ts';
export type { Advice, Item } from './item.ts';
export type { SuppliesFigureCode, SuppliesNoticeCode } from './codes.ts';
