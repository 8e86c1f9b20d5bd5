export * from './measures.ts';
export * from './limits.ts';
export * from './settings.ts';
export * from './body.ts';
export * from './walker.ts';
export * from './hem-need.ts';
export * from './stride.ts';
export type { BodyFigureCode, BodyNoticeCode } from './codes.ts';
export { bodyOptions } from './options.ts';
