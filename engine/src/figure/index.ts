export * from './figure.ts';
export * from './notice.ts';
