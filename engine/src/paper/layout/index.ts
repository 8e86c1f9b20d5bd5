export * from './theme.ts';
export * from './block.ts';
export * from './sheet.ts';
export { flow } from './flow.ts';
