export * from './mm.ts';
export * from './parse.ts';
export * from './round.ts';
export * from './show.ts';
export * from './write.ts';
export * from './money.ts';
