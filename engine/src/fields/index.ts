export * from './fields.ts';
export * from './colour.ts';
export * from './lab.ts';
export * from './difference.ts';
