export * from './fields.ts';
export * from './colour.ts';
