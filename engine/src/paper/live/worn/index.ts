export { wornPicture, type WornOptions } from './wornPicture.ts';
export { wornSides, type WornSide } from './stance.ts';
