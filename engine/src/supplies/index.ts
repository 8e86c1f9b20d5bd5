export { listSupplies, type Supplies } from './supplies.ts';
export { suppliesOptions, type Notion, type SuppliesOptions } from './options.ts';
export { type ColouredPart, type ThreadTotal } from './thread.ts';
export type { Advice, Item } from './item.ts';
export type { SuppliesFigureCode, SuppliesNoticeCode } from './codes.ts';
