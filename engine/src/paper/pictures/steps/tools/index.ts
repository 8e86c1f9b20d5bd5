export { chalk, looseThread, ruler, shears, square } from './cutting.ts';
export { bottle, clip, drop, flame, pin, safetyPin, sprayCan } from './holding.ts';
export { basin, clock, hanger, openWindow, peg, rag } from './household.ts';
export { ironAbove, ironBeside } from './pressing.ts';
export { bobbin, foot, needle } from './stitching.ts';
